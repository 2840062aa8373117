import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import type { ApproachDistances } from './approachDistances.ts';
import { expectedLeave, leaveSlope } from './expectedLeave.ts';

/** The expected leave of every club × swing from every distance, worked out once for all bags. */
export interface LeaveTable {
  readonly approaches: ApproachDistances;
  readonly forecasts: readonly GaussianMixture[];
  /** θ = ln(stock carry in m) of each cell. */
  readonly theta: ArrayLike<number>;
  /** For each cell the expected leave from each distance of the grid, m. */
  readonly leave_m: readonly Float64Array[];
}

/** How well a set of cells covers the distances a golfer faces. */
export interface Coverage {
  /** D: expected leave of a ball, long or short, over all the golfer's distances, m. */
  readonly leave_m: number;
  /** Expected distance from the number to the nearest stock carry, m: what the steps of the bag alone cost. */
  readonly step_m: number;
  /** The cell that leaves least from each distance of the grid. */
  readonly best: Int32Array;
  /** What it leaves, m. */
  readonly curve_m: Float64Array;
}

/** Works out the leave of every cell from every distance. @throws RangeError when the counts do not fit. */
export function leaveTable(
  approaches: ApproachDistances,
  forecasts: readonly GaussianMixture[],
  theta: ArrayLike<number>,
): LeaveTable {
  if (forecasts.length !== theta.length) throw new RangeError(`${forecasts.length} forecasts, ${theta.length} cells`);
  const leave_m = forecasts.map((forecast) => approaches.distance_m.map((d) => expectedLeave(forecast, d)));
  return { approaches, forecasts, theta, leave_m };
}

/**
 * How well a set S of club × swing covers a golfer's distances:
 *
 *   D(S) = Σ_d w_d · min over S of E|X − d|
 *
 * with the club that leaves least from each distance. Assumptions: the flag is the target, long and
 * short cost alike, every lie is the reference lie in standard conditions. Metres; smaller is better.
 *
 * @param cells places of the cells in the table, at least one; of equals the first counts.
 * @throws RangeError when there is no cell.
 * Source: the facility-location form of a bag, own; E|X − d| by {@link expectedLeave}.
 */
export function coverage(table: LeaveTable, cells: readonly number[]): Coverage {
  if (cells.length === 0) throw new RangeError('no cell: a bag of 0 clubs covers nothing');
  const { distance_m, weight } = table.approaches;
  const best = new Int32Array(distance_m.length);
  const curve_m = new Float64Array(distance_m.length);
  let leave = 0;
  let step = 0;
  for (let d = 0; d < distance_m.length; d++) {
    let least = Number.POSITIVE_INFINITY;
    let nearest = Number.POSITIVE_INFINITY;
    for (const cell of cells) {
      const here = table.leave_m[cell][d];
      if (here < least) {
        least = here;
        best[d] = cell;
      }
      nearest = Math.min(nearest, Math.abs(Math.exp(table.theta[cell]) - distance_m[d]));
    }
    curve_m[d] = least;
    leave += weight[d] * least;
    step += weight[d] * nearest;
  }
  return { leave_m: leave, step_m: step, best, curve_m };
}

/**
 * What one more cell (or another set) is worth: D(S) − D(S'), m; positive when S' leaves less, with its
 * posterior standard deviation by the delta method, √(gᵀ C g), where g_i = dD(S)/dθ_i − dD(S')/dθ_i.
 * The club chosen from a distance is at its best there, so that its choice does not enter g.
 *
 * @param covariance joint posterior covariance of θ of all cells of the table, row-major.
 * Source: Oehlert (1992), A note on the delta method, The American Statistician 46, 27–29.
 */
export function coverageDifference(
  table: LeaveTable,
  covariance: Float64Array,
  from: readonly number[],
  to: readonly number[],
): { gain_m: number; deviation_m: number } {
  const before = coverage(table, from);
  const after = coverage(table, to);
  const slope = new Float64Array(table.forecasts.length);
  const { distance_m, weight } = table.approaches;
  distance_m.forEach((d, i) => {
    const [a, b] = [before.best[i], after.best[i]];
    if (a === b) return;
    slope[a] += weight[i] * leaveSlope(table.forecasts[a], d);
    slope[b] -= weight[i] * leaveSlope(table.forecasts[b], d);
  });
  return { gain_m: before.leave_m - after.leave_m, deviation_m: Math.sqrt(quadratic(covariance, slope)) };
}

/**
 * Posterior standard deviation of the expected leave D of a set, m: what is not known of the carries,
 * by the delta method as in {@link coverageDifference}.
 *
 * @param covered coverage of the set. @param covariance of θ of all cells of the table, row-major.
 */
export function coverageDeviation(table: LeaveTable, covariance: Float64Array, { best }: Coverage): number {
  const slope = new Float64Array(table.forecasts.length);
  const { distance_m, weight } = table.approaches;
  distance_m.forEach((d, i) => {
    slope[best[i]] += weight[i] * leaveSlope(table.forecasts[best[i]], d);
  });
  return Math.sqrt(quadratic(covariance, slope));
}

/** xᵀ C x, not below 0. */
function quadratic(covariance: Float64Array, x: Float64Array): number {
  const n = x.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    if (x[i] === 0) continue;
    for (let j = 0; j < n; j++) sum += x[i] * covariance[i * n + j] * x[j];
  }
  return Math.max(0, sum);
}
