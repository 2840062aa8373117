import { DEVIATE_80 } from './gaps.ts';

/**
 * Where one ball pitched about the aim, as shares of the carry so that clubs can be pooled: right of the
 * aim (+) by offline ÷ carry, long (+) by ln carry less what the cell carries. `factor` is how much wider
 * the swing scatters than a full one.
 */
export interface SpreadDot {
  readonly group: number;
  readonly right: number;
  readonly long: number;
  readonly factor: number;
}

/** How the balls of one club × swing spread: a bivariate t distribution of (right, long), as shares of the carry. */
export interface Spread {
  /** Own balls with a carry and a line. */
  readonly dots: number;
  /** Balls of all clubs that it is pooled from. */
  readonly pooled: number;
  readonly rightMean: number;
  readonly longMean: number;
  /** Scale matrix Σ: right², right·long, long². */
  readonly rr: number;
  readonly rl: number;
  readonly ll: number;
  /** Degrees of freedom of the tails, even. */
  readonly degrees: number;
  /** How many balls the scales are worth, own and borrowed: their relative error is 1/√(2 × this). */
  readonly worth: number;
}

/** Tails that are tried: from heavy to all but normal. */
const DEGREES = [4, 6, 10, 30];
const ROUNDS = 60;
/** Before any ball: spread to the sides and in length as shares of the carry, worth so many balls. Own guess. */
const USUAL = { right: 0.06, long: 0.05, worth: 10 };
/** The pooled spread is worth so many balls of a club, its mean so many. Own choice. */
const POOLED_WORTH = 15;
const MEAN_WORTH = 10;

interface Fit {
  readonly mean: readonly [number, number];
  readonly scale: readonly [rr: number, rl: number, ll: number];
}

/**
 * How each club × swing spreads about its aim: a bivariate t distribution fitted to all balls (so that
 * one wild ball does not widen everything), each club then shrunk towards all clubs together. Balls are
 * pooled as shares of the carry, shorter swings scaled by how much wider they scatter.
 *
 * The error of the measures is in it: what is drawn is what was seen.
 *
 * @param dots of all clubs, carry and line both known. @param factors scatter of each group, 1: full swing.
 * @returns one spread for each group, in their order; a group without balls gets the pooled one.
 * @throws RangeError when a dot is of no group or is not finite.
 * Source: Lange, Little & Taylor (1989), JASA 84, 881–896 (t by EM); the prior worth is our own choice.
 */
export function spreads(dots: readonly SpreadDot[], factors: readonly number[]): Spread[] {
  for (const { group, right, long } of dots) {
    if (!(group >= 0 && group < factors.length)) throw new RangeError(`group ${group} of ${factors.length}`);
    if (!Number.isFinite(right + long)) throw new RangeError(`a dot at ${right} right, ${long} long of the carry`);
  }
  const usual: Fit = { mean: [0, 0], scale: [USUAL.right ** 2, 0, USUAL.long ** 2] };
  let degrees = DEGREES[DEGREES.length - 1];
  let pooled = usual;
  let best = Number.NEGATIVE_INFINITY;
  for (const candidate of DEGREES) {
    const fit = fitSpread(dots, candidate, usual, USUAL.worth, MEAN_WORTH);
    const likelihood = logLikelihood(dots, candidate, fit);
    if (likelihood <= best + 1e-9) continue;
    best = likelihood;
    degrees = candidate;
    pooled = fit;
  }
  const behind = 1 / (1 / POOLED_WORTH + 1 / (dots.length + USUAL.worth));
  return factors.map((factor, group) => {
    const own = dots.filter((dot) => dot.group === group);
    const { mean, scale } = own.length === 0 ? pooled : fitSpread(own, degrees, pooled, POOLED_WORTH, MEAN_WORTH);
    const f2 = factor * factor;
    return {
      dots: own.length,
      pooled: dots.length,
      rightMean: mean[0],
      longMean: mean[1],
      rr: scale[0] * f2,
      rl: scale[1] * f2,
      ll: scale[2] * f2,
      degrees,
      worth: own.length + behind,
    };
  });
}

