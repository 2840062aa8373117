import { kernelDensity } from '../statistics/kernel.ts';
import { normalDistribution } from '../statistics/normal.ts';

/** Shortest approach that a bag is judged by, and the longest, m: 30 and 260 yd. Own choice. */
export const NEAREST_APPROACH = 27.432;
export const FURTHEST_APPROACH = 237.744;
/** Step of the grid, m. */
const STEP = 1.8288; // 2 yd
/** Standard deviation of the kernel, m: 8 yd. Own choice. */
const KERNEL = 7.3152;
/** How many approaches the wide default is worth. Own choice. */
const DEFAULT_WORTH = 40;
/** The wide default begins here, m: 40 yd. Own choice. */
const DEFAULT_FROM = 36.576;

/** How often a golfer faces each distance to the flag: weights that sum to 1 on a grid in metres. */
export interface ApproachDistances {
  readonly distance_m: Float64Array;
  readonly weight: Float64Array;
  /** Own approaches that it rests on. */
  readonly own: number;
  /** Share of the own approaches against the wide default, 0 to 1. */
  readonly ownShare: number;
}

/**
 * The distances that a golfer faces with a club in hand, from his own approaches: a kernel of 8 yd
 * round each of them, mixed with a wide default (every distance from 40 yd to his reach alike) that is
 * worth 40 approaches, so that a few rounds do not decide a bag.
 *
 * Assumption: the courses to come are like those played. Approaches outside 30 to 260 yd are not counted.
 *
 * @param flags_m distances to the flag of own approach shots, m.
 * @param reach_m longest distance of the default, m: the longest stock carry off the turf.
 * @throws RangeError when the reach is no finite number.
 * Source: kernel after Silverman (1986); its width and the default are our own choice.
 */
export function approachDistances(flags_m: readonly number[], reach_m: number): ApproachDistances {
  if (!Number.isFinite(reach_m)) throw new RangeError(`reach ${reach_m} m is no finite number`);
  const counted = flags_m.filter((m) => m >= NEAREST_APPROACH && m <= FURTHEST_APPROACH).sort((a, b) => a - b);
  const points = Math.round((FURTHEST_APPROACH - NEAREST_APPROACH) / STEP) + 1;
  const distance_m = Float64Array.from({ length: points }, (_, i) => NEAREST_APPROACH + i * STEP);
  const reach = Math.min(FURTHEST_APPROACH, Math.max(DEFAULT_FROM + 2 * KERNEL, reach_m));
  const wide = distance_m.map(
    (d) => normalDistribution((d - DEFAULT_FROM) / KERNEL) - normalDistribution((d - reach) / KERNEL),
  );
  const ownShare = counted.length / (counted.length + DEFAULT_WORTH);
  const own =
    counted.length === 0
      ? new Float64Array(points)
      : kernelDensity(counted, new Float64Array(counted.length).fill(1), KERNEL, distance_m);
  normalise(wide);
  normalise(own);
  const weight = wide.map((w, i) => (1 - ownShare) * w + ownShare * own[i]);
  normalise(weight);
  return { distance_m, weight, own: counted.length, ownShare };
}

/** Scales weights to sum to 1; weights that sum to nothing stay. */
function normalise(weights: Float64Array): void {
  const total = weights.reduce((sum, w) => sum + w, 0);
  if (total > 0) for (let i = 0; i < weights.length; i++) weights[i] /= total;
}
