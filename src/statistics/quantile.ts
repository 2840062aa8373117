/**
 * Sample quantile by linear interpolation of the order statistics, Q(p) = (1−g) x_(j) + g x_(j+1) with
 * j = ⌊np + m⌋, g = np + m − j, held within the sample.
 *
 * @param p probability, 0 to 1 inclusive.
 * @param type the definition after Hyndman & Fan: 6 has m = p (Weibull), 7 has m = 1 − p (Gumbel; the usual default),
 * 8 has m = (p + 1)/3 (approximately median-unbiased whatever the distribution).
 * @throws RangeError when there are no values, one is NaN, or p is outside 0 to 1.
 * Source: Hyndman & Fan (1996), Sample quantiles in statistical packages, The American Statistician 50, 361–365.
 */
export function quantile(values: ArrayLike<number>, p: number, type: 6 | 7 | 8): number {
  const n = values.length;
  if (n === 0) throw new RangeError('no values: a quantile needs at least one');
  if (!(p >= 0 && p <= 1)) throw new RangeError(`probability ${p} is not between 0 and 1`);
  const sorted = Float64Array.from(values).sort();
  // Typed arrays sort NaN last.
  if (Number.isNaN(sorted[n - 1])) throw new RangeError('NaN among the values: a quantile needs numbers');
  const position = n * p + offset(p, type);
  // The fuzz keeps rounding of n·p + m from stepping below an order statistic it should hit.
  const j = Math.floor(position + 4 * Number.EPSILON * position);
  const g = Math.max(0, position - j);
  const lower = sorted[Math.min(Math.max(j - 1, 0), n - 1)];
  const upper = sorted[Math.min(Math.max(j, 0), n - 1)];
  // Equal neighbours are returned as they are: ∞ − ∞ is no number.
  return g === 0 || lower === upper ? lower : (1 - g) * lower + g * upper;
}

/**
 * The median: the middle value, or the mean of the two middle ones. Types 6, 7 and 8 agree on it.
 *
 * @throws RangeError when there are no values or one is NaN.
 */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5, 7);
}

function offset(p: number, type: 6 | 7 | 8): number {
  if (type === 6) return p;
  if (type === 7) return 1 - p;
  return (p + 1) / 3;
}
