import { BALLS_A_RUNG, type Rung, type RungDone } from '../../../golf/wedgeLadder.ts';
import press from '../../parts/Press.module.css';
import { practiceWords as words } from '../../words/practice.ts';
import css from './WedgeLadder.module.css';

interface Props {
  readonly rungs: readonly RungDone[];
  /** Index of the rung that is climbed now. */
  readonly at: number;
  readonly nameOf: (rung: Rung) => string;
  readonly onChoose: (index: number) => void;
}

/** All rungs from the bottom up with their balls; a tap goes to one. */
export function LadderTable({ rungs, at, nameOf, onChoose }: Props) {
  return (
    <section aria-labelledby="rungs" class={css.section}>
      <h2 id="rungs">{words.rungs}</h2>
      <ol class={css.rungs}>
        {rungs.map((rung, index) => (
          <li key={`${rung.clubId} ${rung.swing}`}>
            <button
              type="button"
              class={`${press.press} ${css.choose}`}
              aria-current={index === at ? 'step' : undefined}
              onClick={() => onChoose(index)}
            >
              <span>{nameOf(rung)}</span>
              <span>{rung.balls === 0 ? '–' : words.ballsOf(rung.balls, BALLS_A_RUNG)}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
