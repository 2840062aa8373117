import fc from 'fast-check';
import jstat from 'jstat';
import { expect, test } from 'vitest';
import {
  logNormalDistribution,
  normalDensity,
  normalDistribution,
  normalQuantile,
} from '../../src/statistics/normal.ts';

const { normal } = jstat.jStat;

/** Φ(−x)/φ(x) for x ≥ 2 by the continued fraction 1/(x + 1/(x + 2/(x + 3/(x + …)))): Abramowitz & Stegun 1964, 26.2.14. */
function millsRatio(x: number): number {
  let fraction = x;
  for (let k = 400; k >= 1; k--) fraction = x + k / fraction;
  return 1 / fraction;
}

/** Φ(z) = ½ + φ(z) (z + z³/3 + z⁵/(3·5) + …), |z| ≤ 3: Abramowitz & Stegun 1964, 26.2.11. */
function bySeries(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 1; k <= 120; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-0.5 * z * z)) / Math.sqrt(2 * Math.PI);
}

test('the distribution keeps twelve digits of the lower tail down to −37, against the continued fraction', () => {
  for (let x = 2; x <= 37; x += 0.0625) {
    const expected = (millsRatio(x) * Math.exp(-0.5 * x * x)) / Math.sqrt(2 * Math.PI);
    expect(Math.abs(normalDistribution(-x) / expected - 1)).toBeLessThanOrEqual(1e-12);
    expect(normalDistribution(x)).toBe(1 - normalDistribution(-x));
  }
});

test('the distribution agrees with its series in the middle', () => {
  for (let z = -3; z <= 3; z += 0.0078125) {
    expect(Math.abs(normalDistribution(z) - bySeries(z))).toBeLessThanOrEqual(2e-15);
  }
});

test('density, distribution and quantile agree with an independent implementation', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      (z, p) => {
        expect(Math.abs(normalDensity(z) - normal.pdf(z, 0, 1))).toBeLessThanOrEqual(1e-15);
        expect(Math.abs(normalDistribution(z) - normal.cdf(z, 0, 1))).toBeLessThanOrEqual(1e-14);
        expect(Math.abs(normalQuantile(p) - normal.inv(p, 0, 1))).toBeLessThanOrEqual(1e-9);
      },
    ),
  );
});

test('the quantile undoes the distribution, and the other way round', () => {
  fc.assert(
    fc.property(fc.double({ min: -37, max: 4, noNaN: true }), (z) => {
      // Beyond 4 the distance to 1, not z, is what a double can no longer hold.
      expect(Math.abs(normalQuantile(normalDistribution(z)) - z)).toBeLessThanOrEqual(2e-12);
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 1e-300, max: 1, maxExcluded: true, noNaN: true }), (p) => {
      expect(Math.abs(normalDistribution(normalQuantile(p)) / p - 1)).toBeLessThanOrEqual(1e-12);
    }),
  );
});

test('the distribution does not fall as z grows, across the seams of the approximation too', () => {
  for (const seam of [-5.656854249492381, -0.66291, 0.66291, 5.656854249492381]) {
    for (let step = -50; step < 50; step++) {
      const z = seam + step * 1e-9;
      expect(normalDistribution(z + 1e-9)).toBeGreaterThanOrEqual(normalDistribution(z));
    }
  }
});

test('the logarithm of the distribution follows it, and goes on where it underflows', () => {
  for (let z = -37; z <= 8; z += 0.03125) {
    const expected = z < 0 ? Math.log(normalDistribution(z)) : Math.log1p(-normalDistribution(-z));
    expect(Math.abs(logNormalDistribution(z) / expected - 1)).toBeLessThanOrEqual(1e-12);
  }
  for (const x of [6, 50, 400, 1e4, 1e8]) {
    const expected = -0.5 * x * x - 0.5 * Math.log(2 * Math.PI) + Math.log(millsRatio(x));
    expect(Math.abs(logNormalDistribution(-x) / expected - 1)).toBeLessThanOrEqual(1e-14);
  }
});

test('infinite scores are answered, and what is no score or no probability is refused with its value', () => {
  expect([normalDistribution(-Infinity), normalDistribution(Infinity)]).toEqual([0, 1]);
  expect([logNormalDistribution(-Infinity), logNormalDistribution(Infinity)]).toEqual([-Infinity, -0]);
  expect(() => normalDensity(Number.NaN)).toThrow(new RangeError('standard score NaN is not a number'));
  expect(() => normalDistribution(Number.NaN)).toThrow(new RangeError('standard score NaN is not a number'));
  expect(() => logNormalDistribution(Number.NaN)).toThrow(new RangeError('standard score NaN is not a number'));
  for (const p of [0, 1, -0.1, 1.5, Number.NaN]) {
    expect(() => normalQuantile(p)).toThrow(new RangeError(`probability ${p} is not strictly between 0 and 1`));
  }
});
