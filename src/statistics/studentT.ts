/**
 * Distribution function of Student's t for an even number of degrees of freedom, in closed form: with
 * s = t/√(ν + t²), F(t) = ½ + ½ s Σ_{k<ν/2} a_k (1 − s²)^k, a_0 = 1, a_k = a_{k−1} (2k − 1)/(2k).
 *
 * Accurate to rounding times ν/2. ±∞ give 0 and 1.
 * @param degrees ν, even, 2 or more.
 * @throws RangeError when t is NaN or ν is not even and positive.
 * Source: Abramowitz & Stegun (1964), Handbook of Mathematical Functions, 26.7.4.
 */
export function studentDistribution(t: number, degrees: number): number {
  if (Number.isNaN(t)) throw new RangeError(`t ${t} is not a number`);
  if (!(degrees >= 2) || degrees % 2 !== 0) throw new RangeError(`${degrees} degrees of freedom: an even number`);
  if (Math.abs(t) === Number.POSITIVE_INFINITY) return t > 0 ? 1 : 0;
  const s = t / Math.hypot(Math.sqrt(degrees), t);
  const rest = degrees / (degrees + t * t);
  let term = 1;
  let sum = 1;
  for (let k = 1; k < degrees / 2; k++) {
    term *= (rest * (2 * k - 1)) / (2 * k);
    sum += term;
  }
  return 0.5 + 0.5 * s * sum;
}
