import type { RoundScore } from '../../../golf/scoreRound.ts';
import { roundWords } from '../../words/round.ts';
import css from './CardPage.module.css';

const { card: words } = roundWords;

interface Props {
  readonly score: RoundScore;
  /** Shots logged in the round. */
  readonly shots: number;
  readonly isPractice: boolean;
}

/** What the round comes to so far, and of what the score is made. */
export function Totals({ score, shots, isPractice }: Props) {
  const over = score.holes.filter((hole) => hole.score.kind !== 'not started' && hole.score.kind !== 'in play').length;
  const rows: readonly (readonly [string, string, string])[] = isPractice
    ? [['shots', words.shots, String(shots)]]
    : [
        ['strokes', words.strokes, String(score.strokes)],
        ['to-par', words.toPar, score.toPar === null || over === 0 ? '–' : words.toParWords(score.toPar)],
        ['putts', words.putts, String(score.putts)],
        ['penalties', words.penalties, String(score.penalties)],
        ['shots', words.shots, String(shots)],
        ['not-logged', words.notLogged, String(score.notLogged)],
      ];
  return (
    <section aria-labelledby="totals">
      <h2 id="totals">{isPractice ? words.shots : words.thru(over, score.holes.length)}</h2>
      <dl class={css.totals}>
        {rows.map(([id, label, value]) => (
          <div key={id}>
            <dt>{label}</dt>
            <dd data-total={id}>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
