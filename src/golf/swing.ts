import * as z from 'zod/mini';
import { nameField } from './text.ts';

/** The three partial swings that every wedge has a number for, by the clock position of the lead arm. */
export const WEDGE_SWINGS = ['7:30', '9:00', '10:30'] as const;

/** Where on the clock an arm can stop short of full, in hours: from half past six up to twelve. */
const SHORTEST_HOURS = 6.5;
const FULL_HOURS = 12;

/** How long the swing was: `full`, or the clock position of the lead arm at the top as `H:MM`. */
export const swingField = z.string().check(z.regex(/^(full|([1-9]|1[0-2]):[0-5]\d)$/));

/** How many positions of the golfer's own there may be. */
const OWN_LIMIT = 24;

/** A swing position of the golfer's own, for any club, with the word he has for it. */
export const ownSwingSchema = z.looseObject({ swing: swingField, label: z._default(nameField, '') });
export type OwnSwing = z.infer<typeof ownSwingSchema>;

/** The golfer's own positions and words. */
export const ownSwingsField = z._default(z.array(ownSwingSchema).check(z.maxLength(OWN_LIMIT)), []);

/** A swing length: `full`, or a clock position of the lead arm such as `9:00`. */
export type Swing = z.infer<typeof swingField>;

/**
 * Hours on the clock face that the lead arm reaches: 9 for `9:00`, 10.5 for `10:30`.
 *
 * The arm hangs at 6:00 and goes up through 9:00; a full swing counts as 12. Common practice, no
 * source.
 *
 * @throws RangeError when the text is no swing length.
 */
export function clockHours(swing: Swing): number {
  if (swing === 'full') return FULL_HOURS;
  const [hours, minutes] = swing.split(':');
  const value = Number(hours) + Number(minutes) / 60;
  if (!Number.isFinite(value)) throw new RangeError(`${swing} is no swing length`);
  return value;
}

/** A partial swing as typed, in its written form: `8:00` for `08:00`; null when no arm stops there. */
export function readSwing(typed: string): Swing | null {
  const text = typed.trim().replace(/^0(?=\d)/, '');
  const parsed = z.safeParse(swingField, text);
  if (!parsed.success || parsed.data === 'full') return null;
  const hours = clockHours(parsed.data);
  return hours >= SHORTEST_HOURS && hours < FULL_HOURS ? parsed.data : null;
}
