import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import { normalDistribution } from '../statistics/normal.ts';

/**
 * Expected leave of a ball meant for a distance: E|X − d|, where ln X follows a mixture of normal
 * distributions. Long and short count alike; how far it is off line is not in it.
 *
 * With z = (ln d − μ)/s for each component, in closed form:
 *
 *   E|X − d| = e^(μ+s²/2) (1 − 2Φ(z − s)) + d (2Φ(z) − 1)
 *
 * @param forecast of ln(carry in m). @param distance_m d, greater than 0. @returns metres, 0 or more.
 * @throws RangeError when the distance is not greater than 0.
 * Source: partial expectations of the log-normal distribution; Johnson, Kotz & Balakrishnan (1994),
 * Continuous Univariate Distributions 1, ch. 14. Accurate to rounding.
 */
export function expectedLeave(forecast: GaussianMixture, distance_m: number): number {
  return sumOver(forecast, distance_m, (mean, tail, middle) => mean * tail + distance_m * middle);
}

/**
 * How the expected leave changes with θ, the logarithm of the stock carry: d E|X − d| / dθ, metres per
 * unit of ln carry. Negative for a club that is too short. Each component gives e^(μ+s²/2) (1 − 2Φ(z − s)).
 *
 * @throws RangeError when the distance is not greater than 0.
 * Source: derivative of {@link expectedLeave}.
 */
export function leaveSlope(forecast: GaussianMixture, distance_m: number): number {
  return sumOver(forecast, distance_m, (mean, tail) => mean * tail);
}

function sumOver(
  { weights, means, deviations }: GaussianMixture,
  distance_m: number,
  term: (mean: number, tail: number, middle: number) => number,
): number {
  if (!(distance_m > 0)) throw new RangeError(`distance ${distance_m} m: more than 0 is needed`);
  const log = Math.log(distance_m);
  let sum = 0;
  for (let k = 0; k < weights.length; k++) {
    const s = deviations[k];
    const z = (log - means[k]) / s;
    const mean = Math.exp(means[k] + 0.5 * s * s);
    sum += weights[k] * term(mean, 1 - 2 * normalDistribution(z - s), 2 * normalDistribution(z) - 1);
  }
  return sum;
}
