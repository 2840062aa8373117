import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import { greenOdds, type RollOf } from './odds.ts';
import type { Spread } from './spread.ts';

/** A green and where the hole is cut, m: its size, and the flag from the front and from the left edge. */
export interface CutGreen {
  readonly deep_m: number;
  readonly wide_m: number;
  readonly flagFromFront_m: number;
  readonly flagFromLeft_m: number;
}

/** A club × swing that may be played at the green: its forecast, how it spreads, and how its ball runs. */
export interface Approach {
  readonly cell: number;
  readonly stock_m: number;
  readonly forecast: GaussianMixture;
  readonly spread: Spread;
  readonly rollOf: RollOf;
}

/** For one club × swing from its own distance: the odds of missing the green by where it is aimed. */
export interface FlagRisk {
  readonly cell: number;
  readonly stock_m: number;
  /** Odds that the ball does not stay on the green, aimed at the flag; aimed at the middle. */
  readonly atFlag: number;
  readonly atMiddle: number;
}

/** Up to which club the flag is on. */
export interface FlagLimit {
  /** The longest cell within the risk: beyond it the middle of the green is right; null: no cell is. */
  readonly upTo: number | null;
  /** Shorter cells that are over the risk all the same: awkward swings. */
  readonly except: readonly number[];
  /** All cells, the shortest first. */
  readonly risks: readonly FlagRisk[];
}

/**
 * Up to which club one may go at a flag: for every club × swing, played from where its carry with the
 * usual roll reaches the flag, the odds of not staying on the green; the flag is on up to the longest
 * one for which they are within the golfer's risk, save for shorter ones that are not. Beyond it the
 * middle of the green is the aim.
 *
 * @param risk odds of missing the green that the golfer takes, 0 to 1.
 * @throws RangeError when the flag is not on the green or the risk is no probability.
 */
export function flagUpTo(green: CutGreen, approaches: readonly Approach[], risk: number): FlagLimit {
  const { deep_m, wide_m, flagFromFront_m, flagFromLeft_m } = green;
  if (!(risk >= 0 && risk <= 1)) throw new RangeError(`risk ${risk}: a probability from 0 to 1`);
  if (!(flagFromFront_m >= 0 && flagFromFront_m <= deep_m && flagFromLeft_m >= 0 && flagFromLeft_m <= wide_m)) {
    throw new RangeError(`flag ${flagFromFront_m} m on, ${flagFromLeft_m} m from the left: not on the green`);
  }
  const risks = approaches
    .toSorted((a, b) => a.stock_m - b.stock_m || a.cell - b.cell)
    .map((approach): FlagRisk => {
      const missed = (fromFront: number, fromLeft: number) => {
        const front_m = approach.stock_m + approach.rollOf(approach.stock_m).roll_m - fromFront;
        // A green that begins at the golfer's feet cannot be missed short.
        const seen = { front_m: Math.max(1, front_m), back_m: Math.max(2, front_m + deep_m) };
        const sides = { left_m: -fromLeft, right_m: wide_m - fromLeft };
        return 1 - greenOdds(approach.forecast, approach.spread, approach.rollOf, { ...seen, ...sides }).holds;
      };
      return {
        cell: approach.cell,
        stock_m: approach.stock_m,
        atFlag: missed(flagFromFront_m, flagFromLeft_m),
        atMiddle: missed(deep_m / 2, wide_m / 2),
      };
    });
  const last = risks.findLastIndex(({ atFlag }) => atFlag <= risk);
  const except = risks.slice(0, last + 1).filter(({ atFlag }) => atFlag > risk);
  return { upTo: last < 0 ? null : risks[last].cell, except: except.map(({ cell }) => cell), risks };
}
