import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { setHole } from '../../../actions/setHole.ts';
import type { Round } from '../../../golf/round.ts';
import { roundOrder } from '../../../golf/roundOrder.ts';
import { roundWords } from '../../words/round.ts';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import css from './ParRows.module.css';

const { card: words, head } = roundWords;

/** The pars that nearly every hole has; others are set on the page of the hole. */
const USUAL_PARS = [3, 4, 5] as const;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
}

/** The pars of all holes at once, in the order played: one tap a hole, and the same tap again leaves it open. */
export function ParRows({ keeper, round }: Props) {
  const trouble = useSignal<string | null>(null);
  /** What was tapped and is not stored yet, by hole. */
  const tapped = useSignal<ReadonlyMap<number, number | null>>(new Map());
  const set = async (hole: number, par: number | null) => {
    tapped.value = new Map(tapped.value).set(hole, par);
    trouble.value = outcomeTrouble(await setHole(keeper, round.id, hole, { par }));
    if (tapped.value.get(hole) === par) {
      tapped.value = new Map([...tapped.value].filter(([number]) => number !== hole));
    }
  };
  return (
    <details class={css.pars}>
      <summary>{words.pars}</summary>
      <p role="alert" class={css.wrong}>
        {trouble.value}
      </p>
      <ol>
        {roundOrder(round).map((number) => {
          const stored = round.holes.find((hole) => hole.number === number)?.par ?? null;
          const held = tapped.value.get(number);
          const par = held === undefined ? stored : held;
          return (
            <li key={number}>
              {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would put its legend outside the row */}
              <div class={css.row} role="group" aria-label={head.hole(number)}>
                <span aria-hidden="true">{head.hole(number)}</span>
                {USUAL_PARS.map((each) => (
                  <button
                    key={each}
                    type="button"
                    aria-label={head.par(each)}
                    aria-pressed={par === each}
                    onClick={() => void set(number, par === each ? null : each)}
                  >
                    {each}
                  </button>
                ))}
                {par !== null && !USUAL_PARS.some((usual) => usual === par) && <span>{head.par(par)}</span>}
              </div>
            </li>
          );
        })}
      </ol>
    </details>
  );
}
