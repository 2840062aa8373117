import { useSignal } from '@preact/signals';
import { editRound, type RoundChanges } from '../../../actions/editRound.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import type { Round } from '../../../golf/round.ts';
import { roundWords } from '../../words/round.ts';
import { Field } from '../Field.tsx';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import css from './CardPage.module.css';

const { card: words, start } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly round: Round;
}

/** Course, tees and day of a round, changed in their place; its frozen book as it stands. */
export function RoundDetails({ keeper, round }: Props) {
  const trouble = useSignal<string | null>(null);
  const set = async (changes: RoundChanges) => {
    trouble.value = outcomeTrouble(await editRound(keeper, round.id, changes));
  };
  return (
    <details class={css.details}>
      <summary>{words.details}</summary>
      <div>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        <Field
          label={start.course}
          value={round.course}
          maxLength={60}
          onCommit={(text) => void set({ course: text.trim() })}
        />
        <Field
          label={start.tees}
          value={round.tees}
          maxLength={60}
          onCommit={(text) => void set({ tees: text.trim() })}
        />
        <Field label={words.date} value={round.date} type="date" onCommit={(date) => date && void set({ date })} />
        {round.frozenBook && (
          <p>{words.frozen(round.frozenBook.at.slice(0, 16).replace('T', ' '), round.frozenBook.hash.slice(0, 8))}</p>
        )}
      </div>
    </details>
  );
}
