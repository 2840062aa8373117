import type { ComponentChildren } from 'preact';
import { shotWords } from '../../words/shot.ts';
import css from './ActionRow.module.css';
import { Key } from './Key.tsx';
import type { ShotForm } from './shotForm.ts';
import type { Slot } from './slots.ts';

interface Props {
  readonly form: ShotForm | null;
  readonly isEditing: boolean;
  /** Whether anything was entered: a stroke of which nothing is said is not logged by a stray tap. */
  readonly canLog: boolean;
  /** What stands on the key that goes on, the hole being over; null: it is not. */
  readonly nextLabel: string | null;
  /** The key that marks a place by satellite; null: marks are not allowed here. */
  readonly mark: ComponentChildren | null;
  readonly onUndo: () => void;
  readonly onLeave: () => void;
  readonly onMore: () => void;
  readonly onSkip: () => void;
  readonly onLog: () => void;
  readonly onNext: () => void;
}

/** Slots beside the way: leaving them is being done with them. */
const ASIDE: readonly (Slot | null)[] = ['more', 'note', 'flag by', 'aim'];

/** What is always in reach: take back, say more, leave open, log. */
export function ActionRow({ form, isEditing, canLog, nextLabel, mark, ...on }: Props) {
  const { keys } = shotWords;
  return (
    <fieldset class={`${css.actions} ${form ? (mark ? css.marked : '') : css.few}`} aria-label={shotWords.actionsLabel}>
      {isEditing ? <Key onPress={on.onLeave}>{keys.leave}</Key> : <Key onPress={on.onUndo}>{keys.undo}</Key>}
      {form && (
        <>
          {mark && <div class={css.mark}>{mark}</div>}
          <Key isPressed={form.slot === 'more'} onPress={on.onMore}>
            {keys.more}
          </Key>
          <Key onPress={on.onSkip}>{ASIDE.includes(form.slot) ? keys.done : keys.skip}</Key>
          <Key look="main" isOff={!canLog} onPress={on.onLog}>
            {isEditing ? keys.keep : keys.log}
          </Key>
        </>
      )}
      {nextLabel !== null && (
        <Key look="main" onPress={on.onNext}>
          {nextLabel}
        </Key>
      )}
    </fieldset>
  );
}
