import type { ShotEntry } from '../../../golf/shotEntry.ts';

/** The slots of a shot's sentence, each with keys of its own. */
export const slots = [
  'lie',
  'flag',
  'flag by',
  'club',
  'swing',
  'strike',
  'pitch',
  'rest',
  'carry',
  'total',
  'cleared',
  'short of',
  'aim',
  'more',
  'note',
] as const;
export type Slot = (typeof slots)[number];

/** The slots that take a distance by number keys. */
export const numberSlots = ['flag', 'carry', 'total', 'cleared', 'short of'] as const;
export type NumberSlot = (typeof numberSlots)[number];

/** Whether a slot takes a distance by number keys. */
export function isNumberSlot(slot: Slot | null): slot is NumberSlot {
  return numberSlots.some((number) => number === slot);
}

/** In the order a shot is lived: before it, after impact, at the green. */
const LIVED = ['lie', 'flag', 'club', 'swing', 'strike', 'pitch', 'rest'] as const;

/** What decides which slots a shot asks for, beyond the shot itself. */
export interface Asking {
  /** Par of the hole; null: not known. */
  readonly par: number | null;
  /** Ids of the clubs whose partial swings are asked for: the wedges. */
  readonly wedges: ReadonlySet<string>;
}

/** A shot with a flag to play at: any but a tee shot of a par 4 or longer, a chip, and a greenside bunker shot. */
export function playsAtFlag(entry: ShotEntry, asking: Asking): boolean {
  if (entry.intent === 'chip' || entry.lie === 'greenside bunker') return false;
  return entry.lie !== 'tee' || asking.par === 3;
}

function isMeasured(entry: ShotEntry): boolean {
  return [entry.carry, entry.total, entry.carryAtLeast_m, entry.carryAtMost_m].some((measure) => measure !== null);
}

function endedElsewhere(entry: ShotEntry): boolean {
  return entry.outcome !== 'in play' && entry.outcome !== 'provisional unused';
}

/** Whether the shot, as far as it is known, asks for a slot. */
function asksFor(slot: (typeof LIVED)[number], entry: ShotEntry, asking: Asking): boolean {
  switch (slot) {
    case 'lie':
      return entry.lie === null;
    case 'flag':
      return entry.flag_m === null && playsAtFlag(entry, asking);
    case 'club':
      return entry.clubId === null;
    case 'swing':
      return entry.clubId !== null && asking.wedges.has(entry.clubId) && entry.intent !== 'chip';
    case 'strike':
      return entry.strike === null;
    case 'pitch':
      return entry.flag_m !== null && !isMeasured(entry) && !endedElsewhere(entry);
    case 'rest':
      return entry.restLie === null && !endedElsewhere(entry);
  }
}

/**
 * The next slot that a shot asks for, in the order it is lived; null: none is left. A slot passed
 * once, filled or not, is not asked for again.
 */
export function nextSlot(entry: ShotEntry, passed: readonly Slot[], asking: Asking): Slot | null {
  return LIVED.find((slot) => !passed.includes(slot) && asksFor(slot, entry, asking)) ?? null;
}
