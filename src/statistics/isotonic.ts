/**
 * The non-decreasing sequence closest to y in weighted least squares: minimises Σ w_i (y_i − f_i)² with
 * f_1 ≤ f_2 ≤ … ≤ f_n, by pooling adjacent violators. The weighted mean is kept.
 *
 * @param weights positive and finite, one for each y.
 * @throws RangeError naming the place when the lengths differ, a figure is not finite or a weight is not positive.
 * Source: Ayer, Brunk, Ewing, Reid & Silverman (1955), Ann. Math. Statist. 26, 641–647;
 * Barlow, Bartholomew, Bremner & Brunk (1972), Statistical Inference under Order Restrictions, ch. 1.
 */
export function isotonicRegression(y: ArrayLike<number>, weights: ArrayLike<number>): Float64Array {
  const n = y.length;
  if (weights.length !== n) throw new RangeError(`${weights.length} weights for ${n} figures`);
  const levels = new Float64Array(n);
  const masses = new Float64Array(n);
  const ends = new Int32Array(n);
  let blocks = 0;
  for (let i = 0; i < n; i++) {
    let level = y[i];
    let mass = weights[i];
    if (!Number.isFinite(level)) throw new RangeError(`figure ${i} is ${level}: a finite number is needed`);
    if (!(mass > 0 && mass < Infinity)) throw new RangeError(`weight ${i} is ${mass}: a positive number is needed`);
    while (blocks > 0 && levels[blocks - 1] >= level) {
      blocks--;
      const total = masses[blocks] + mass;
      // Written as a step from the lower level, so that equal levels stay exactly equal.
      level += (masses[blocks] / total) * (levels[blocks] - level);
      mass = total;
    }
    levels[blocks] = level;
    masses[blocks] = mass;
    ends[blocks] = i + 1;
    blocks++;
  }
  const fitted = new Float64Array(n);
  let start = 0;
  for (let block = 0; block < blocks; block++) {
    fitted.fill(levels[block], start, ends[block]);
    start = ends[block];
  }
  return fitted;
}
