/**
 * Arithmetic mean, Σ x_i / n, by compensated summation.
 *
 * @throws RangeError when there are no values, or their sum is no finite number.
 * Source: Neumaier (1974), Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen, ZAMM 54, 39–51.
 */
export function mean(values: ArrayLike<number>): number {
  if (values.length === 0) throw new RangeError('no values: a mean needs at least one');
  const sum = compensatedSum(values.length, (i) => values[i]);
  if (!Number.isFinite(sum)) throw new RangeError(`the values sum to ${sum}: finite numbers are needed`);
  return sum / values.length;
}

/**
 * Sample standard deviation, √(Σ (x_i − x̄)² / (n − 1)), by the corrected two-pass formula: the square sum is lessened
 * by (Σ (x_i − x̄))² / n, which is what rounding of x̄ put into it.
 *
 * Not negative, in the unit of the values.
 * @throws RangeError when there are fewer than two values, or one is not finite.
 * Source: Chan, Golub & LeVeque (1983), Algorithms for computing the sample variance, The American Statistician 37, 242–247.
 */
export function standardDeviation(values: ArrayLike<number>): number {
  const n = values.length;
  if (n < 2) throw new RangeError(`${n} values: a standard deviation needs at least two`);
  const centre = mean(values);
  const squares = compensatedSum(n, (i) => (values[i] - centre) ** 2);
  const residue = compensatedSum(n, (i) => values[i] - centre);
  return Math.sqrt(Math.max(0, squares - (residue * residue) / n) / (n - 1));
}

/** Σ term(i) for i < n; the low-order part that each addition loses is gathered apart and added at the end. */
function compensatedSum(n: number, term: (i: number) => number): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < n; i++) {
    const x = term(i);
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
}
