/** Highest tens offered. */
const LAST_TENS = 390;

/** The tens offered first, lowest and how many, by the rows of keys there are: approaches for a flag, tee shots for the rest. */
const LIKELY = {
  flag: { 3: [60, 13], 4: [40, 18], 5: [20, 23] },
  shot: { 3: [190, 14], 4: [150, 19], 5: [120, 24] },
} as const;

/**
 * The tens of a distance in the order they are offered: the likely ones, then those below and above.
 * A distance takes two taps, the tens and then the unit.
 *
 * @param kind what the distance is. @param rows rows of five keys there is room for.
 */
export function tensKeys(kind: keyof typeof LIKELY, rows: 3 | 4 | 5): number[] {
  const [from, count] = LIKELY[kind][rows];
  const all = Array.from({ length: LAST_TENS / 10 + 1 }, (_, index) => index * 10);
  const likely = all.filter((tens) => tens >= from).slice(0, count);
  return [...likely, ...all.filter((tens) => !likely.includes(tens))];
}

/** The ten distances that a first choice of tens leaves, as digits: `140` to `149` for `14`. */
export function unitKeys(typed: string): string[] {
  return Array.from({ length: 10 }, (_, unit) => String(Number(`${typed}${unit}`)));
}
