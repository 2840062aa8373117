import { useId } from 'preact/hooks';
import css from './Field.module.css';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onInput?: (value: string) => void;
  /** Takes what stands in it once the golfer is through with it. */
  readonly onCommit?: (value: string) => void;
  /** What is wrong with what stands in it. */
  readonly error?: string | undefined;
  readonly note?: string | undefined;
  /** Which keys a phone shows for it. */
  readonly keys?: 'text' | 'numeric' | 'decimal';
  readonly type?: 'text' | 'date';
  readonly maxLength?: number;
}

/** One field of a form with its name above it, and under it what is wrong with it. */
export function Field({
  label,
  value,
  onInput,
  onCommit,
  error,
  note,
  keys = 'text',
  type = 'text',
  maxLength,
}: Props) {
  const id = useId();
  const below = error ?? note;
  return (
    <div class={css.field}>
      <label for={id}>{label}</label>
      <input
        id={id}
        {...(type === 'date' ? { type: 'date' as const } : { type: 'text' as const })}
        inputMode={keys}
        autoComplete="off"
        value={value}
        {...(maxLength === undefined ? {} : { maxLength })}
        aria-invalid={error !== undefined}
        {...(below ? { 'aria-describedby': `${id}-below` } : {})}
        onInput={(event) => onInput?.(event.currentTarget.value)}
        onChange={(event) => onCommit?.(event.currentTarget.value)}
      />
      {below && (
        <p id={`${id}-below`} class={error === undefined ? undefined : css.wrong}>
          {below}
        </p>
      )}
    </div>
  );
}
