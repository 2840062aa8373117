import { normalDistribution } from '../statistics/normal.ts';

/** From when on two clubs are the same distance, or too far apart. The golfer may set his own. */
export interface GapThresholds {
  /** Within this of each other two clubs do the same work, m. */
  readonly same_m: number;
  /** A gap is wide when it is wider than this, m, and than this share of the longer carry. */
  readonly wide_m: number;
  readonly wideShare: number;
}

/**
 * Usual thresholds: the same within 5 yd, wide beyond 15 yd and 12 %. Common practice, no source:
 * full clubs stand about 10 to 15 yd apart.
 */
export const USUAL_THRESHOLDS: GapThresholds = { same_m: 4.572, wide_m: 13.716, wideShare: 0.12 };

/** Model error of the ratio of two carries beside the joint posterior, as a share of each carry. */
const MODEL_ERROR = 0.006;

/** Standard normal deviate of an 80 % interval: Φ⁻¹(.9). */
export const DEVIATE_80 = 1.2815515655446;

/** What two clubs are to each other: median and 80 % interval of the gap in metres, and the odds. */
export interface Gap {
  readonly gap_m: number;
  readonly lo80_m: number;
  readonly hi80_m: number;
  /** Probability that they are within 5 yd of each other. */
  readonly pSame: number;
  /** Probability that the gap is wider than 15 yd and than 12 % of the longer carry. */
  readonly pWide: number;
  readonly verdict: 'overlap' | "can't tell yet" | 'wide gap' | 'possibly wide' | 'gap';
}

/**
 * The gap G = e^θa − e^θb between two stock carries from the joint posterior of their logarithms:
 *
 *   Var G = a² C_aa + b² C_bb − 2 a b C_ab + .006² (a² + b²)
 *
 * Two clubs that share all their uncertainty (the golfer's level, the season's drift) have a gap
 * known better than either carry.
 *
 * @param longer_m stock carry in m of the longer club, a. @param shorter_m the same of the shorter, b.
 * @param caa posterior variances of θa, θb, and their covariance.
 */
export function gapBetween(
  longer_m: number,
  shorter_m: number,
  caa: number,
  cbb: number,
  cab: number,
  thresholds: GapThresholds = USUAL_THRESHOLDS,
): Gap {
  const a = longer_m;
  const gap = a - shorter_m;
  const deviation = gapDeviation(a, shorter_m, caa, cbb, cab);
  const { pSame, pWide } = gapOdds(gap, deviation, a, thresholds);
  return {
    gap_m: gap,
    lo80_m: gap - DEVIATE_80 * deviation,
    hi80_m: gap + DEVIATE_80 * deviation,
    pSame,
    pWide,
    verdict: verdictOf(pSame, pWide),
  };
}

/** Standard deviation of the gap, m: the root of Var G of {@link gapBetween}. */
export function gapDeviation(a: number, b: number, caa: number, cbb: number, cab: number): number {
  const variance = a * a * caa + b * b * cbb - 2 * a * b * cab + MODEL_ERROR ** 2 * (a * a + b * b);
  return Math.sqrt(Math.max(variance, MODEL_ERROR ** 2 * a * a));
}

/** Odds that a gap of normal distribution, m, is none, or is wide. @param longer_m carry of the longer club. */
export function gapOdds(
  gap_m: number,
  deviation_m: number,
  longer_m: number,
  { same_m, wide_m, wideShare }: GapThresholds,
): { pSame: number; pWide: number } {
  const below = (limit: number) => normalDistribution((limit - gap_m) / deviation_m);
  return { pSame: below(same_m) - below(-same_m), pWide: 1 - below(Math.max(wide_m, wideShare * longer_m)) };
}

/** The verdict in words for given odds. */
export function verdictOf(pSame: number, pWide: number): Gap['verdict'] {
  if (pSame >= 0.5) return 'overlap';
  if (pWide >= 0.8) return 'wide gap';
  if (pWide >= 0.5) return 'possibly wide';
  if (pSame >= 0.2) return "can't tell yet";
  return 'gap';
}
