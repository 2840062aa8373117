import type { Keeper } from '../../../actions/keeper.ts';
import type { Club } from '../../../golf/club.ts';
import { missingSlots } from '../../../golf/openShots.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { playingNumbers } from '../../../golf/shotOrder.ts';
import { addressOf } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { shotLine } from '../shot/shotLine.ts';
import type { ShownUnits } from '../shownUnits.ts';
import css from './HolePage.module.css';

const { hole: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
  /** Shots of one hole in the order played. */
  readonly shots: readonly Shot[];
  /** Whether each leads to the page that changes it. */
  readonly mayChange: boolean;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** The shots of a hole as they were entered, numbered as played. */
export function ShotRows({ keeper, round, shots, mayChange, clubs, units }: Props) {
  const numbers = playingNumbers(shots);
  const waiting = new Set(keeper.unsaved.value.map((change) => change.shotId));
  return (
    <ol class={css.shots}>
      {shots.map((shot) => {
        const { what, measured } = shotLine(shot, clubs, units.distance, round);
        const missing = round.play === 'practice ground' ? [] : missingSlots(shot);
        const row = (
          <>
            <span class={css.number}>{numbers.get(shot.id) ?? '–'}</span>
            <span class={css.what}>
              {what}
              {missing.length > 0 && (
                <span class={css.open}> · {words.open(missing.map((slot) => words.missing[slot]).join(', '))}</span>
              )}
              {waiting.has(shot.id) && <strong class={css.open}> · {words.notSaved}</strong>}
            </span>
            <span class={css.measured}>{measured}</span>
          </>
        );
        return (
          <li key={shot.id}>
            {mayChange ? (
              <a class={css.row} href={addressOf('round', 'shot', round.id, shot.id)}>
                {row}
              </a>
            ) : (
              <div class={css.row}>{row}</div>
            )}
          </li>
        );
      })}
    </ol>
  );
}
