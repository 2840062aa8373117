/** Lowest tens offered first for a slot, in the golfer's unit: approaches for a flag, tee shots for the rest. */
export const FIRST_TENS = { flag: { few: 60, many: 20 }, other: { few: 190, many: 130 } } as const;

/** Highest tens offered at all. */
const LAST_TENS = 390;

/**
 * The tens of a distance, in pages of so many keys. A distance takes two taps: the tens, then the
 * unit. The first page holds the likely ones, the others those below and above, in order.
 *
 * @param from lowest tens of the first page. @param room keys on a page, at least 1.
 */
export function tensPages(from: number, room: number): number[][] {
  const all = Array.from({ length: LAST_TENS / 10 + 1 }, (_, index) => index * 10);
  const likely = all.filter((tens) => tens >= from).slice(0, room);
  const others = all.filter((tens) => !likely.includes(tens));
  const pages = [likely];
  for (let start = 0; start < others.length; start += room) pages.push(others.slice(start, start + room));
  return pages;
}

/** The ten distances that a first choice of tens leaves, as digits: `140` to `149` for `14`. */
export function unitKeys(typed: string): string[] {
  return Array.from({ length: 10 }, (_, unit) => String(Number(`${typed}${unit}`)));
}
