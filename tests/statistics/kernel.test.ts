import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { kernelDensity } from '../../src/statistics/kernel.ts';

test('one value gives the normal density about it, by an independent implementation', () => {
  const at = [90, 100, 103, 140];
  const densities = kernelDensity([100], [2], 8, at);
  for (const [i, x] of at.entries()) expect(densities[i]).toBeCloseTo(jstat.jStat.normal.pdf(x, 100, 8), 15);
});

test('the density sums to 1 whatever the weights', () => {
  const weighted = fc.array(
    fc.tuple(fc.double({ min: 50, max: 200, noNaN: true }), fc.double({ min: 0.1, max: 9, noNaN: true })),
    { minLength: 1, maxLength: 20 },
  );
  fc.assert(
    fc.property(weighted, fc.double({ min: 2, max: 15, noNaN: true }), (pairs, bandwidth) => {
      const at = Array.from({ length: 601 }, (_, i) => i - 175);
      const densities = kernelDensity(
        pairs.map(([value]) => value),
        pairs.map(([, weight]) => weight),
        bandwidth,
        at,
      );
      expect(Math.abs(densities.reduce((sum, x) => sum + x, 0) - 1)).toBeLessThanOrEqual(1e-9);
    }),
  );
});

test('a weight of two counts as the value said twice, and a weight of nothing not at all', () => {
  const at = [3, 5, 8];
  const counted = kernelDensity([2, 6, 9], [2, 1, 0], 1.5, at);
  const said = kernelDensity([2, 2, 6], [1, 1, 1], 1.5, at);
  for (let i = 0; i < at.length; i++) expect(counted[i]).toBeCloseTo(said[i], 15);
});

test('what cannot be smoothed is refused with its figure', () => {
  expect(() => kernelDensity([1], [1, 2], 1, [0])).toThrow(new RangeError('2 weights for 1 values'));
  expect(() => kernelDensity([1], [1], 0, [0])).toThrow(new RangeError('bandwidth 0 is not positive'));
  expect(() => kernelDensity([1, 2], [1, -1], 1, [0])).toThrow(/weight 1 is -1/);
  expect(() => kernelDensity([], [], 1, [0])).toThrow(/weights sum to 0/);
  expect(() => kernelDensity([Number.NaN], [1], 1, [0])).toThrow(RangeError);
});
