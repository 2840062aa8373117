import { type GaussianMixture, mixtureDistribution } from '../statistics/gaussianMixture.ts';
import { normalDistribution } from '../statistics/normal.ts';
import { overCarries, type RollOf, withinSides } from './odds.ts';
import type { Spread } from './spread.ts';

/** What a tee shot or lay-up asks for, m; null: nothing of the kind. */
export interface TeeTask {
  /** Carry needed to clear what lies across the line. */
  readonly carry_m: number | null;
  /** The ball must come to rest no further than this. */
  readonly limit_m: number | null;
  readonly fairwayWidth_m: number | null;
}

/** Odds of one club; each alone, and all that was asked for together. */
export interface TeeOdds {
  readonly clears: number;
  readonly staysShort: number;
  readonly inWidth: number;
  readonly all: number;
}

/** A club that may be played from the tee. */
export interface TeeClub {
  readonly cell: number;
  readonly forecast: GaussianMixture;
  readonly spread: Spread;
  readonly rollOf: RollOf;
}

/**
 * The odds of a tee shot or lay-up with one club: P(carry ≥ a), P(total ≤ b), P(|offline| ≤ half the
 * fairway's width), mishits included. Total is the carry and the roll of the ground; a ball keeps its
 * line, so that it is as far off line as its total makes it. Length and line are taken as independent.
 *
 * @throws RangeError when a distance asked for is not greater than 0.
 * Source: integration over the forecast's carries.
 */
export function teeOdds({ forecast, spread, rollOf }: Omit<TeeClub, 'cell'>, task: TeeTask): TeeOdds {
  for (const asked of [task.carry_m, task.limit_m, task.fairwayWidth_m]) {
    if (asked !== null && !(asked > 0)) throw new RangeError(`${asked} m asked for: more than 0 is needed`);
  }
  const short = (carry: number) => {
    if (task.limit_m === null) return 1;
    const { roll_m, sd_m } = rollOf(carry);
    return normalDistribution((task.limit_m - carry - roll_m) / sd_m);
  };
  const straight = (carry: number) => {
    if (task.fairwayWidth_m === null) return 1;
    const total = Math.max(1, carry + rollOf(carry).roll_m);
    return withinSides(spread, total, -task.fairwayWidth_m / 2, task.fairwayWidth_m / 2);
  };
  const over = (value: (carry: number) => number, from = 0) => overCarries(forecast, from, Infinity, value);
  return {
    clears: task.carry_m === null ? 1 : 1 - mixtureDistribution(forecast, Math.log(task.carry_m)),
    staysShort: task.limit_m === null ? 1 : over(short),
    inWidth: task.fairwayWidth_m === null ? 1 : over(straight),
    all: over((carry) => short(carry) * straight(carry), task.carry_m ?? 0),
  };
}

/** The odds of every club, the surest first (of equals the longer). */
export function surestFirst(clubs: readonly TeeClub[], task: TeeTask): { cell: number; odds: TeeOdds }[] {
  const centre = new Map(clubs.map(({ cell, forecast }) => [cell, forecast.means[0]]));
  return clubs
    .map((club) => ({ cell: club.cell, odds: teeOdds(club, task) }))
    .sort((a, b) => b.odds.all - a.odds.all || (centre.get(b.cell) ?? 0) - (centre.get(a.cell) ?? 0));
}
