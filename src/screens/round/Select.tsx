import { useId } from 'preact/hooks';
import css from './Field.module.css';

interface Props<Value extends string> {
  readonly label: string;
  readonly values: readonly Value[];
  readonly words: Readonly<Record<string, string>>;
  readonly value: Value;
  readonly note?: string;
  readonly onChoose: (value: Value) => void;
}

/** One choice out of many, by the phone's own list. */
export function Select<Value extends string>({ label, values, words, value, note, onChoose }: Props<Value>) {
  const id = useId();
  return (
    <div class={css.field}>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        {...(note ? { 'aria-describedby': `${id}-below` } : {})}
        onChange={(event) => {
          const chosen = values.find((each) => each === event.currentTarget.value);
          if (chosen !== undefined) onChoose(chosen);
        }}
      >
        {values.map((each) => (
          <option key={each} value={each}>
            {words[each]}
          </option>
        ))}
      </select>
      {note && <p id={`${id}-below`}>{note}</p>}
    </div>
  );
}
