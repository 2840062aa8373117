import type { Keeper } from '../../../actions/keeper.ts';
import type { Logbook } from '../../../golf/logbook.ts';
import { scoreRound } from '../../../golf/scoreRound.ts';
import { liveLogbook } from '../../../logbook/live.ts';
import { dayWithYear } from '../../day.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf, goTo } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { words as allWords } from '../../words.ts';
import { UndoBar } from '../UndoBar.tsx';
import css from './RoundsPage.module.css';

const { rounds: words, card, head } = roundWords;

/** Every round of the logbook, the latest first. */
export function RoundsPage({ keeper }: { readonly keeper: Keeper }) {
  const live = liveLogbook(keeper.connection).value;
  return (
    <>
      <PageHead title={words.title} onBack={() => goTo('round')} />
      <div class={css.sheet}>
        <UndoBar keeper={keeper} />
        {live.kind === 'loading' && <p role="status">{roundWords.opening}</p>}
        {live.kind === 'failed' && <p role="alert">{allWords.storage.why(live.why)}</p>}
        {live.kind === 'ready' && <Rounds logbook={live.value} />}
        <a class={press.press} href={addressOf('round', 'bin')}>
          {words.bin}
        </a>
      </div>
    </>
  );
}

function Rounds({ logbook }: { readonly logbook: Logbook }) {
  const shotsOf = new Map(logbook.rounds.map((round) => [round.id, [] as Logbook['shots'][number][]]));
  for (const shot of logbook.shots) shotsOf.get(shot.roundId)?.push(shot);
  const key = (round: Logbook['rounds'][number]) => `${round.date} ${round.startedAt ?? ''} ${round.id}`;
  const latestFirst = [...logbook.rounds].sort((one, other) => (key(one) < key(other) ? 1 : -1));
  if (latestFirst.length === 0) return <p>{words.none}</p>;
  return (
    <ol class={css.rounds}>
      {latestFirst.map((round) => {
        const shots = shotsOf.get(round.id) ?? [];
        const score = scoreRound(round, shots);
        const isPractice = round.play === 'practice ground';
        const over = score.holes.filter(({ score }) => score.kind === 'holed' || score.kind === 'conceded').length;
        const asides = [
          dayWithYear(round.date),
          round.tees,
          roundWords.play[round.play],
          isPractice ? card.shotsIn(shots.length) : words.holes(round.holes.length),
          round.closed ? '' : words.playing,
        ];
        return (
          <li key={round.id}>
            <a href={addressOf('round', 'card', round.id)}>
              <span class={css.what}>
                <strong>{round.course || (isPractice ? head.practice : card.unnamed)}</strong>
                <span>{asides.filter((part) => part !== '').join(' · ')}</span>
              </span>
              {!isPractice && over > 0 && (
                <span class={css.score}>{words.score(score.strokes, over, score.holes.length)}</span>
              )}
            </a>
          </li>
        );
      })}
    </ol>
  );
}
