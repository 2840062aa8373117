import type { Draft } from '../../../logbook/draft.ts';
import type { ShotForm } from './shotForm.ts';
import { slots } from './slots.ts';

/** A half-entered shot as it is stored. */
export function draftOf(form: ShotForm, roundId: string): Draft {
  const { shotId, slot, typed, entry, by, passed } = form;
  return { roundId, hole: entry.hole, shotId, slot, typed, entry, by, passed };
}

/**
 * A stored draft as the form it was; null when it belongs to another round, hole or shot, or when its
 * shot was logged in the meantime (the app died between the two writings).
 *
 * @param logged order numbers of the shots on the hole.
 */
export function formOfDraft(
  draft: Draft | null,
  at: {
    readonly roundId: string;
    readonly hole: number;
    readonly shotId: string | null;
    readonly logged: readonly number[];
  },
): ShotForm | null {
  if (draft === null || draft.roundId !== at.roundId || draft.hole !== at.hole || draft.shotId !== at.shotId)
    return null;
  if (draft.shotId === null && at.logged.includes(draft.entry.number)) return null;
  const slot = slots.find((slot) => slot === draft.slot);
  if (slot === undefined) return null;
  const { shotId, entry, typed, by = 'laser', passed = [] } = draft;
  return { shotId, entry, slot, typed, by, passed: slots.filter((each) => passed.includes(each)) };
}
