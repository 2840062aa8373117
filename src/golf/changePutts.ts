import type { Putt } from './hole.ts';

/**
 * The putts of a hole when there were so many in all: those whose lengths are known stay, the last ones
 * first, since the ball that was holed is the best remembered; those that come on top stand before them
 * with nothing known. The last putt of a hole that had none is taken for holed.
 *
 * @param count putts in all, 0 or more.
 * @param clubId the putter of those that come on top; null: not said.
 * @throws RangeError when the count is negative or not whole.
 */
export function changePutts(putts: readonly Putt[], count: number, clubId: string | null): Putt[] {
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`${count} putts on one hole`);
  const kept = putts.slice(Math.max(0, putts.length - count));
  const added = Array.from({ length: count - kept.length }, (_, index) => ({
    clubId,
    length_m: null,
    holed: kept.length === 0 && index === count - 1,
  }));
  return [...added, ...kept];
}
