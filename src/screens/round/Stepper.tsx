import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
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
  /** Takes the new count; true once it is noted. */
  readonly onStep: (value: number) => Promise<boolean>;
}

/** A small count with a key to either side. */
export function Stepper({ label, value, least = 0, most, note, onStep }: Props) {
  const id = useId();
  /** What was tapped and is not stored yet, so that quick taps add up; null: nothing. */
  const held = useSignal<number | null>(null);
  useEffect(() => {
    if (held.value === value) held.value = null;
  }, [value, held]);
  const shown = held.value ?? value;
  const step = async (to: number) => {
    held.value = to;
    const isNoted = await onStep(to);
    if (!isNoted || held.value === value) held.value = null;
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would put its legend outside the row
    <div class={css.field} role="group" aria-labelledby={id}>
      <span id={id}>{label}</span>
      <div class={css.steps}>
        <button
          type="button"
          class={press.press}
          aria-label={`${label}: ${words.fewer}`}
          disabled={shown <= least}
          onClick={() => void step(shown - 1)}
        >
          −
        </button>
        <output aria-live="polite">{shown}</output>
        <button
          type="button"
          class={press.press}
          aria-label={`${label}: ${words.more}`}
          disabled={shown >= most}
          onClick={() => void step(shown + 1)}
        >
          +
        </button>
      </div>
      {note && <p>{note}</p>}
    </div>
  );
}
