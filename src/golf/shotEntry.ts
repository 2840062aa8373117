import * as z from 'zod/mini';
import { type Shot, shotSchema } from './shot.ts';

/** The keys that the logbook gives a shot, not the golfer. */
type GivenKey = 'id' | 'roundId' | 'changedAt' | 'device';

/** What the golfer enters of a shot: every slot of its sentence, with `null` for one left open. */
export type ShotEntry = {
  [Key in keyof Shot as string extends Key ? never : Key extends GivenKey ? never : Key]: Shot[Key];
};

/** The slots of a shot that change; the others stay. */
export type ShotChanges = Partial<ShotEntry>;

/**
 * A shot with nothing known but where it stands in the round: full swing, normal intent, in play.
 *
 * @param hole number of the hole.
 * @param number place among the shots of the hole; fractions allowed.
 * @throws RangeError when the hole or number is outside what a shot may hold.
 */
export function blankEntry(hole: number, number: number): ShotEntry {
  const parsed = z.safeParse(shotSchema, { id: 'blank', roundId: 'blank', hole, number, clubId: null });
  if (!parsed.success) throw new RangeError(`no shot stands at number ${number} of hole ${hole}`);
  return entryOf(parsed.data);
}

/** What the golfer entered of a shot, without the keys that the logbook gave it. */
export function entryOf(shot: Shot): ShotEntry {
  const { id: _id, roundId: _roundId, changedAt: _changedAt, device: _device, ...entry } = shot;
  return entry as ShotEntry;
}
