/**
 * Replaces the lower triangle of a symmetric positive definite matrix A by L with A = L Lᵀ.
 *
 * l_ij = (a_ij − Σ_{k<j} l_ik l_jk) / l_jj and l_ii = √(a_ii − Σ_{k<i} l_ik²), row by row, so that every sum runs
 * along two rows of memory. The strict upper triangle is neither read nor written.
 *
 * @param a row-major n × n; only the lower triangle counts.
 * @throws RangeError naming the pivot when the matrix is not positive definite (rows already done are overwritten).
 * Source: Golub & Van Loan (2013), Matrix Computations, 4th ed., § 4.2.
 */
export function choleskyInPlace(a: Float64Array, n: number): void {
  requireSquare(a, n);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    for (let j = 0; j < i; j++) {
      const other = j * n;
      a[row + j] = (a[row + j] - innerProduct(a, row, a, other, j)) / a[other + j];
    }
    const pivot = a[row + i] - innerProduct(a, row, a, row, i);
    if (!(pivot > 0 && pivot < Infinity)) {
      throw new RangeError(`pivot ${i} of ${n} is ${pivot}: the matrix is not positive definite`);
    }
    a[row + i] = Math.sqrt(pivot);
  }
}

/**
 * Solves A x = b from the factor L of {@link choleskyInPlace}: L y = b, then Lᵀ x = y. b becomes x.
 *
 * @param l row-major n × n; only the lower triangle counts.
 * @param b one vector of n figures, overwritten.
 * @throws RangeError when the sizes do not fit.
 */
export function solveCholesky(l: Float64Array, n: number, b: Float64Array): void {
  requireSquare(l, n);
  if (b.length !== n) throw new RangeError(`right-hand side of ${b.length} figures for a matrix of ${n} rows`);
  for (let i = 0; i < n; i++) {
    b[i] = (b[i] - innerProduct(l, i * n, b, 0, i)) / l[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n;
    const x = b[i] / l[row + i];
    b[i] = x;
    for (let k = 0; k < i; k++) b[k] -= l[row + k] * x;
  }
}

/**
 * The full symmetric inverse A⁻¹ = L⁻ᵀ L⁻¹ from the factor L of {@link choleskyInPlace}, row-major n × n.
 *
 * @throws RangeError when the size does not fit.
 */
export function invertFromCholesky(l: Float64Array, n: number): Float64Array {
  requireSquare(l, n);
  // Row j of u holds column j of L⁻¹, so that both products below run along rows.
  const u = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const row = j * n;
    u[row + j] = 1 / l[row + j];
    for (let i = j + 1; i < n; i++) {
      u[row + i] = -innerProduct(l, i * n + j, u, row + j, i - j) / l[i * n + i];
    }
  }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const entry = innerProduct(u, i * n + i, u, j * n + i, n - i);
      inverse[i * n + j] = entry;
      inverse[j * n + i] = entry;
    }
  }
  return inverse;
}

/**
 * ln det A = 2 Σ ln l_ii from the factor L of {@link choleskyInPlace}.
 *
 * @throws RangeError when the size does not fit.
 */
export function logDeterminantFromCholesky(l: Float64Array, n: number): number {
  requireSquare(l, n);
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(l[i * n + i]);
  return 2 * sum;
}

/** Σ x_(from+k) y_(start+k) over `count` terms. Four sums side by side keep the processor from waiting on each addition. */
function innerProduct(x: Float64Array, from: number, y: Float64Array, start: number, count: number): number {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let k = 0;
  for (; k + 3 < count; k += 4) {
    a += x[from + k] * y[start + k];
    b += x[from + k + 1] * y[start + k + 1];
    c += x[from + k + 2] * y[start + k + 2];
    d += x[from + k + 3] * y[start + k + 3];
  }
  for (; k < count; k++) a += x[from + k] * y[start + k];
  return a + b + (c + d);
}

function requireSquare(a: Float64Array, n: number): void {
  if (a.length !== n * n) throw new RangeError(`${a.length} figures are not a matrix of ${n} × ${n}`);
}
