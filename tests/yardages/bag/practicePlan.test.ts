import { describe, expect, test } from 'vitest';
import { choleskyInPlace, invertFromCholesky } from '../../../src/statistics/cholesky.ts';
import { approachDistances } from '../../../src/yardages/approachDistances.ts';
import { ballInformation, narrowed, narrowing } from '../../../src/yardages/ballsToCome.ts';
import { expectedLeave } from '../../../src/yardages/expectedLeave.ts';
import { type PracticeGround, practicePlans, practiceWorth } from '../../../src/yardages/practicePlan.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';
import { cellOf } from '../cells.ts';
import { forecastOf } from './leaving.ts';

const inverse = (matrix: Float64Array, n: number) => {
  const factor = matrix.slice();
  choleskyInPlace(factor, n);
  return invertFromCholesky(factor, n);
};

describe('balls to come', () => {
  test('narrow the covariance as their information added to its inverse does', () => {
    const covariance = Float64Array.of(0.0016, 0.0006, 0.0002, 0.0006, 0.0009, 0.0003, 0.0002, 0.0003, 0.0025);
    const after = narrowed(covariance, narrowing(covariance, 3, 1, 700));
    const information = inverse(covariance, 3);
    information[4] += 700;
    const expected = inverse(information, 3);
    after.forEach((c, at) => {
      expect(c).toBeCloseTo(expected[at], 12);
    });
    expect(() => narrowing(covariance, 3, 1, -1)).toThrow(/information -1/);
  });

  test('tell less of a shorter swing, and less when more of them are mishit', () => {
    const full = ballInformation(cellOf('wedge', 54), Math.log(85), 0.05 ** 2, 0.2);
    const half = ballInformation(cellOf('wedge', 54, '9:00'), Math.log(85), 0.05 ** 2, 0.2);
    expect(half).toBeLessThan(full);
    expect(ballInformation(cellOf('wedge', 54), Math.log(85), 0.05 ** 2, 0.4)).toBeLessThan(full);
  });
});

const stocks = [50, 62, 75, 90, 104];
const deviations = [0.06, 0.015, 0.04, 0.015, 0.015];
const ground: PracticeGround = {
  cells: stocks.map((_, i) => cellOf('wedge', 60 - 3 * i, 'full', i)),
  theta: stocks.map(Math.log),
  covariance: Float64Array.from({ length: 25 }, (_, at) => (at % 6 === 0 ? deviations[at / 6] ** 2 : 0)),
  forecasts: stocks.map((m, i) => forecastOf(m, Math.hypot(0.06, deviations[i]))),
  scatter2: 0.05 ** 2,
  mishits: 0.15,
  approaches: approachDistances(
    Array.from({ length: 300 }, (_, k) => 45 + (k % 70)),
    110,
  ),
};
const all = [0, 1, 2, 3, 4];

describe('practice', () => {
  test('pays never less than nothing, and most where little is known', () => {
    const rungs = practiceWorth(ground, all, 10);
    expect(
      rungs
        .map(({ cell }) => cell)
        .slice(0, 2)
        .sort(),
    ).toEqual([0, 2]);
    for (const { gain_m, before, after, cell } of rungs) {
      expect(gain_m).toBeGreaterThanOrEqual(0);
      expect(before).toBeCloseTo(deviations[cell], 12);
      expect(after).toBeLessThan(before);
    }
    expect(rungs.map(({ gain_m }) => gain_m)).toEqual(rungs.map(({ gain_m }) => gain_m).toSorted((a, b) => b - a));
  });

  test('is worth what 3,000 golfers would save who learned it', () => {
    const [rung] = practiceWorth(ground, all, 10).filter(({ cell }) => cell === 0);
    const move = Math.sqrt(rung.before ** 2 - rung.after ** 2);
    const numbers = randomNumbers('practice');
    const { distance_m, weight } = ground.approaches;
    const places = Array.from(distance_m, (_, d) => d).filter((d) => d % 2 === 0);
    const now = places.map((d) => all.map((i) => expectedLeave(ground.forecasts[i], distance_m[d])));
    const best = now.map((leaves) => leaves.indexOf(Math.min(...leaves)));
    const { means, deviations: wide } = ground.forecasts[0];
    const narrow = wide.map((s) => Math.sqrt(s * s - move * move));
    let saved = 0;
    let squares = 0;
    const draws = 3000;
    for (let k = 0; k < draws; k++) {
      const by = numbers.normal(0, move);
      const learned = { ...ground.forecasts[0], deviations: narrow, means: means.map((m) => m + by) };
      let gain = 0;
      places.forEach((d, at) => {
        const leaves = now[at].with(0, expectedLeave(learned, distance_m[d]));
        gain += 2 * weight[d] * (leaves[best[at]] - Math.min(...leaves));
      });
      saved += gain / draws;
      squares += (gain * gain) / draws;
    }
    const error = Math.sqrt((squares - saved * saved) / draws);
    expect(error).toBeLessThan(0.1 * saved);
    expect(Math.abs(rung.gain_m - saved)).toBeLessThan(4 * error);
  }, 60_000);

  test('plans use all their balls, in fives, where they pay, and a longer one goes on from a shorter', () => {
    const plans = practicePlans(ground, all, all, [20, 40, 60], 120);
    expect(plans.map(({ balls }) => balls)).toEqual([20, 40, 60]);
    plans.forEach(({ balls, rungs }, k) => {
      expect(rungs.reduce((sum, rung) => sum + rung.balls, 0)).toBe(balls);
      for (const rung of rungs) {
        expect(rung.balls % 5).toBe(0);
        expect(rung.after).toBeLessThan(rung.before);
      }
      expect([0, 2]).toContain(rungs[0].cell);
      for (const { cell, balls: fewer } of k === 0 ? [] : plans[k - 1].rungs) {
        expect(rungs.find((rung) => rung.cell === cell)?.balls).toBeGreaterThanOrEqual(fewer);
      }
    });
    expect(practicePlans(ground, all, all, [20], 120)[0]).toEqual(plans[0]);
  });

  test('one session cannot make a number surer than the day and the ground let it', () => {
    const [{ rungs }] = practicePlans(ground, all, [0], [60], 120);
    expect(rungs).toHaveLength(1);
    // Day .008 and practice ground .02 are shared by every ball of it.
    const floor = 1 / Math.sqrt(1 / 0.06 ** 2 + 1 / (0.008 ** 2 + 0.02 ** 2));
    expect(rungs[0].after).toBeGreaterThan(floor);
    expect(rungs[0].after).toBeLessThan(1.2 * floor);
  });

  test('no balls, no rungs and sessions out of order are refused', () => {
    expect(() => practicePlans(ground, all, [], [20], 120)).toThrow(/0 cells/);
    expect(() => practicePlans(ground, all, all, [4], 120)).toThrow(/4 balls/);
    expect(() => practicePlans(ground, all, all, [40, 20], 120)).toThrow(/the fewest first/);
    expect(() => practiceWorth(ground, all, 0)).toThrow(/0 balls/);
  });
});
