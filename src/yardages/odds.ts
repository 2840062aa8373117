import { type GaussianMixture, mixtureDensity, mixtureDistribution } from '../statistics/gaussianMixture.ts';
import { normalDistribution } from '../statistics/normal.ts';
import { studentDistribution } from '../statistics/studentT.ts';
import type { Spread } from './spread.ts';

/** How far a ball runs on after a carry, and the standard deviation of that, m. */
export type RollOf = (carry_m: number) => { readonly roll_m: number; readonly sd_m: number };

/** A green seen from the ball, m: front and back edge on the line of play, sides from the line aimed on (left negative). */
export interface SeenGreen {
  readonly front_m: number;
  readonly back_m: number;
  readonly left_m: number;
  readonly right_m: number;
}

/** What the next ball will do about a green; probabilities, mishits included. */
export interface GreenOdds {
  /** Pitches short of the front edge, or past the back edge. */
  readonly short: number;
  readonly past: number;
  /** Pitches on it. */
  readonly pitches: number;
  /** Pitches on it and comes to rest no further than its back edge. */
  readonly holds: number;
}

/**
 * The odds of a shot at a green: carry from the forecast of the next ball, line from the spread, taken
 * as independent. The ball starts out on the line aimed at; the golfer's usual push or pull is in it.
 *
 * @throws RangeError when the green has no depth or width, or lies behind the ball.
 * Source: numerical integration over ln carry by Simpson's rule, error below 1e-4.
 */
export function greenOdds(forecast: GaussianMixture, spread: Spread, rollOf: RollOf, green: SeenGreen): GreenOdds {
  const { front_m, back_m, left_m, right_m } = green;
  if (!(front_m > 0 && back_m > front_m && right_m > left_m)) {
    throw new RangeError(`a green from ${front_m} to ${back_m} m, ${left_m} to ${right_m} m across: no green`);
  }
  const onLine = (carry_m: number) => withinSides(spread, carry_m, left_m, right_m);
  const stays = (carry_m: number) => {
    const { roll_m, sd_m } = rollOf(carry_m);
    return normalDistribution((back_m - carry_m - roll_m) / sd_m);
  };
  return {
    short: mixtureDistribution(forecast, Math.log(front_m)),
    past: 1 - mixtureDistribution(forecast, Math.log(back_m)),
    pitches: overCarries(forecast, front_m, back_m, onLine),
    holds: overCarries(forecast, front_m, back_m, (carry) => onLine(carry) * stays(carry)),
  };
}

/** Probability that a ball of some length finishes between two lines, m from the line aimed on (left negative). */
export function withinSides(spread: Spread, length_m: number, left_m: number, right_m: number): number {
  const scale = Math.sqrt(spread.rr);
  const at = (side: number) => studentDistribution((side / length_m - spread.rightMean) / scale, spread.degrees);
  return at(right_m) - at(left_m);
}

/** Standard deviations beyond which nothing is left, steps to the narrowest component, and steps at the most. */
const REACH = 8;
const STEPS_PER_DEVIATION = 6;
const MOST_STEPS = 4000;

/**
 * The expectation of something over the carries between two distances: ∫ f(x) g(x) dx, m to m.
 *
 * @param least_m 0 or more. @param most_m may be Infinity.
 * Source: Simpson's rule over ln carry, six steps to the narrowest standard deviation.
 */
export function overCarries(
  forecast: GaussianMixture,
  least_m: number,
  most_m: number,
  value: (carry_m: number) => number,
): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  forecast.means.forEach((mean, k) => {
    low = Math.min(low, mean - REACH * forecast.deviations[k]);
    high = Math.max(high, mean + REACH * forecast.deviations[k]);
  });
  const from = least_m > 0 ? Math.max(low, Math.log(least_m)) : low;
  const to = Math.min(high, Math.log(most_m));
  if (!(to > from)) return 0;
  const narrowest = Math.min(...forecast.deviations);
  const steps =
    2 * Math.min(MOST_STEPS / 2, Math.max(8, Math.ceil(((to - from) / narrowest) * (STEPS_PER_DEVIATION / 2))));
  const h = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const y = from + i * h;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * mixtureDensity(forecast, y) * value(Math.exp(y));
  }
  return Math.min(1, (sum * h) / 3);
}