/** EM for mean and scale of a bivariate t, with a prior worth some balls; dots in units of a full swing's scatter. */
function fitSpread(dots: readonly SpreadDot[], degrees: number, prior: Fit, worth: number, meanWorth: number): Fit {
  let fit = prior;
  for (let round = 0; round < ROUNDS; round++) {
    let weights = meanWorth;
    let right = meanWorth * prior.mean[0];
    let long = meanWorth * prior.mean[1];
    const weight = dots.map((dot) => (degrees + 2) / (degrees + squaredDistance(dot, fit)));
    dots.forEach((dot, k) => {
      weights += weight[k];
      right += weight[k] * dot.right;
      long += weight[k] * dot.long;
    });
    const mean = [right / weights, long / weights] as const;
    let [rr, rl, ll] = prior.scale.map((s) => worth * s);
    dots.forEach((dot, k) => {
      const w = weight[k] / dot.factor ** 2;
      rr += w * (dot.right - mean[0]) ** 2;
      rl += w * (dot.right - mean[0]) * (dot.long - mean[1]);
      ll += w * (dot.long - mean[1]) ** 2;
    });
    const n = worth + dots.length;
    fit = { mean, scale: [rr / n, rl / n, ll / n] };
  }
  return fit;
}

function squaredDistance({ right, long, factor }: SpreadDot, { mean, scale: [rr, rl, ll] }: Fit): number {
  const x = (right - mean[0]) / factor;
  const y = (long - mean[1]) / factor;
  return (ll * x * x - 2 * rl * x * y + rr * y * y) / (rr * ll - rl * rl);
}

function logLikelihood(dots: readonly SpreadDot[], degrees: number, fit: Fit): number {
  const [rr, rl, ll] = fit.scale;
  const log = -0.5 * Math.log(rr * ll - rl * rl);
  return dots.reduce(
    (sum, dot) => sum + log - (0.5 * degrees + 1) * Math.log1p(squaredDistance(dot, fit) / degrees),
    0,
  );
}

/** The ellipse that holds a share of the balls, at one carry. Metres; angles from straight ahead to the right. */
export interface SpreadEllipse {
  readonly right_m: number;
  readonly long_m: number;
  readonly semiMajor_m: number;
  readonly semiMinor_m: number;
  /** Direction of the longer axis from straight ahead, towards the right, −90° to 90°. */
  readonly tilt_deg: number;
  /** Full depth and width of the ellipse. */
  readonly deep_m: number;
  readonly wide_m: number;
  /** Factor by which depth and width may be off either way, 80 %. */
  readonly within: number;
}

/**
 * The ellipse that holds a share of the balls, "14 deep, 11 wide": for a bivariate t of ν degrees the
 * squared radius is ν ((1 − share)^(−2/ν) − 1).
 *
 * @param carry_m stock carry, m. @param share 0 to 1, .8 as a rule. @throws RangeError when out of range.
 * Source: Kotz & Nadarajah (2004), Multivariate t Distributions and Their Applications, ch. 1.
 */
export function spreadEllipse(spread: Spread, carry_m: number, share = 0.8): SpreadEllipse {
  if (!(carry_m > 0)) throw new RangeError(`carry ${carry_m} m: more than 0 is needed`);
  if (!(share > 0 && share < 1)) throw new RangeError(`share ${share}: between 0 and 1`);
  const { rr, rl, ll, degrees } = spread;
  const radius = Math.sqrt(degrees * ((1 - share) ** (-2 / degrees) - 1)) * carry_m;
  const middle = 0.5 * (rr + ll);
  const half = Math.hypot(0.5 * (ll - rr), rl);
  return {
    right_m: spread.rightMean * carry_m,
    long_m: spread.longMean * carry_m,
    semiMajor_m: radius * Math.sqrt(middle + half),
    semiMinor_m: radius * Math.sqrt(Math.max(0, middle - half)),
    tilt_deg: (Math.atan2(2 * rl, ll - rr) / 2) * (180 / Math.PI),
    deep_m: 2 * radius * Math.sqrt(ll),
    wide_m: 2 * radius * Math.sqrt(rr),
    within: Math.exp(DEVIATE_80 / Math.sqrt(2 * spread.worth)),
  };
}
