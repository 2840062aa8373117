import { openShots } from '../../../golf/openShots.ts';
import type { Round } from '../../../golf/round.ts';
import type { RoundScore, ScoredHole } from '../../../golf/scoreRound.ts';
import type { Shot } from '../../../golf/shot.ts';
import { shotsOfHole } from '../../../golf/shotOrder.ts';
import { distanceWithUnit } from '../../distance.ts';
import { addressOf } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import type { ShownUnits } from '../shownUnits.ts';
import css from './CardPage.module.css';

const { card: words, head, hole: holeWords } = roundWords;

interface Props {
  readonly round: Round;
  readonly shots: readonly Shot[];
  readonly score: RoundScore;
  readonly units: ShownUnits;
}

/** The score of one hole as a card has it: strokes, or why there are none. */
function scoreWords({ score }: ScoredHole): string {
  if (score.kind === 'holed') return String(score.strokes);
  if (score.kind === 'in play') return `${score.strokes} …`;
  if (score.kind === 'conceded') return `${score.strokes}, ${roundWords.state.conceded}`;
  return score.kind === 'picked up' ? roundWords.state['picked up'] : '–';
}

/** The holes in the order played, each leading to its own page. */
export function HoleRows({ round, shots, score, units }: Props) {
  return (
    <section aria-labelledby="card-holes">
      <h2 id="card-holes">{words.holes}</h2>
      <ol class={css.holes}>
        {score.holes.map((hole) => {
          const length = round.holes.find((each) => each.number === hole.number)?.length_m ?? null;
          const open = openShots(shotsOfHole(shots, hole.number)).length;
          const asides = [
            ...(hole.par === null ? [] : [head.par(hole.par)]),
            ...(length === null ? [] : [distanceWithUnit(length, units.distance)]),
            ...(hole.score.putts > 0 ? [holeWords.putts(hole.score.putts)] : []),
            ...(hole.score.notLogged > 0 ? [words.holeNotLogged(hole.score.notLogged)] : []),
            ...(open > 0 ? [words.openShots(open)] : []),
          ];
          return (
            <li key={hole.number}>
              <a href={addressOf('round', 'hole', round.id, String(hole.number))} data-hole={hole.number}>
                <span class={css.hole}>{head.hole(hole.number)}</span>
                <span class={css.aside}>{asides.join(' · ')}</span>
                <span class={css.score} data-score={hole.score.kind}>
                  {scoreWords(hole)}
                </span>
              </a>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
