import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  choleskyInPlace,
  invertFromCholesky,
  logDeterminantFromCholesky,
  solveCholesky,
} from '../../src/statistics/cholesky.ts';

/** B Bᵀ + n·I from figures of −1 to 1: symmetric, positive definite, well conditioned. */
const definite = fc.integer({ min: 1, max: 17 }).chain((n) =>
  fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: n * n, maxLength: n * n }).map((b) => {
    const a = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        for (let k = 0; k < n; k++) a[i * n + j] += b[i * n + k] * b[j * n + k];
        if (i === j) a[i * n + j] += n;
      }
    }
    return { a, n };
  }),
);

function factor(a: Float64Array, n: number): Float64Array {
  const l = a.slice();
  choleskyInPlace(l, n);
  return l;
}

test('L Lᵀ is the matrix again, and the upper triangle is left alone', () => {
  fc.assert(
    fc.property(definite, ({ a, n }) => {
      const l = factor(a, n);
      for (let i = 0; i < n; i++) {
        for (let j = 0; j <= i; j++) {
          let sum = 0;
          for (let k = 0; k <= j; k++) sum += l[i * n + k] * l[j * n + k];
          expect(Math.abs(sum - a[i * n + j])).toBeLessThanOrEqual(1e-13 * n);
        }
        for (let j = i + 1; j < n; j++) expect(l[i * n + j]).toBe(a[i * n + j]);
      }
    }),
  );
});

test('the upper triangle is not read', () => {
  fc.assert(
    fc.property(definite, ({ a, n }) => {
      const spoilt = a.slice();
      for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) spoilt[i * n + j] = Number.NaN;
      const clean = factor(a, n);
      const l = factor(spoilt, n);
      expect(invertFromCholesky(l, n)).toEqual(invertFromCholesky(clean, n));
      const b = new Float64Array(n).fill(1);
      solveCholesky(l, n, b);
      expect(b.every(Number.isFinite)).toBe(true);
    }),
  );
});

test('solving gives back the vector that was multiplied', () => {
  fc.assert(
    fc.property(definite, ({ a, n }) => {
      const x = Float64Array.from({ length: n }, (_, i) => i - 2.5);
      const b = new Float64Array(n);
      for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) b[i] += a[i * n + j] * x[j];
      solveCholesky(factor(a, n), n, b);
      for (let i = 0; i < n; i++) expect(Math.abs(b[i] - x[i])).toBeLessThanOrEqual(1e-11);
    }),
  );
});

test('the inverse is symmetric and takes the matrix to the identity', () => {
  fc.assert(
    fc.property(definite, ({ a, n }) => {
      const inverse = invertFromCholesky(factor(a, n), n);
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          expect(inverse[i * n + j]).toBe(inverse[j * n + i]);
          let sum = 0;
          for (let k = 0; k < n; k++) sum += inverse[i * n + k] * a[k * n + j];
          expect(Math.abs(sum - (i === j ? 1 : 0))).toBeLessThanOrEqual(1e-12);
        }
      }
    }),
  );
});

test('the log determinant of [[4,2],[2,3]] is ln 8, and of a diagonal the sum of logs even where det overflows', () => {
  expect(logDeterminantFromCholesky(factor(Float64Array.of(4, 2, 2, 3), 2), 2)).toBeCloseTo(Math.log(8), 14);
  const n = 80;
  const diagonal = new Float64Array(n * n);
  for (let i = 0; i < n; i++) diagonal[i * n + i] = 1e10;
  expect(logDeterminantFromCholesky(factor(diagonal, n), n)).toBeCloseTo(n * Math.log(1e10), 9);
});

test('a matrix that is not positive definite is refused with the pivot', () => {
  expect(() => choleskyInPlace(Float64Array.of(1, 2, 2, 1), 2)).toThrow(
    new RangeError('pivot 1 of 2 is -3: the matrix is not positive definite'),
  );
  expect(() => choleskyInPlace(Float64Array.of(0), 1)).toThrow(/pivot 0 of 1 is 0/);
  expect(() => choleskyInPlace(Float64Array.of(1, 0, Number.NaN, 1), 2)).toThrow(/pivot 1 of 2 is NaN/);
  expect(() => choleskyInPlace(Float64Array.of(Infinity), 1)).toThrow(/pivot 0 of 1 is Infinity/);
});

test('sizes that do not fit are refused', () => {
  expect(() => choleskyInPlace(new Float64Array(5), 2)).toThrow(new RangeError('5 figures are not a matrix of 2 × 2'));
  expect(() => invertFromCholesky(new Float64Array(3), 2)).toThrow(RangeError);
  expect(() => logDeterminantFromCholesky(new Float64Array(3), 2)).toThrow(RangeError);
  expect(() => solveCholesky(Float64Array.of(1, 0, 0, 1), 2, new Float64Array(3))).toThrow(
    new RangeError('right-hand side of 3 figures for a matrix of 2 rows'),
  );
});
