import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  expectedDistance,
  type GaussianMixture,
  mixtureDensity,
  mixtureDistribution,
  mixtureMean,
  mixtureQuantile,
} from '../../src/statistics/gaussianMixture.ts';
import { normalQuantile } from '../../src/statistics/normal.ts';
import { gaussianMixtures } from './gaussianMixtures.ts';
import { integrate } from './integrate.ts';

const two: GaussianMixture = {
  weights: Float64Array.of(0.8, 0.2),
  means: Float64Array.of(150, 120),
  deviations: Float64Array.of(6, 15),
};

/** Least and greatest point at which anything of the mixture is left. */
function ends(m: GaussianMixture): [number, number] {
  return [
    Math.min(...m.means.map((mean, k) => mean - 12 * m.deviations[k])),
    Math.max(...m.means.map((mean, k) => mean + 12 * m.deviations[k])),
  ];
}

test('the density sums to the distribution, and over everything to 1', () => {
  fc.assert(
    fc.property(gaussianMixtures, fc.double({ min: 0, max: 1, noNaN: true }), (m, share) => {
      const [low, high] = ends(m);
      const x = low + share * (high - low);
      expect(Math.abs(integrate((t) => mixtureDensity(m, t), low, x) - mixtureDistribution(m, x))).toBeLessThanOrEqual(
        1e-9,
      );
      expect(Math.abs(mixtureDistribution(m, high) - 1)).toBeLessThanOrEqual(1e-12);
    }),
    { numRuns: 40 },
  );
});

test('the quantile undoes the distribution', () => {
  fc.assert(
    fc.property(gaussianMixtures, fc.double({ min: 1e-12, max: 1, maxExcluded: true, noNaN: true }), (m, p) => {
      const x = mixtureQuantile(m, p);
      // The distribution must cross p within 1e-10 of x or of the narrowest deviation, one rounding of p allowed.
      const reach = 1e-10 * Math.max(Math.abs(x), Math.min(...m.deviations));
      expect(mixtureDistribution(m, x - reach)).toBeLessThanOrEqual(p + 2e-16);
      expect(mixtureDistribution(m, x + reach)).toBeGreaterThanOrEqual(p - 2e-16);
    }),
    { numRuns: 500 },
  );
});

test('the quantile finds x again from the distribution at x', () => {
  fc.assert(
    fc.property(fc.double({ min: 80, max: 165, noNaN: true }), (x) => {
      expect(Math.abs(mixtureQuantile(two, mixtureDistribution(two, x)) / x - 1)).toBeLessThanOrEqual(1e-10);
    }),
  );
});

test('the quantile crosses a valley of next to no density', () => {
  const apart: GaussianMixture = {
    weights: Float64Array.of(0.5, 0.5),
    means: Float64Array.of(-1000, 1000),
    deviations: Float64Array.of(0.01, 0.01),
  };
  expect(Math.abs(mixtureQuantile(apart, 0.25) + 1000)).toBeLessThanOrEqual(1e-7);
  expect(Math.abs(mixtureQuantile(apart, 0.75) - 1000)).toBeLessThanOrEqual(1e-7);
  // Between the two the distribution is ½ to the last bit of a double.
  expect(mixtureDistribution(apart, mixtureQuantile(apart, 0.5))).toBe(0.5);
});

test('the quantile is found far out in a tail, where Newton steps alone would creep', () => {
  const wide = { weights: Float64Array.of(0.5, 0.5), means: Float64Array.of(0, 40), deviations: Float64Array.of(1, 1) };
  expect(Math.abs(mixtureQuantile(wide, 1e-300) / normalQuantile(2e-300) - 1)).toBeLessThanOrEqual(1e-10);
});

test('one component alone is the normal distribution', () => {
  const one = { weights: Float64Array.of(1), means: Float64Array.of(140), deviations: Float64Array.of(7) };
  for (const p of [1e-9, 0.1, 0.5, 0.9, 0.999]) {
    expect(Math.abs(mixtureQuantile(one, p) - (140 + 7 * normalQuantile(p)))).toBeLessThanOrEqual(1e-8);
  }
  expect(mixtureMean(one)).toBe(140);
});

test('the mean is the integral of x times the density', () => {
  expect(mixtureMean(two)).toBeCloseTo(144, 12);
  fc.assert(
    fc.property(gaussianMixtures, (m) => {
      const [low, high] = ends(m);
      expect(Math.abs(integrate((t) => t * mixtureDensity(m, t), low, high) - mixtureMean(m))).toBeLessThanOrEqual(
        1e-5,
      );
    }),
    { numRuns: 40 },
  );
});

test('the expected distance is the integral of |x − d| times the density, and never below |mean − d|', () => {
  fc.assert(
    fc.property(gaussianMixtures, fc.double({ min: -50, max: 350, noNaN: true }), (m, d) => {
      const [low, high] = ends(m);
      const cut = Math.min(Math.max(d, low), high);
      const byParts =
        integrate((t) => Math.abs(t - d) * mixtureDensity(m, t), low, cut) +
        integrate((t) => Math.abs(t - d) * mixtureDensity(m, t), cut, high);
      expect(Math.abs(byParts - expectedDistance(m, d))).toBeLessThanOrEqual(1e-5);
      expect(expectedDistance(m, d)).toBeGreaterThanOrEqual(Math.abs(mixtureMean(m) - d) - 1e-9);
    }),
    { numRuns: 40 },
  );
});

test('the expected distance of N(0, s²) from 0 is s √(2/π)', () => {
  const one = { weights: Float64Array.of(1), means: Float64Array.of(0), deviations: Float64Array.of(5) };
  expect(expectedDistance(one, 0)).toBeCloseTo(5 * Math.sqrt(2 / Math.PI), 14);
});

test('a quantile that cannot be is refused', () => {
  expect(() => mixtureQuantile(two, 0)).toThrow(new RangeError('probability 0 is not strictly between 0 and 1'));
  const none = { weights: Float64Array.of(0), means: Float64Array.of(1), deviations: Float64Array.of(1) };
  expect(() => mixtureQuantile(none, 0.5)).toThrow(/mixture of 1 components has no quantile 0.5/);
  const flat = { weights: Float64Array.of(1), means: Float64Array.of(1), deviations: Float64Array.of(0) };
  expect(() => mixtureQuantile(flat, 0.5)).toThrow(/weight and spread are needed/);
  const unknown = { weights: Float64Array.of(1), means: Float64Array.of(Number.NaN), deviations: Float64Array.of(1) };
  expect(() => mixtureQuantile(unknown, 0.5)).toThrow(RangeError);
});
