import type { Club } from '../../../golf/club.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { playingNumbers } from '../../../golf/shotOrder.ts';
import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import css from './LoggedLines.module.css';
import { shotLine } from './shotLine.ts';

interface Props {
  /** Shots of one hole in the order played. */
  readonly shots: readonly Shot[];
  readonly clubs: readonly Club[];
  readonly round: Round;
  readonly unit: DistanceUnit;
  readonly isSaved: (shotId: string) => boolean;
}

/** The shots of a hole so far, one line each; one that is not saved yet says so. */
export function LoggedLines({ shots, clubs, round, unit, isSaved }: Props) {
  const numbers = playingNumbers(shots);
  if (shots.length === 0) return null;
  return (
    <ol class={css.lines}>
      {shots.map((shot) => {
        const { what, measured } = shotLine(shot, clubs, unit, round);
        const number = numbers.get(shot.id);
        return (
          <li key={shot.id} data-shot={shot.number}>
            <span class={css.number}>{number === null || number === undefined ? '·' : figure(number)}</span>
            <span class={css.what}>{what}</span>
            {measured !== '' && <b>{measured}</b>}
            {!isSaved(shot.id) && <em>{shotWords.status.saving}</em>}
          </li>
        );
      })}
    </ol>
  );
}
