import type { GaussianMixture } from '../../../src/statistics/gaussianMixture.ts';
import { type ApproachDistances, approachDistances } from '../../../src/yardages/approachDistances.ts';
import { type LeaveTable, leaveTable } from '../../../src/yardages/coverage.ts';
import { type RandomNumbers, randomNumbers } from '../../golfers/randomNumbers.ts';

/** An invented forecast of ln carry: solid strikes round a stock carry, loose ones, mishits that fall short. */
export function forecastOf(stock_m: number, deviation = 0.05): GaussianMixture {
  const centre = Math.log(stock_m);
  return {
    weights: Float64Array.of(0.78, 0.07, 0.1, 0.05),
    means: Float64Array.of(centre, centre, centre - 0.1, centre - 0.27),
    deviations: Float64Array.of(deviation, 2 * deviation, 1.2 * deviation, 1.3 * deviation),
  };
}

/** One carry in metres drawn from a forecast. */
export function drawCarry(forecast: GaussianMixture, numbers: RandomNumbers): number {
  const places = Array.from(forecast.weights, (_, k) => k);
  const k = numbers.choice(places, [...forecast.weights]);
  return Math.exp(numbers.normal(forecast.means[k], forecast.deviations[k]));
}

/** A table of some stock carries in metres, with distances faced round 120 m. */
export function tableOf(stocks_m: readonly number[], deviation = 0.05, approaches?: ApproachDistances): LeaveTable {
  const faced = approaches ?? approachDistances([95, 110, 120, 124, 131, 150], 190);
  const forecasts = stocks_m.map((stock) => forecastOf(stock, deviation));
  return leaveTable(faced, forecasts, Float64Array.from(stocks_m, Math.log));
}

/** Random stock carries, longest last, from a seed. */
export function stocksOf(seed: string, count: number): number[] {
  const numbers = randomNumbers(seed);
  return Array.from({ length: count }, () => numbers.between(45, 210)).sort((a, b) => a - b);
}
