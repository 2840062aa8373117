import { normalDensity, normalDistribution, normalQuantile } from './normal.ts';

/**
 * A mixture of normal distributions: component k has weight w_k, mean μ_k and standard deviation s_k.
 *
 * The three arrays are of one length, weights are not negative and sum to 1, deviations are positive.
 */
export type GaussianMixture = {
  readonly weights: Float64Array;
  readonly means: Float64Array;
  readonly deviations: Float64Array;
};

/** Steps after which a quantile search that still moves is a broken contract; bisection alone needs about 60. */
const MOST_STEPS = 200;

/** Density at x: Σ w_k φ((x − μ_k)/s_k) / s_k. */
export function mixtureDensity(m: GaussianMixture, x: number): number {
  let sum = 0;
  for (let k = 0; k < m.weights.length; k++) {
    sum += (m.weights[k] * normalDensity((x - m.means[k]) / m.deviations[k])) / m.deviations[k];
  }
  return sum;
}

/** Probability of at most x: Σ w_k Φ((x − μ_k)/s_k). */
export function mixtureDistribution(m: GaussianMixture, x: number): number {
  let sum = 0;
  for (let k = 0; k < m.weights.length; k++) {
    sum += m.weights[k] * normalDistribution((x - m.means[k]) / m.deviations[k]);
  }
  return sum;
}

/**
 * The x with F(x) = p, by Newton steps kept inside a shrinking bracket.
 *
 * The bracket is the least and greatest quantile of the components: between them F must cross p.
 * Accurate to 1e-10 of |x| or of the narrowest deviation, whichever is the larger.
 *
 * @param p a probability strictly between 0 and 1.
 * @throws RangeError when p is not strictly between 0 and 1, or when the mixture has no component with weight.
 */
export function mixtureQuantile(m: GaussianMixture, p: number): number {
  const z = normalQuantile(p);
  let low = Infinity;
  let high = -Infinity;
  let narrowest = Infinity;
  for (let k = 0; k < m.weights.length; k++) {
    if (m.weights[k] === 0) continue;
    const q = m.means[k] + m.deviations[k] * z;
    low = Math.min(low, q);
    high = Math.max(high, q);
    narrowest = Math.min(narrowest, m.deviations[k]);
  }
  if (!(low <= high && narrowest > 0)) {
    throw new RangeError(
      `a mixture of ${m.weights.length} components has no quantile ${p}: weight and spread are needed`,
    );
  }
  let x = 0.5 * (low + high);
  let lastWidth = Infinity;
  for (let step = 0; step < MOST_STEPS; step++) {
    const tolerance = 1e-12 * Math.max(Math.abs(x), narrowest);
    const excess = mixtureDistribution(m, x) - p;
    if (excess === 0) return x;
    if (excess > 0) high = x;
    else low = x;
    const next = x - excess / mixtureDensity(m, x);
    const width = high - low;
    const middle = 0.5 * (low + high);
    // A Newton step is taken only inside the bracket and while the bracket or the step keeps shrinking.
    const newton = next > low && next < high && Math.abs(next - x) < 0.5 * lastWidth;
    const moved = newton ? next : middle;
    lastWidth = Math.abs(moved - x);
    if (Math.abs(moved - x) <= tolerance || width <= tolerance) return moved;
    x = moved;
  }
  throw new RangeError(
    `quantile ${p} of a mixture not found in ${MOST_STEPS} steps: a deviation or weight is no number`,
  );
}

/** Mean of the mixture: Σ w_k μ_k. */
export function mixtureMean(m: GaussianMixture): number {
  let sum = 0;
  for (let k = 0; k < m.weights.length; k++) sum += m.weights[k] * m.means[k];
  return sum;
}

/**
 * Expected distance from d, E|X − d|: Σ w_k (s√(2/π) e^(−μ²/2s²) + μ (1 − 2Φ(−μ/s))) with μ = μ_k − d, s = s_k.
 *
 * Not negative, in the unit of the means.
 * Source: the folded normal distribution, Leone, Nelson & Nottingham (1961), Technometrics 3, 543–550.
 */
export function expectedDistance(m: GaussianMixture, d: number): number {
  let sum = 0;
  for (let k = 0; k < m.weights.length; k++) {
    const s = m.deviations[k];
    const mu = m.means[k] - d;
    const z = mu / s;
    sum += m.weights[k] * (2 * s * normalDensity(z) + mu * (1 - 2 * normalDistribution(-z)));
  }
  return sum;
}
