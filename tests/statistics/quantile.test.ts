import fc from 'fast-check';
import { expect, test } from 'vitest';
import { median, quantile } from '../../src/statistics/quantile.ts';

const sample = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 30 });
const probability = fc.double({ min: 0, max: 1, noNaN: true });
const type = fc.constantFrom(6, 7, 8);

test('grows with the probability and stays within the sample', () => {
  fc.assert(
    fc.property(sample, probability, probability, type, (values, a, b, t) => {
      const low = quantile(values, Math.min(a, b), t);
      const high = quantile(values, Math.max(a, b), t);
      expect(high - low).toBeGreaterThanOrEqual(-1e-9);
      expect(low).toBeGreaterThanOrEqual(Math.min(...values));
      expect(high).toBeLessThanOrEqual(Math.max(...values));
    }),
  );
});

test('turning the sample round turns the quantile round', () => {
  fc.assert(
    fc.property(sample, probability, type, (values, p, t) => {
      const mirrored = quantile(
        values.map((x) => -x),
        1 - p,
        t,
      );
      expect(Math.abs(mirrored + quantile(values, p, t))).toBeLessThanOrEqual(1e-6);
    }),
  );
});

test('order statistic k stands at its own plotting position: k/(n+1), (k−1)/(n−1), (k−⅓)/(n+⅓)', () => {
  const values = [31, 8, 19, 4, 27, 12, 23];
  const sorted = values.toSorted((a, b) => a - b);
  for (let k = 1; k <= 7; k++) {
    expect(quantile(values, k / 8, 6)).toBeCloseTo(sorted[k - 1], 12);
    expect(quantile(values, (k - 1) / 6, 7)).toBeCloseTo(sorted[k - 1], 12);
    expect(quantile(values, (k - 1 / 3) / (7 + 1 / 3), 8)).toBeCloseTo(sorted[k - 1], 12);
  }
});

test('the median is the middle value, or halfway between the two', () => {
  expect(median([9, 1, 5])).toBe(5);
  expect(median([9, 1, 5, 6])).toBe(5.5);
  expect(median([7])).toBe(7);
});

test('the sample is not put in order where it stands', () => {
  const values = [3, 1, 2];
  median(values);
  expect(values).toEqual([3, 1, 2]);
});

test('no values, no number and no probability are refused', () => {
  expect(() => median([])).toThrow(new RangeError('no values: a quantile needs at least one'));
  expect(() => quantile([1, Number.NaN, 2], 0.5, 8)).toThrow(/NaN among the values/);
  expect(() => quantile([1, 2], 1.01, 8)).toThrow(new RangeError('probability 1.01 is not between 0 and 1'));
  expect(() => quantile([1, 2], Number.NaN, 8)).toThrow(/probability NaN/);
});
