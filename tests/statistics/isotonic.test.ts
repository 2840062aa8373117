import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isotonicRegression } from '../../src/statistics/isotonic.ts';

const weighted = fc
  .array(fc.tuple(fc.double({ min: -300, max: 300, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true })), {
    minLength: 1,
    maxLength: 40,
  })
  .map((pairs) => ({ y: pairs.map(([y]) => y), w: pairs.map(([, w]) => w) }));

/** The max–min formula of isotonic regression, f_i = max_{a ≤ i} min_{b ≥ i} mean(a..b): slow, and not by pooling. */
function byMaxMin(y: number[], w: number[]): number[] {
  return y.map((_, i) => {
    let most = -Infinity;
    for (let a = 0; a <= i; a++) {
      let least = Infinity;
      let mass = 0;
      let sum = 0;
      for (let b = a; b < y.length; b++) {
        mass += w[b];
        sum += w[b] * y[b];
        if (b >= i) least = Math.min(least, sum / mass);
      }
      most = Math.max(most, least);
    }
    return most;
  });
}

test('never falls, keeps the weighted mean, and is left alone the second time', () => {
  fc.assert(
    fc.property(weighted, ({ y, w }) => {
      const fitted = isotonicRegression(y, w);
      expect(fitted.length).toBe(y.length);
      for (let i = 1; i < fitted.length; i++) expect(fitted[i]).toBeGreaterThanOrEqual(fitted[i - 1]);
      const mass = w.reduce((sum, x) => sum + x, 0);
      const before = y.reduce((sum, x, i) => sum + x * w[i], 0) / mass;
      const after = fitted.reduce((sum, x, i) => sum + x * w[i], 0) / mass;
      expect(Math.abs(after - before)).toBeLessThanOrEqual(1e-10);
      expect(isotonicRegression(fitted, w)).toEqual(fitted);
    }),
  );
});

test('is the max–min formula of Barlow et al. 1972', () => {
  fc.assert(
    fc.property(weighted, ({ y, w }) => {
      const fitted = isotonicRegression(y, w);
      for (const [i, level] of byMaxMin(y, w).entries()) expect(Math.abs(fitted[i] - level)).toBeLessThanOrEqual(1e-9);
    }),
  );
});

test('a sequence already in order comes back as it was', () => {
  expect([...isotonicRegression([1, 1, 2, 7.5], [3, 1, 2, 1])]).toEqual([1, 1, 2, 7.5]);
  expect(isotonicRegression([], [])).toEqual(new Float64Array(0));
});

test('what cannot be fitted is refused with its place', () => {
  expect(() => isotonicRegression([1, 2], [1])).toThrow(new RangeError('1 weights for 2 figures'));
  expect(() => isotonicRegression([1, Number.NaN], [1, 1])).toThrow(/figure 1 is NaN/);
  expect(() => isotonicRegression([1, 2], [1, 0])).toThrow(/weight 1 is 0/);
  expect(() => isotonicRegression([1, 2], [Infinity, 1])).toThrow(/weight 0 is Infinity/);
});
