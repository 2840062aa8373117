import { normalDensity } from './normal.ts';

/**
 * Weighted Gaussian kernel density at the points asked for: f(x) = Σ w_i φ((x − v_i)/h) / (h Σ w_i).
 *
 * @param weights not negative, one for each value; they need not sum to 1.
 * @param bandwidth h, the kernel's standard deviation, positive, in the unit of the values.
 * @param at the points x; the result has one density for each, per unit of the values.
 * @throws RangeError when the lengths differ, the bandwidth is not positive, or the weights sum to nothing.
 * Source: Silverman (1986), Density Estimation for Statistics and Data Analysis, § 2.4.
 */
export function kernelDensity(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  bandwidth: number,
  at: ArrayLike<number>,
): Float64Array {
  const n = values.length;
  if (weights.length !== n) throw new RangeError(`${weights.length} weights for ${n} values`);
  if (!(bandwidth > 0 && bandwidth < Infinity)) throw new RangeError(`bandwidth ${bandwidth} is not positive`);
  let total = 0;
  for (let i = 0; i < n; i++) {
    if (!(weights[i] >= 0)) throw new RangeError(`weight ${i} is ${weights[i]}: a number from 0 up is needed`);
    total += weights[i];
  }
  if (!(total > 0 && total < Infinity)) throw new RangeError(`weights sum to ${total}: a positive sum is needed`);
  const densities = new Float64Array(at.length);
  for (let j = 0; j < at.length; j++) {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += weights[i] * normalDensity((at[j] - values[i]) / bandwidth);
    densities[j] = sum / (bandwidth * total);
  }
  return densities;
}
