import { normalQuantile } from '../statistics/normal.ts';
import { narrowed, narrowing } from './ballsToCome.ts';
import { type Gap, type GapThresholds, gapDeviation, gapOdds, USUAL_THRESHOLDS, verdictOf } from './gaps.ts';

/** How many more shots, with the two clubs together, would settle what the gap is. */
export type Settling =
  | { readonly kind: 'settled' }
  /** With so many more shots the odds of a settled verdict reach `odds` (at least 4 in 5). */
  | { readonly kind: 'shots'; readonly shots: number; readonly odds: number }
  | { readonly kind: 'more than'; readonly shots: number; readonly odds: number };

/** No plan goes beyond so many shots. */
const MOST_SHOTS = 60;
/** Odds of a settled verdict that count as settling it. Own choice. */
const SETTLED_ODDS = 0.8;
/** Points of the midpoint rule over the probability of where the gap will come to lie. */
const POINTS = 64;

const isSettled = (verdict: Gap['verdict']) => verdict !== "can't tell yet" && verdict !== 'possibly wide';

/** Midpoints of equal probability of the standard normal distribution. */
const DEVIATES = Array.from({ length: POINTS }, (_, i) => normalQuantile((i + 0.5) / POINTS));

/** The two clubs of a gap as the posterior has them. */
export interface GapPair {
  readonly longer_m: number;
  readonly shorter_m: number;
  /** Posterior covariance of the two θ: longer, both, shorter. */
  readonly caa: number;
  readonly cab: number;
  readonly cbb: number;
  /** What one more ball tells of each θ: see ballInformation. */
  readonly longerBall: number;
  readonly shorterBall: number;
}

/**
 * How many more shots would settle a gap that is "can't tell yet" or "possibly wide". Shots go in turn
 * to the club that narrows the gap more. With n shots the gap's variance falls from V₀ to V_n; where it
 * will come to lie is not known yet, N(G, V₀ − V_n): the verdict is worked out over that distribution,
 * and n is the least number for which it is settled with odds of at least 4 in 5.
 *
 * Honest about the rest: a gap that lies near a threshold may need more than sixty shots or never be
 * settled. Assumption: shots measured with care, spread over rounds, the golfer as he is now.
 */
export function shotsToSettle(pair: GapPair, thresholds: GapThresholds = USUAL_THRESHOLDS): Settling {
  const gap = pair.longer_m - pair.shorter_m;
  const deviationOf = (c: Float64Array) => gapDeviation(pair.longer_m, pair.shorter_m, c[0], c[3], c[1]);
  let covariance: Float64Array = Float64Array.of(pair.caa, pair.cab, pair.cab, pair.cbb);
  const before = deviationOf(covariance);
  const oddsNow = gapOdds(gap, before, pair.longer_m, thresholds);
  if (isSettled(verdictOf(oddsNow.pSame, oddsNow.pWide))) return { kind: 'settled' };
  let odds = 0;
  for (let shots = 1; shots <= MOST_SHOTS; shots++) {
    const withLonger = narrowed(covariance, narrowing(covariance, 2, 0, pair.longerBall));
    const withShorter = narrowed(covariance, narrowing(covariance, 2, 1, pair.shorterBall));
    covariance = deviationOf(withLonger) <= deviationOf(withShorter) ? withLonger : withShorter;
    const after = deviationOf(covariance);
    odds = settledOdds(gap, Math.sqrt(Math.max(0, before ** 2 - after ** 2)), after, pair.longer_m, thresholds);
    if (odds >= SETTLED_ODDS) return { kind: 'shots', shots, odds };
  }
  return { kind: 'more than', shots: MOST_SHOTS, odds };
}

function settledOdds(gap: number, move: number, after: number, longer_m: number, thresholds: GapThresholds): number {
  let settled = 0;
  for (const z of DEVIATES) {
    const { pSame, pWide } = gapOdds(gap + z * move, after, longer_m, thresholds);
    if (isSettled(verdictOf(pSame, pWide))) settled++;
  }
  return settled / POINTS;
}
