import { useId } from 'preact/hooks';
import press from '../parts/Press.module.css';
import { roundWords } from '../words/round.ts';
import css from './Field.module.css';

const { hole: words } = roundWords;

interface Props {
  readonly label: string;
  readonly value: number;
  readonly least?: number;
  readonly most: number;
  readonly note?: string;
  readonly onStep: (value: number) => void;
}

/** A small count with a key to either side. */
export function Stepper({ label, value, least = 0, most, note, onStep }: Props) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would put its legend outside the row
    <div class={css.field} role="group" aria-labelledby={id}>
      <span id={id}>{label}</span>
      <div class={css.steps}>
        <button
          type="button"
          class={press.press}
          aria-label={`${label}: ${words.fewer}`}
          disabled={value <= least}
          onClick={() => onStep(value - 1)}
        >
          −
        </button>
        <output aria-live="polite">{value}</output>
        <button
          type="button"
          class={press.press}
          aria-label={`${label}: ${words.more}`}
          disabled={value >= most}
          onClick={() => onStep(value + 1)}
        >
          +
        </button>
      </div>
      {note && <p>{note}</p>}
    </div>
  );
}
