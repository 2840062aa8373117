import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { moveShot } from '../../../actions/moveShot.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import type { Club } from '../../../golf/club.ts';
import { roundOrder } from '../../../golf/roundOrder.ts';
import { playingNumbers, shotsOfHole } from '../../../golf/shotOrder.ts';
import type { RoundWithShots } from '../../../logbook/live.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { goBack, replaceWith } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import { Select } from '../Select.tsx';
import { shotLine } from '../shot/shotLine.ts';
import type { ShownUnits } from '../shownUnits.ts';
import { MendShot } from './MendShot.tsx';
import css from './ShotEditPage.module.css';

const { shot: words, head } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly of: RoundWithShots;
  readonly shotId: string;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** Where a shot is moved to: which hole, and which place among the shots of it. Here it is also split and joined. */
export function MovePage({ keeper, of: { round, shots }, shotId, clubs, units }: Props) {
  const all = withUnsaved(keeper.unsaved.value, round.id, shots);
  const shot = all.find((each) => each.id === shotId);
  const trouble = useSignal<string | null>(null);
  const hole = useSignal(shot?.hole ?? round.startHole);
  const leave = () => goBack('round', 'shot', round.id, shotId);
  if (!shot) {
    return (
      <>
        <PageHead title={words.moveTitle} onBack={leave} />
        <p role="alert">{words.gone}</p>
      </>
    );
  }
  const onHole = shotsOfHole(all, hole.value);
  const at = onHole.findIndex((each) => each.id === shot.id);
  const numbers = playingNumbers(onHole);
  const others = onHole.filter((each) => each.id !== shot.id);
  const move = async (after: string | null) => {
    trouble.value = outcomeTrouble(await moveShot(keeper, shot, { hole: hole.value, after }));
    if (trouble.value === null) replaceWith('round', 'hole', round.id, String(hole.value));
  };
  // Where the shot already stands is no place to move it to.
  const before = at > 0 ? onHole[at - 1]?.id : null;
  const isHere = (after: string | null) => at >= 0 && after === (before ?? null);
  const hasPlaces = [null, ...others.map((each) => each.id)].some((after) => !isHere(after));
  return (
    <>
      <PageHead title={words.moveTitle} sub={shotLine(shot, clubs, units.distance, round).what} onBack={leave} />
      <div class={css.places}>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        <Select
          label={words.toHole}
          values={roundOrder(round).map(String)}
          words={Object.fromEntries(roundOrder(round).map((number) => [String(number), head.hole(number)]))}
          value={String(hole.value)}
          onChoose={(number) => {
            hole.value = Number(number);
          }}
        />
        {hasPlaces && <h2>{words.toPlace}</h2>}
        {!isHere(null) && (
          <button type="button" class={press.press} onClick={() => void move(null)}>
            {others.length === 0 ? words.only : words.first}
          </button>
        )}
        {others
          .filter((each) => !isHere(each.id))
          .map((each) => (
            <button key={each.id} type="button" class={press.press} onClick={() => void move(each.id)}>
              {words.after(String(numbers.get(each.id) ?? '–'), shotLine(each, clubs, units.distance, round).what)}
            </button>
          ))}
        <MendShot keeper={keeper} round={round} shots={all} shot={shot} clubs={clubs} units={units} />
      </div>
    </>
  );
}
