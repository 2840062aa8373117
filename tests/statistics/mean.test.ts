import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mean, standardDeviation } from '../../src/statistics/mean.ts';

const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 50 });

test('shifting moves the mean and leaves the deviation; stretching stretches both', () => {
  fc.assert(
    fc.property(values, fc.integer({ min: -1e9, max: 1e9 }), (xs, shift) => {
      const moved = xs.map((x) => x + shift);
      expect(Math.abs(mean(moved) - shift - mean(xs))).toBeLessThanOrEqual(1e-6);
      expect(Math.abs(standardDeviation(moved) - standardDeviation(xs))).toBeLessThanOrEqual(1e-9);
      expect(standardDeviation(xs.map((x) => -2 * x))).toBeCloseTo(2 * standardDeviation(xs), 10);
    }),
  );
});

test('the deviation is the root of the mean squared difference of pairs, halved', () => {
  fc.assert(
    fc.property(values, (xs) => {
      let sum = 0;
      for (const a of xs) for (const b of xs) sum += (a - b) ** 2;
      const pairs = xs.length * (xs.length - 1);
      expect(standardDeviation(xs)).toBeCloseTo(Math.sqrt(sum / pairs / 2), 9);
    }),
  );
});

test('the sum keeps what plain addition loses', () => {
  expect(mean([1, 1e100, 1, -1e100])).toBe(0.5);
});

test('a mean that no double can hold does not spoil the deviation', () => {
  // The mean, 1e16 + 1, lies between two doubles.
  expect(standardDeviation([1e16, 1e16 + 2])).toBe(Math.SQRT2);
});

test('too few values, or no finite ones, are refused', () => {
  expect(() => mean([])).toThrow(new RangeError('no values: a mean needs at least one'));
  expect(() => mean([1, Number.NaN])).toThrow(/sum to NaN/);
  expect(() => standardDeviation([1])).toThrow(new RangeError('1 values: a standard deviation needs at least two'));
  expect(() => standardDeviation([1, Infinity])).toThrow(RangeError);
});
