import * as z from 'zod/mini';

/** The instant that a record without one is taken to have been changed at: older than any other. */
export const NEVER_CHANGED = '1970-01-01T00:00:00.000Z';

/** Milliseconds in a day of 86,400 s. */
const MS_PER_DAY = 86_400_000;

/** Longest instant in a file, in UTF-16 units: to the billionth of a second. */
const INSTANT_LIMIT = 30;

/** An instant as written in a file: ISO 8601, UTC (`Z`), to the second or finer. */
export const instantField = z.iso.datetime().check(z.maxLength(INSTANT_LIMIT));

/** A calendar date as written in a file: `YYYY-MM-DD`, a day that exists. */
export const dateField = z.iso.date();

/**
 * Days from one instant or date to another; negative when `to` is the earlier. A bare date counts as
 * 00:00 UTC.
 *
 * @throws RangeError when either text is no date.
 */
export function daysBetween(from: string, to: string): number {
  const span = Date.parse(to) - Date.parse(from);
  if (!Number.isFinite(span)) throw new RangeError(`no date: ${from} or ${to}`);
  return span / MS_PER_DAY;
}
