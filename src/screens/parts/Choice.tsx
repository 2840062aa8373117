import css from './Choice.module.css';

interface Props<Value extends string> {
  readonly label: string;
  readonly name: string;
  readonly values: readonly Value[];
  readonly words: Readonly<Record<Value, string>>;
  readonly value: Value;
  readonly onChoose: (value: Value) => void;
}

/** One choice out of a few, all of them in sight. */
export function Choice<Value extends string>({ label, name, values, words, value, onChoose }: Props<Value>) {
  return (
    <fieldset class={css.choice}>
      <legend>{label}</legend>
      <div class={css.options}>
        {values.map((option) => (
          <label key={option} class={css.option}>
            <input type="radio" name={name} checked={option === value} onChange={() => onChoose(option)} />
            <span>{words[option]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
