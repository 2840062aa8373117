import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mean, standardDeviation } from '../../../src/statistics/mean.ts';
import { approachDistances } from '../../../src/yardages/approachDistances.ts';
import { coverage, coverageDeviation, coverageDifference, leaveTable } from '../../../src/yardages/coverage.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';
import { forecastOf, stocksOf, tableOf } from './leaving.ts';

describe('approach distances', () => {
  const spread = (flags: number[]) => {
    const { distance_m, weight } = approachDistances(flags, 190);
    const centre = weight.reduce((sum, w, i) => sum + w * distance_m[i], 0);
    return { centre, sum: weight.reduce((total, w) => total + w, 0), weight, distance_m };
  };

  test('weigh 1 in all, and nothing outside the golf course of the table counts', () => {
    const faced = approachDistances([5, 120, 300, 118], 190);
    expect(faced.own).toBe(2);
    expect(faced.ownShare).toBeCloseTo(2 / 42, 12);
    expect(faced.weight.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 12);
    expect(Math.min(...faced.weight)).toBeGreaterThanOrEqual(0);
  });

  test('do not depend on the order of the shots', () => {
    expect(approachDistances([80, 150, 120], 190)).toEqual(approachDistances([120, 80, 150], 190));
  });

  test('come to lie where the approaches are, 8 yd wide, the more of them there are', () => {
    const many = spread(Array.from({ length: 4000 }, () => 100));
    expect(many.sum).toBeCloseTo(1, 12);
    expect(many.centre).toBeCloseTo(100, 0);
    const peak = Math.max(...many.weight);
    const at = (d: number) => many.weight[many.distance_m.findIndex((x) => x >= d)];
    // One standard deviation of 8 yd from the middle a normal kernel has e^−½ of its height.
    expect(at(100 + 7.3152) / peak).toBeCloseTo(Math.exp(-0.5), 1);
  });

  test('without shots are the wide default alone, from 40 yd to the reach', () => {
    const { weight, distance_m } = spread([]);
    const below = weight.reduce((sum, w, i) => (distance_m[i] < 190 + 15 ? sum + w : sum), 0);
    expect(below).toBeGreaterThan(0.99);
  });
});

describe('coverage', () => {
  test('one more club never leaves more, and each distance has the club that leaves least', () => {
    fc.assert(
      fc.property(fc.string(), (seed) => {
        const table = tableOf(stocksOf(seed, 6));
        const some = coverage(table, [0, 2, 4]);
        const all = coverage(table, [0, 1, 2, 3, 4, 5]);
        expect(all.leave_m).toBeLessThanOrEqual(some.leave_m + 1e-12);
        expect(all.step_m).toBeLessThanOrEqual(some.step_m + 1e-12);
        all.curve_m.forEach((leave, d) => {
          expect(leave).toBe(Math.min(...table.leave_m.map((cell) => cell[d])));
          expect(table.leave_m[all.best[d]][d]).toBe(leave);
        });
      }),
      { numRuns: 40 },
    );
  });

  test('does not depend on the order of the clubs', () => {
    const table = tableOf([60, 95, 130, 165]);
    expect(coverage(table, [3, 0, 2, 1]).leave_m).toBe(coverage(table, [0, 1, 2, 3]).leave_m);
  });

  test('a golfer without scatter leaves the distance to the nearest stock carry', () => {
    const table = tableOf([60, 95, 130, 165], 1e-6);
    const sure = { ...forecastOf(1, 1e-6), weights: Float64Array.of(1, 0, 0, 0) };
    const stocks = [60, 95, 130, 165];
    const exact = leaveTable(
      table.approaches,
      stocks.map((m) => ({ ...sure, means: sure.means.map((mean) => mean + Math.log(m)) })),
      stocks.map(Math.log),
    );
    const covered = coverage(exact, [0, 1, 2, 3]);
    expect(covered.leave_m).toBeCloseTo(covered.step_m, 3);
  });

  test('no club at all is refused', () => {
    expect(() => coverage(tableOf([100]), [])).toThrow(/0 clubs/);
  });

  test('the standard deviation of a difference is that of 4,000 draws of the carries', () => {
    const stocks = [62, 84, 101, 118, 137, 158];
    const table = tableOf(stocks, 0.06);
    const deviations = [0.02, 0.015, 0.02, 0.025, 0.02, 0.03];
    const n = stocks.length;
    const shared = 0.012;
    const covariance = new Float64Array(n * n).map(
      (_, at) => shared ** 2 + (at % (n + 1) === 0 ? deviations[at % n] ** 2 : 0),
    );
    const from = [0, 2, 4];
    const to = [0, 2, 4, 5, 1];
    const { gain_m, deviation_m } = coverageDifference(table, covariance, from, to);
    const numbers = randomNumbers('difference');
    const leaves: number[] = [];
    const gains = Array.from({ length: 4000 }, () => {
      const all = numbers.normal(0, shared);
      const shifts = deviations.map((sd) => all + numbers.normal(0, sd));
      const drawn = leaveTable(
        table.approaches,
        stocks.map((m, i) => forecastOf(m * Math.exp(shifts[i]), 0.06)),
        stocks.map((m, i) => Math.log(m) + shifts[i]),
      );
      leaves.push(coverage(drawn, to).leave_m);
      return coverage(drawn, from).leave_m - coverage(drawn, to).leave_m;
    });
    expect(Math.abs(deviation_m / standardDeviation(gains) - 1)).toBeLessThan(0.15);
    expect(Math.abs(gain_m - mean(gains))).toBeLessThan(0.3 * deviation_m);
    const ofLeave = coverageDeviation(table, covariance, coverage(table, to));
    expect(Math.abs(ofLeave / standardDeviation(leaves) - 1)).toBeLessThan(0.15);
  }, 60_000);
});
