import type { GaussianMixture } from './gaussianMixture.ts';
import { normalDensity, normalDistribution } from './normal.ts';

/**
 * Continuous ranked probability score of a normal forecast N(μ, s²) once y is observed:
 * s (z (2Φ(z) − 1) + 2φ(z) − 1/√π) with z = (y − μ)/s.
 *
 * Not negative, in the unit of the forecast; smaller is better.
 * @throws RangeError when the deviation is not positive or a figure is not a number.
 * Source: Gneiting & Raftery (2007), Strictly proper scoring rules, JASA 102, 359–378, eq. (21).
 */
export function normalCrps(mu: number, deviation: number, observed: number): number {
  if (!(deviation > 0 && deviation < Infinity)) {
    throw new RangeError(`deviation ${deviation} of a forecast is not a positive number`);
  }
  const z = (observed - mu) / deviation;
  return deviation * (z * (2 * normalDistribution(z) - 1) + 2 * normalDensity(z) - 1 / Math.sqrt(Math.PI));
}

/**
 * Continuous ranked probability score of a mixture forecast once y is observed, E|X − y| − ½ E|X − X′|:
 * Σ w_k A(y − μ_k, s_k) − ½ Σ Σ w_k w_l A(μ_k − μ_l, √(s_k² + s_l²)), A(m, s) = 2 s φ(m/s) + m (2Φ(m/s) − 1).
 *
 * Not negative, in the unit of the means; smaller is better.
 * @throws RangeError when a figure is not a number.
 * Source: Grimit, Gneiting, Berrocal & Johnson (2006), QJRMS 132, 2925–2942, eq. (5).
 */
export function mixtureCrps(m: GaussianMixture, observed: number): number {
  const n = m.weights.length;
  let toObserved = 0;
  let within = 0;
  for (let k = 0; k < n; k++) {
    toObserved += m.weights[k] * meanSize(observed - m.means[k], m.deviations[k]);
    for (let l = 0; l < k; l++) {
      const spread = Math.hypot(m.deviations[k], m.deviations[l]);
      within += 2 * m.weights[k] * m.weights[l] * meanSize(m.means[k] - m.means[l], spread);
    }
    within += m.weights[k] * m.weights[k] * meanSize(0, Math.SQRT2 * m.deviations[k]);
  }
  return toObserved - 0.5 * within;
}

/** E|Z| for Z ~ N(m, s²). */
function meanSize(m: number, s: number): number {
  const z = m / s;
  return 2 * s * normalDensity(z) + m * (2 * normalDistribution(z) - 1);
}
