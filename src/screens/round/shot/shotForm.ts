import type { KnownBy } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { pitched, pitchOf, type Spot } from './pitch.ts';
import { type Asking, isNumberSlot, nextSlot, type Slot } from './slots.ts';

/** A shot half entered: what is known, the slot whose keys are open, and how it came to that. */
export interface ShotForm {
  /** The shot being changed; null: a new one. */
  readonly shotId: string | null;
  readonly entry: ShotEntry;
  /** null: nothing is left to ask. */
  readonly slot: Slot | null;
  /** Digits typed into a number slot and not yet taken over. */
  readonly typed: string;
  /** How the distances of this shot are known. */
  readonly by: KnownBy;
  /** Slots that were filled or skipped, and are not asked for again. */
  readonly passed: readonly Slot[];
}

/** Most digits of a distance: 999 yards are further than any shot may go. */
const MOST_DIGITS = 3;

/** A form as it first stands: on the first slot that the shot asks for. */
export function newForm(entry: ShotEntry, by: KnownBy, asking: Asking): ShotForm {
  return { shotId: null, entry, slot: nextSlot(entry, [], asking), typed: '', by, passed: [] };
}

/** A logged shot opened again, on a slot named or on the first that is open; nothing else is asked. */
export function editForm(shotId: string, entry: ShotEntry, by: KnownBy, asking: Asking): ShotForm {
  const known: Slot[] = entry.clubId === null ? [] : ['swing'];
  const slot = nextSlot(entry, known, asking) ?? 'club';
  return { shotId, entry, slot, typed: '', by: entry.carry?.by ?? by, passed: known };
}

/** Opens the keys of a slot. */
export function openSlot(form: ShotForm, slot: Slot): ShotForm {
  return { ...form, slot, typed: '' };
}

function moveOn(form: ShotForm, asking: Asking): ShotForm {
  const passed = form.slot === null || form.passed.includes(form.slot) ? form.passed : [...form.passed, form.slot];
  return { ...form, passed, typed: '', slot: nextSlot(form.entry, passed, asking) };
}

/**
 * Fills the open slot and moves on to the next that is asked for. A shot noted by its pitch keeps
 * that pitch when flag or aim are put right, so its carry goes along. Another club is asked for its swing.
 */
export function fill(form: ShotForm, changes: ShotChanges, asking: Asking): ShotForm {
  const passed = changes.clubId === undefined ? form.passed : form.passed.filter((slot) => slot !== 'swing');
  return moveOn({ ...form, passed, entry: changed(form, changes) }, asking);
}

/** Fills something without moving on: a tag, an intent, a note. */
export function note(form: ShotForm, changes: ShotChanges): ShotForm {
  return { ...form, entry: changed(form, changes) };
}

function changed(form: ShotForm, changes: ShotChanges): ShotEntry {
  const spot = pitchOf(form.entry);
  const entry = { ...form.entry, ...changes };
  const repitch = spot !== null && entry.flag_m !== null && changes.carry === undefined;
  return repitch && (changes.flag_m !== undefined || changes.aim !== undefined)
    ? { ...entry, ...pitched(entry, spot, form.entry.carry?.by ?? form.by) }
    : entry;
}

/** Leaves the open slot as it is and moves on. */
export function skip(form: ShotForm, asking: Asking): ShotForm {
  return moveOn(form, asking);
}

/** Notes how the distances of this shot are known; a carry noted by its pitch follows. */
export function knownBy(form: ShotForm, by: KnownBy, asking: Asking): ShotForm {
  const { entry } = form;
  const follows = pitchOf(entry) !== null && entry.carry !== null;
  const carry = follows && entry.carry ? { ...entry.carry, by } : entry.carry;
  return moveOn({ ...form, by, entry: { ...entry, carry } }, asking);
}

/** Notes where the ball pitched about the flag; on the green it also came to rest there, unless that was said. */
export function pitch(form: ShotForm, spot: Spot, isOnGreen: boolean, asking: Asking): ShotForm {
  const rests: ShotChanges = isOnGreen && form.entry.restLie === null ? { restLie: 'green' } : {};
  return moveOn(
    { ...form, slot: 'pitch', entry: { ...form.entry, ...pitched(form.entry, spot, form.by), ...rests } },
    asking,
  );
}

/** Takes a digit, or takes the last one back (`null`), in a number slot; anywhere else nothing happens. */
export function typeDigit(form: ShotForm, digit: string | null): ShotForm {
  if (!isNumberSlot(form.slot)) return form;
  if (digit === null) return { ...form, typed: form.typed.slice(0, -1) };
  if (!/^\d$/.test(digit) || form.typed.length >= MOST_DIGITS) return form;
  return { ...form, typed: `${form.typed}${digit}`.replace(/^0+(?=\d)/, '') };
}

/** A shot that was logged and taken back, on the slot that logged it; filling that slot logs it again. */
export function reopened(entry: ShotEntry, by: KnownBy): ShotForm {
  const passed: readonly Slot[] = ['lie', 'flag', 'club', 'swing', 'strike', 'pitch', 'rest'];
  const slot = pitchOf(entry) !== null && entry.restLie === 'green' ? 'pitch' : 'rest';
  return { shotId: null, entry, slot, typed: '', by: entry.carry?.by ?? by, passed };
}
