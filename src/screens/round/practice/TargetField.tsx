import { useId } from 'preact/hooks';
import type { DistanceUnit } from '../../distance.ts';
import { practiceWords as words } from '../../words/practice.ts';
import { words as allWords } from '../../words.ts';
import { Key } from '../shot/Key.tsx';
import css from './WedgeLadder.module.css';

interface Props {
  readonly unit: DistanceUnit;
  /** The figure as typed, in the unit on screen. */
  readonly value: string;
  readonly onInput: (value: string) => void;
}

/** The measured distance of the target, with a key to either side to set it by one. */
export function TargetField({ unit, value, onInput }: Props) {
  const id = useId();
  const step = (by: number) => onInput(String(Math.max(1, (Number(value) || 0) + by)));
  return (
    <div class={css.target}>
      <Key name={words.fewer} onPress={() => step(-1)}>
        −
      </Key>
      <div>
        <label for={id}>{words.target(allWords.units[unit].short)}</label>
        <input
          id={id}
          inputMode="numeric"
          autoComplete="off"
          maxLength={3}
          value={value}
          onInput={(event) => onInput(event.currentTarget.value.replace(/\D/g, ''))}
        />
      </div>
      <Key name={words.more} onPress={() => step(1)}>
        +
      </Key>
    </div>
  );
}
