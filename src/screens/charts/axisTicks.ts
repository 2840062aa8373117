/** Steps that people count in. */
const STEPS = [1, 2, 5, 10, 20, 25, 50, 100, 200] as const;

/**
 * Round figures to write under an axis: multiples of 1, 2, 5, 10, 20, 25, 50, 100 or 200 from `low` to `high`.
 *
 * @param most how many there is room for; the smallest step that keeps to it is taken.
 */
export function axisTicks(low: number, high: number, most: number): number[] {
  const step =
    STEPS.find((step) => Math.floor(high / step) - Math.ceil(low / step) + 1 <= most) ?? STEPS[STEPS.length - 1];
  const ticks: number[] = [];
  for (let tick = Math.ceil(low / step) * step; tick <= high; tick += step) ticks.push(tick);
  return ticks;
}
