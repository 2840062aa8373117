import { useSignal } from '@preact/signals';
import type { Keeper } from '../../actions/keeper.ts';
import { undo } from '../../actions/undo.ts';
import { liveUndo } from '../../logbook/live.ts';
import press from '../parts/Press.module.css';
import { byTheRules } from '../words/byTheRules.ts';
import { roundWords } from '../words/round.ts';
import { words } from '../words.ts';
import css from './UndoBar.module.css';

/** What was done last, and the key that takes it back; nothing when there is nothing to take back. */
export function UndoBar({ keeper }: { readonly keeper: Keeper }) {
  const trouble = useSignal<string | null>(null);
  const last = liveUndo(keeper.connection).value;
  const entry = last.kind === 'ready' ? last.value : null;
  const takeBack = async () => {
    const outcome = await undo(keeper);
    if (outcome.kind === 'saved') trouble.value = null;
    else if (outcome.kind === 'unsaved') trouble.value = words.storage.why(outcome.why);
    else if (outcome.why.kind === 'by the Rules') trouble.value = byTheRules[outcome.why.why];
    else
      trouble.value =
        outcome.why.kind === 'nothing to undo' ? roundWords.undo.nothing : roundWords.undo[outcome.why.kind];
  };
  if (!entry && trouble.value === null) return null;
  return (
    <div class={css.bar}>
      <p role="status">{trouble.value ?? (entry && roundWords.undo.what(entry.what))}</p>
      {entry && (
        <button type="button" class={press.press} onClick={() => void takeBack()}>
          {roundWords.undo.key}
        </button>
      )}
    </div>
  );
}
