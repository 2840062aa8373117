import { normalDensity, normalDistribution } from '../statistics/normal.ts';
import { DEVIATE_80 } from './gaps.ts';

/**
 * Radii of the hole and the ball, m: 4.25 in and 1.68 in across. Source: R&A and USGA, Rules of Golf
 * (hole 4¼ in, ball not less than 1.68 in); as used by Gelman & Nolan (2002).
 */
export const HOLE_RADIUS = (4.25 / 2) * 0.0254;
export const BALL_RADIUS = (1.68 / 2) * 0.0254;

/** Before any putt: ln of the standard deviation of the angle, 2° within a factor of e^.5. Own guess. */
const USUAL_LOG = Math.log(2);
const USUAL_SPREAD = 0.5;
/** σ is looked for between these, °. */
const LEAST = 0.05;
const MOST = 30;

/** Putts from one length: tried, and holed. */
export interface PuttTally {
  readonly length_m: number;
  readonly tried: number;
  readonly made: number;
}

/** Standard deviation of the angle of a golfer's putts, °, with its 80 % interval, from so many putts. */
export interface PuttingAngle {
  readonly sigma_deg: number;
  readonly lo80_deg: number;
  readonly hi80_deg: number;
  readonly putts: number;
}

/** The angle, radians, within which a putt from some length goes in: asin((R − r)/x); π/2 nearer than R − r. */
function openAngle(length_m: number): number {
  const share = (HOLE_RADIUS - BALL_RADIUS) / length_m;
  return share >= 1 ? Math.PI / 2 : Math.asin(share);
}

/**
 * Probability of holing a putt by the angle alone: 2Φ(asin((R − r)/x)/σ) − 1. Assumption: the pace is
 * good enough; breaks and greens are in σ.
 *
 * @param length_m more than 0. @param sigma_deg more than 0. @throws RangeError otherwise.
 * Source: Gelman & Nolan (2002), A probability model for golf putting, Teaching Statistics 24, 93–95.
 */
export function holingOdds(length_m: number, sigma_deg: number): number {
  if (!(length_m > 0)) throw new RangeError(`a putt of ${length_m} m: more than 0 is needed`);
  if (!(sigma_deg > 0)) throw new RangeError(`an angle of ${sigma_deg}°: more than 0 is needed`);
  return 2 * normalDistribution(openAngle(length_m) / ((sigma_deg * Math.PI) / 180)) - 1;
}

/**
 * Fits the one parameter of the angle model, σ: the mode of the binomial likelihood in ln σ with a weak
 * prior (2°, within a factor of e^.5), and an 80 % interval from the curvature there. Without putts
 * the answer is the prior.
 *
 * @throws RangeError when a tally has a length of 0 or more holed than tried.
 * Source: Gelman & Nolan (2002); the prior is our own guess.
 */
export function puttingAngle(tallies: readonly PuttTally[]): PuttingAngle {
  let putts = 0;
  for (const { length_m, tried, made } of tallies) {
    if (!(length_m > 0)) throw new RangeError(`a putt of ${length_m} m: more than 0 is needed`);
    if (!(made >= 0 && made <= tried)) throw new RangeError(`${made} of ${tried} putts from ${length_m} m`);
    putts += tried;
  }
  // The slope falls as ln σ grows past the mode, so that bisection finds it.
  let low = Math.log(LEAST);
  let high = Math.log(MOST);
  for (let step = 0; step < 60; step++) {
    const middle = 0.5 * (low + high);
    if (slopeAt(tallies, middle) > 0) low = middle;
    else high = middle;
  }
  const log = 0.5 * (low + high);
  const h = 1e-4;
  const curvature = (slopeAt(tallies, log - h) - slopeAt(tallies, log + h)) / (2 * h);
  const deviation = 1 / Math.sqrt(Math.max(curvature, 1 / USUAL_SPREAD ** 2));
  return {
    sigma_deg: Math.exp(log),
    lo80_deg: Math.exp(log - DEVIATE_80 * deviation),
    hi80_deg: Math.exp(log + DEVIATE_80 * deviation),
    putts,
  };
}

/** Derivative of the log posterior with respect to ln σ. */
function slopeAt(tallies: readonly PuttTally[], logSigma: number): number {
  const sigma = (Math.exp(logSigma) * Math.PI) / 180;
  let slope = -(logSigma - USUAL_LOG) / USUAL_SPREAD ** 2;
  for (const { length_m, tried, made } of tallies) {
    const z = openAngle(length_m) / sigma;
    const misses = 2 * normalDistribution(-z);
    const change = -2 * normalDensity(z) * z;
    // dp/d(ln σ) = change; a putt that cannot miss says nothing about σ.
    if (misses < 1e-300) continue;
    slope += change * (made / (1 - misses) - (tried - made) / misses);
  }
  return slope;
}

/** A share of so many with its 80 % interval. */
export interface Rate {
  readonly rate: number;
  readonly lo80: number;
  readonly hi80: number;
  readonly of: number;
}

/**
 * A share made of tries with its 80 % score interval: honest for few tries and at none and all.
 *
 * @throws RangeError when there are no tries or more made than tried.
 * Source: Wilson (1927), JASA 22, 209–212.
 */
export function rateOf(made: number, tried: number): Rate {
  if (!(tried >= 1 && made >= 0 && made <= tried)) throw new RangeError(`${made} of ${tried}: no share`);
  const z2 = DEVIATE_80 ** 2;
  const rate = made / tried;
  const centre = (rate + z2 / (2 * tried)) / (1 + z2 / tried);
  const half = (DEVIATE_80 * Math.sqrt((rate * (1 - rate)) / tried + z2 / (4 * tried * tried))) / (1 + z2 / tried);
  return { rate, lo80: Math.max(0, centre - half), hi80: Math.min(1, centre + half), of: tried };
}
