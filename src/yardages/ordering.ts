import { clockHours } from '../golf/swing.ts';
import { isotonicRegression } from '../statistics/isotonic.ts';
import type { Cell } from './cell.ts';

/**
 * Puts carries in the order that lofts and swings demand: of two full swings the one with more loft
 * never carries further, and of two swings with one club the shorter one never does. Full swings are
 * pooled weighted by their precision (isotonic regression over loft); a partial swing gives way to
 * the longer swing of its club.
 *
 * @param mean θ = ln carry of each cell; not changed.
 * @param variance posterior variance of each θ.
 */
export function orderedCarries(cells: readonly Cell[], mean: Float64Array, variance: ArrayLike<number>): Float64Array {
  const ordered = mean.slice();
  const full = cells.flatMap((cell, i) => (cell.swing === 'full' ? [i] : []));
  full.sort((a, b) => cells[b].loft_deg - cells[a].loft_deg || mean[a] - mean[b]);
  const pooled = isotonicRegression(
    full.map((i) => mean[i]),
    full.map((i) => 1 / variance[i]),
  );
  full.forEach((i, rank) => {
    ordered[i] = pooled[rank];
  });
  const byPeriod = new Map<number, number[]>();
  cells.forEach((cell, i) => {
    const swings = byPeriod.get(cell.period);
    if (swings) swings.push(i);
    else byPeriod.set(cell.period, [i]);
  });
  for (const swings of byPeriod.values()) {
    swings.sort((a, b) => clockHours(cells[a].swing) - clockHours(cells[b].swing));
    // A swing to 12:00 on the clock is no longer than a full one, and stands under it like the rest.
    const partial = swings.filter((i) => cells[i].swing !== 'full');
    const fullSwing = swings.find((i) => cells[i].swing === 'full');
    const within = isotonicRegression(
      partial.map((i) => ordered[i]),
      partial.map((i) => 1 / variance[i]),
    );
    const ceiling = fullSwing === undefined ? Number.POSITIVE_INFINITY : ordered[fullSwing];
    partial.forEach((i, rank) => {
      ordered[i] = Math.min(within[rank], ceiling);
    });
  }
  return ordered;
}
