import { useSignal } from '@preact/signals';
import { joinShots } from '../../../actions/joinShots.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { splitShot } from '../../../actions/splitShot.ts';
import type { Club } from '../../../golf/club.ts';
import type { Round } from '../../../golf/round.ts';
import type { Shot } from '../../../golf/shot.ts';
import { playingNumbers, shotsOfHole } from '../../../golf/shotOrder.ts';
import press from '../../parts/Press.module.css';
import { replaceWith } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import { shotLine } from '../shot/shotLine.ts';
import type { ShownUnits } from '../shownUnits.ts';
import css from './ShotEditPage.module.css';

const { shot: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
  readonly shots: readonly Shot[];
  readonly shot: Shot;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** One entry that was two shots, or two that were one: parted, or joined with a neighbour on the hole. */
export function MendShot({ keeper, round, shots, shot, clubs, units }: Props) {
  const trouble = useSignal<string | null>(null);
  const onHole = shotsOfHole(shots, shot.hole);
  const at = onHole.findIndex((each) => each.id === shot.id);
  const numbers = playingNumbers(onHole);
  const leave = () => replaceWith('round', 'hole', round.id, String(shot.hole));
  const split = async () => {
    trouble.value = outcomeTrouble(await splitShot(keeper, shot));
    if (trouble.value === null) leave();
  };
  const join = async (first: Shot, second: Shot) => {
    trouble.value = outcomeTrouble(await joinShots(keeper, first, second.id));
    if (trouble.value === null) leave();
  };
  const [before, after] = [onHole[at - 1], onHole[at + 1]];
  const told = (each: Shot) =>
    words.join(String(numbers.get(each.id) ?? '–'), shotLine(each, clubs, units.distance, round).what);
  return (
    <>
      <h2>{words.mend}</h2>
      <p role="alert" class={css.wrong}>
        {trouble.value}
      </p>
      <button type="button" class={press.press} onClick={() => void split()}>
        {words.split}
      </button>
      {before && (
        <button type="button" class={press.press} onClick={() => void join(before, shot)}>
          {told(before)}
        </button>
      )}
      {after && (
        <button type="button" class={press.press} onClick={() => void join(shot, after)}>
          {told(after)}
        </button>
      )}
    </>
  );
}
