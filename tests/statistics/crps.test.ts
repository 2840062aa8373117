import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixtureCrps, normalCrps } from '../../src/statistics/crps.ts';
import { mixtureDistribution } from '../../src/statistics/gaussianMixture.ts';
import { gaussianMixtures } from './gaussianMixtures.ts';
import { integrate } from './integrate.ts';

test('the score of a mixture is the integral of (F(x) − [x ≥ y])², its definition', () => {
  fc.assert(
    fc.property(gaussianMixtures, fc.double({ min: 0, max: 300, noNaN: true }), (m, y) => {
      const below = integrate((x) => mixtureDistribution(m, x) ** 2, -500, y);
      const above = integrate((x) => (1 - mixtureDistribution(m, x)) ** 2, y, 800);
      expect(Math.abs(below + above - mixtureCrps(m, y))).toBeLessThanOrEqual(1e-5);
    }),
    { numRuns: 40 },
  );
});

test('a mixture of one, or of the same component twice, scores as the normal forecast', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 40, noNaN: true }),
      fc.double({ min: -90, max: 90, noNaN: true }),
      (s, gap) => {
        const expected = normalCrps(150, s, 150 + gap);
        const one = { weights: Float64Array.of(1), means: Float64Array.of(150), deviations: Float64Array.of(s) };
        const twice = {
          weights: Float64Array.of(0.3, 0.7),
          means: Float64Array.of(150, 150),
          deviations: Float64Array.of(s, s),
        };
        expect(Math.abs(mixtureCrps(one, 150 + gap) - expected)).toBeLessThanOrEqual(1e-11);
        expect(Math.abs(mixtureCrps(twice, 150 + gap) - expected)).toBeLessThanOrEqual(1e-11);
      },
    ),
  );
});

test('the score is proper: the true deviation has the least expected score', () => {
  const expectedScore = (s: number) =>
    integrate((z) => (normalCrps(0, s, z) * Math.exp(-0.5 * z * z)) / Math.sqrt(2 * Math.PI), -9, 9);
  expect(expectedScore(1)).toBeLessThan(expectedScore(0.9));
  expect(expectedScore(1)).toBeLessThan(expectedScore(1.1));
  // E of the score under the truth is s/√π: half of E|X − X′|.
  expect(expectedScore(1)).toBeCloseTo(1 / Math.sqrt(Math.PI), 9);
});

test('a forecast without spread is refused', () => {
  expect(() => normalCrps(0, 0, 1)).toThrow(new RangeError('deviation 0 of a forecast is not a positive number'));
  expect(() => normalCrps(0, 1, Number.NaN)).toThrow(RangeError);
  const flat = { weights: Float64Array.of(1), means: Float64Array.of(0), deviations: Float64Array.of(0) };
  expect(() => mixtureCrps(flat, 0)).toThrow(RangeError);
});
