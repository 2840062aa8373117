import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GaussianMixture } from '../../../src/statistics/gaussianMixture.ts';
import { mixtureDensity } from '../../../src/statistics/gaussianMixture.ts';
import { expectedLeave, leaveSlope } from '../../../src/yardages/expectedLeave.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';
import { integrate } from '../../statistics/integrate.ts';
import { drawCarry, forecastOf } from './leaving.ts';

const anyForecast: fc.Arbitrary<GaussianMixture> = fc
  .tuple(fc.double({ min: 30, max: 260, noNaN: true }), fc.double({ min: 0.02, max: 0.2, noNaN: true }))
  .map(([stock, deviation]) => forecastOf(stock, deviation));
const anyDistance = fc.double({ min: 20, max: 280, noNaN: true });
const moved = (forecast: GaussianMixture, by: number) => ({ ...forecast, means: forecast.means.map((m) => m + by) });

test('the closed form is the integral of |x − d| over the carries', () => {
  fc.assert(
    fc.property(anyForecast, anyDistance, (forecast, d) => {
      const low = Math.min(...forecast.means.map((m, k) => m - 10 * forecast.deviations[k]));
      const high = Math.max(...forecast.means.map((m, k) => m + 10 * forecast.deviations[k]));
      const edge = Math.min(high, Math.max(low, Math.log(d)));
      const part = (from: number, to: number) =>
        to > from ? integrate((y) => mixtureDensity(forecast, y) * Math.abs(Math.exp(y) - d), from, to) : 0;
      expect(expectedLeave(forecast, d)).toBeCloseTo(part(low, edge) + part(edge, high), 6);
    }),
    { numRuns: 60 },
  );
});

test('the closed form is the mean leave of 200,000 balls', () => {
  const numbers = randomNumbers('leave');
  const forecast = forecastOf(140, 0.06);
  let sum = 0;
  let squares = 0;
  const balls = 200_000;
  for (let i = 0; i < balls; i++) {
    const leave = Math.abs(drawCarry(forecast, numbers) - 133);
    sum += leave;
    squares += leave * leave;
  }
  const mean = sum / balls;
  const error = Math.sqrt((squares / balls - mean * mean) / balls);
  expect(Math.abs(expectedLeave(forecast, 133) - mean)).toBeLessThan(4 * error);
});

test('the slope is the change with ln stock carry', () => {
  fc.assert(
    fc.property(anyForecast, anyDistance, (forecast, d) => {
      const h = 1e-5;
      const slope = (expectedLeave(moved(forecast, h), d) - expectedLeave(moved(forecast, -h), d)) / (2 * h);
      expect(Math.abs(leaveSlope(forecast, d) - slope)).toBeLessThan(1e-4 * Math.max(1, Math.abs(slope)));
    }),
  );
});

test('in yards it is the same leave in yards', () => {
  fc.assert(
    fc.property(anyForecast, anyDistance, (forecast, d) => {
      const yards = expectedLeave(moved(forecast, -Math.log(0.9144)), d / 0.9144);
      expect(Math.abs(yards * 0.9144 - expectedLeave(forecast, d))).toBeLessThan(1e-9 * d);
    }),
  );
});

test('a distance of nothing is no distance', () => {
  expect(() => expectedLeave(forecastOf(100), 0)).toThrow(/distance 0 m/);
});
