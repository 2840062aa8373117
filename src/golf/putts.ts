import type { Putt } from './hole.ts';

/** Most putts a hole may hold, as the hole's schema has it. */
const MOST_PUTTS = 50;

/**
 * So many putts with nothing known of their lengths, the last one holed.
 *
 * @param count 0 to 50.
 * @param clubId the putter; null: not said.
 * @throws RangeError when the count is not a whole number in that range.
 */
export function puttsByCount(count: number, clubId: string | null): Putt[] {
  if (!Number.isInteger(count) || count < 0 || count > MOST_PUTTS) {
    throw new RangeError(`${count} putts on one hole: 0 to ${MOST_PUTTS} can be noted`);
  }
  return Array.from({ length: count }, (_, index) => ({ clubId, length_m: null, holed: index === count - 1 }));
}
