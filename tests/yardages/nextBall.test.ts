import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixtureDistribution } from '../../src/statistics/gaussianMixture.ts';
import { FORECAST_PROBABILITIES, forecastQuantiles, nextBall } from '../../src/yardages/nextBall.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { anyCells, cellOf } from './cells.ts';

const THETA = Math.log(130);

test('the mixture is that of the strikes, each widened by what is not known', () => {
  const m = nextBall(cellOf('iron', 34), THETA, 0.0004, 0.2, 0.0025, 0.06);
  const sum = m.weights.reduce((total, weight) => total + weight, 0);
  expect(sum).toBeCloseTo(1, 12);
  expect(m.weights[0]).toBeCloseTo(0.8 * (1 - 0.06 - 0.05), 12);
  expect(m.weights[1]).toBeCloseTo(0.8 * 0.06, 12);
  const rest = 0.0004 + PRIOR.forecast ** 2;
  expect(m.deviations[0]).toBeCloseTo(Math.sqrt(0.0025 + rest), 12);
  expect(m.deviations[1]).toBeCloseTo(Math.sqrt(4 * 0.0025 + rest), 12);
  expect(Math.exp(m.means[2] - THETA)).toBeCloseTo(0.945, 12);
  expect([...m.means.slice(3)].map((mean) => Math.exp(mean - THETA))).toEqual(
    [0.93, 0.87, 0.79, 0.67].map((share) => expect.closeTo(share, 12)),
  );
  expect([...m.weights.slice(3)]).toEqual([0.34, 0.32, 0.23, 0.11].map((w) => expect.closeTo(0.2 * w, 12)));
});

test('quantiles hold the probabilities they stand for, in growing order', () => {
  fc.assert(
    fc.property(
      anyCells,
      fc.double({ min: 1, max: 6, noNaN: true }),
      fc.double({ min: 1e-6, max: 0.2, noNaN: true }),
      fc.double({ min: 0.001, max: 0.9, noNaN: true }),
      fc.double({ min: 1e-6, max: 0.05, noNaN: true }),
      ([cell], mean, variance, mishits, scatter2) => {
        const forecast = nextBall(cell, mean, variance, mishits, scatter2, 0.06);
        const quantiles = forecastQuantiles(forecast);
        expect(quantiles.length).toBe(19);
        quantiles.forEach((m, i) => {
          if (i > 0) expect(m).toBeGreaterThan(quantiles[i - 1]);
          expect(mixtureDistribution(forecast, Math.log(m))).toBeCloseTo(FORECAST_PROBABILITIES[i], 8);
        });
      },
    ),
  );
});

test('the middle of the next balls lies below the stock carry, the more so the more mishits', () => {
  const middle = (mishits: number) =>
    forecastQuantiles(nextBall(cellOf('iron', 34), THETA, 0.0004, mishits, 0.0025, 0.06))[9];
  expect(middle(0.05)).toBeLessThan(130);
  expect(middle(0.3)).toBeLessThan(middle(0.05) - 2);
  expect(middle(0.3)).toBeGreaterThan(115);
});

test('a partial swing is never eased; a long club is mishit more', () => {
  expect(nextBall(cellOf('wedge', 54, '9:00'), THETA, 0.0004, 0.2, 0.0025, 0.06).weights.length).toBe(6);
  const long = nextBall(cellOf('driver', 10.5), THETA, 0.0004, 0.2, 0.0025, 0.06).weights;
  expect(long.slice(3).reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(0.2 * 1.235, 9);
});
