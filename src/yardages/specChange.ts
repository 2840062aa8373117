import { normalDistribution } from '../statistics/normal.ts';
import { DEVIATE_80 } from './gaps.ts';

/** A carry that changed by more than this, either way, has changed: 2 yd in m. Own choice. */
export const CHANGED_BY = 1.8288;

/** Odds from which a change counts as one, and below which it counts as none. Own choice. */
const SURE = 0.8;
const UNLIKELY = 0.2;

/** What a change of loft, shaft or head did to the stock carry of a club. Metres; positive: longer now. */
export interface SpecChange {
  readonly change_m: number;
  readonly lo80_m: number;
  readonly hi80_m: number;
  /** Probability that it carries further now by more than the limit, and shorter by more than it. */
  readonly pLonger: number;
  readonly pShorter: number;
  /** Probability that it changed by more than the limit either way: the sum of the two. */
  readonly pChanged: number;
  readonly verdict: 'longer' | 'shorter' | 'as before' | "can't tell yet";
}

/**
 * What a new spec period changed: after − before, from the joint posterior of the two logarithms,
 * Var = a² C_aa + b² C_bb − 2ab C_ab. Both periods share the golfer, the season and the club, so the
 * change is known better than either carry.
 *
 * @param before_m stock carry of the old build, m. @param after_m of the new one.
 * @param cbb posterior variances of ln before and ln after, and their covariance.
 * @param limit_m a change below it does not count, m, 0 or more.
 * Source: delta method on the joint normal posterior.
 */
export function specChange(
  before_m: number,
  after_m: number,
  cbb: number,
  caa: number,
  cab: number,
  limit_m: number = CHANGED_BY,
): SpecChange {
  const change = after_m - before_m;
  const variance = after_m ** 2 * caa + before_m ** 2 * cbb - 2 * after_m * before_m * cab;
  if (!(variance > 0)) throw new RangeError(`variance ${variance} m² of a change: more than 0 is needed`);
  const deviation = Math.sqrt(variance);
  const pLonger = normalDistribution((change - limit_m) / deviation);
  const pShorter = normalDistribution((-limit_m - change) / deviation);
  return {
    change_m: change,
    lo80_m: change - DEVIATE_80 * deviation,
    hi80_m: change + DEVIATE_80 * deviation,
    pLonger,
    pShorter,
    pChanged: pLonger + pShorter,
    verdict: verdictOf(pLonger, pShorter),
  };
}

function verdictOf(pLonger: number, pShorter: number): SpecChange['verdict'] {
  if (pLonger >= SURE) return 'longer';
  if (pShorter >= SURE) return 'shorter';
  return pLonger + pShorter <= UNLIKELY ? 'as before' : "can't tell yet";
}
