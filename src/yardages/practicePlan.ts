import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import type { ApproachDistances } from './approachDistances.ts';
import { ballInformation, narrowed, narrowing } from './ballsToCome.ts';
import type { Cell } from './cell.ts';
import { expectedLeave } from './expectedLeave.ts';
import { PRIOR } from './priorTable.ts';

/** What practice is planned from: the cells, their joint posterior and forecasts, and the distances faced. */
export interface PracticeGround {
  readonly cells: readonly Cell[];
  readonly theta: ArrayLike<number>;
  /** Row-major posterior covariance of θ. */
  readonly covariance: Float64Array;
  readonly forecasts: readonly GaussianMixture[];
  readonly scatter2: number;
  readonly mishits: number;
  readonly approaches: ApproachDistances;
}

/** One rung of a plan. */
export interface PracticeRung {
  readonly cell: number;
  readonly balls: number;
  /** Expected leave that these balls are expected to save from every approach, m, 0 or more. */
  readonly gain_m: number;
  /** Posterior standard deviation of ln carry before the session and after it. */
  readonly before: number;
  readonly after: number;
}

/** Gauss–Hermite rule for the standard normal distribution, 7 points. Source: Abramowitz & Stegun (1964), table 25.10. */
const NODES = [
  0, 1.154405394739968, -1.154405394739968, 2.366759410734541, -2.366759410734541, 3.750439717725742,
  -3.750439717725742,
];
const NODE_WEIGHTS = [
  0.457142857142857, 0.240123178605013, 0.240123178605013, 0.030757123967586, 0.030757123967586, 0.000548268855972,
  0.000548268855972,
];
/** Clubs looked at from a distance: the nearest so many by stock carry. */
const NEAREST = 8;
/** Every so many points of the distance grid. */
const STRIDE = 2;
/** What all balls of a session share and so do not tell apart: the day, and the ground. */
const SESSION = PRIOR.day ** 2 + PRIOR.practiceOwn ** 2;
/** Balls are planned in steps of five. */
const STEP_BALLS = 5;

/** Information of k balls of one session: they share the day and the ground, so that it does not grow for ever. */
function sessionInformation(perBall: number, balls: number): number {
  return balls === 0 ? 0 : 1 / (1 / (perBall * balls) + SESSION);
}

/** From which distances which cells are in question. */
interface Facing {
  readonly distance_m: number;
  readonly weight: number;
  readonly cells: readonly number[];
}

function facings({ approaches, theta }: PracticeGround, among: readonly number[], to_m: number): Facing[] {
  const list: Facing[] = [];
  for (let d = 0; d < approaches.distance_m.length; d += STRIDE) {
    const distance_m = approaches.distance_m[d];
    if (distance_m > to_m) break;
    const log = Math.log(distance_m);
    const cells = among.toSorted((a, b) => Math.abs(theta[a] - log) - Math.abs(theta[b] - log) || a - b);
    const weight = STRIDE * approaches.weight[d];
    list.push({ distance_m, weight, cells: cells.slice(0, NEAREST) });
  }
  return list;
}

/** The forecast with its mean moved and its variance lessened by what is then known. */
function moved(forecast: GaussianMixture, by: number, known: number): GaussianMixture {
  return {
    weights: forecast.weights,
    means: forecast.means.map((mean) => mean + by),
    deviations: forecast.deviations.map((s) => Math.sqrt(Math.max(1e-8, s * s - known))),
  };
}

function leaveOf(facing: readonly Facing[], forecasts: readonly GaussianMixture[]): number {
  let sum = 0;
  for (const { distance_m, weight, cells } of facing) {
    let least = Number.POSITIVE_INFINITY;
    for (const cell of cells) least = Math.min(least, expectedLeave(forecasts[cell], distance_m));
    sum += weight * least;
  }
  return sum;
}

/**
 * What information on one cell is worth before it is had: the expected leave now, less the expectation
 * of the least expected leave once the carries are known that much better,
 *
 *   V = Σ_d w_d min_j L_j(d)  −  E_z [ Σ_d w_d min_j L_j(d; θ_j + u_j z, C_jj − u_j²) ]
 *
 * Knowing a carry better does not make the ball straighter: it pays because from some distances another
 * club or swing turns out to be right. Never negative.
 *
 * Source: Frazier, Powell & Dayanik (2009), The knowledge-gradient policy for correlated normal beliefs,
 * INFORMS J. Computing 21, 599–613.
 */
function worthOf(
  direction: Float64Array,
  facing: readonly Facing[],
  forecasts: readonly GaussianMixture[],
  now: number,
): number {
  let then = 0;
  NODES.forEach((z, q) => {
    const shifted = forecasts.map((forecast, j) => moved(forecast, direction[j] * z, direction[j] ** 2));
    then += NODE_WEIGHTS[q] * leaveOf(facing, shifted);
  });
  return Math.max(0, now - then);
}

/**
 * For each cell, what the next balls with it are worth: how much expected leave they are expected to
 * save from every approach, m. The largest first: these are the numbers where practice pays.
 *
 * @param among cells that are played. @param balls how many balls each, 1 or more.
 * @throws RangeError when there are no balls.
 */
export function practiceWorth(ground: PracticeGround, among: readonly number[], balls: number): PracticeRung[] {
  if (!(balls >= 1)) throw new RangeError(`${balls} balls: at least 1 is needed`);
  const n = ground.cells.length;
  const facing = facings(ground, among, Number.POSITIVE_INFINITY);
  const now = leaveOf(facing, ground.forecasts);
  const rungs = among.map((cell): PracticeRung => {
    const perBall = ballInformation(ground.cells[cell], ground.theta[cell], ground.scatter2, ground.mishits);
    const narrow = narrowing(ground.covariance, n, cell, sessionInformation(perBall, balls));
    const variance = ground.covariance[cell * n + cell];
    return {
      cell,
      balls,
      gain_m: worthOf(narrow.direction, facing, ground.forecasts, now),
      before: Math.sqrt(variance),
      after: Math.sqrt(variance - narrow.direction[cell] ** 2),
    };
  });
  return rungs.sort((a, b) => b.gain_m - a.gain_m || a.cell - b.cell);
}

/**
 * A session of so many balls on some cells (the wedge ladder): five by five to the cell where the next
 * five are worth most, one step ahead at a time, the carries expected to stay where they are. Rungs in
 * order of what they are worth.
 *
 * @param among all cells that are played. @param ladder those to practise. @param balls 5 or more, taken down to fives.
 * @param to_m distances up to here count: no further than the longest rung is of use.
 * @throws RangeError when there is no rung or fewer than five balls.
 */
export function practicePlan(
  ground: PracticeGround,
  among: readonly number[],
  ladder: readonly number[],
  balls: number,
  to_m: number,
): PracticeRung[] {
  if (ladder.length === 0 || !(balls >= STEP_BALLS)) {
    throw new RangeError(`${balls} balls on ${ladder.length} cells: at least 5 balls and 1 cell are needed`);
  }
  const n = ground.cells.length;
  const facing = facings(ground, among, to_m);
  const count = new Int32Array(n);
  const gain = new Float64Array(n);
  let { covariance } = ground;
  let { forecasts } = ground;
  const perBall = ground.cells.map((cell, i) =>
    ballInformation(cell, ground.theta[i], ground.scatter2, ground.mishits),
  );
  for (let left = Math.floor(balls / STEP_BALLS); left > 0; left--) {
    const now = leaveOf(facing, forecasts);
    const options = ladder.map((cell) => {
      const more =
        sessionInformation(perBall[cell], count[cell] + STEP_BALLS) - sessionInformation(perBall[cell], count[cell]);
      const narrow = narrowing(covariance, n, cell, more);
      return { cell, narrow, worth: worthOf(narrow.direction, facing, forecasts, now) };
    });
    const best = options.reduce((a, b) => (b.worth > a.worth ? b : a));
    count[best.cell] += STEP_BALLS;
    gain[best.cell] += best.worth;
    covariance = narrowed(covariance, best.narrow);
    forecasts = forecasts.map((forecast, j) => moved(forecast, 0, best.narrow.direction[j] ** 2));
  }
  return ladder
    .filter((cell) => count[cell] > 0)
    .map((cell) => ({
      cell,
      balls: count[cell],
      gain_m: gain[cell],
      before: Math.sqrt(ground.covariance[cell * n + cell]),
      after: Math.sqrt(covariance[cell * n + cell]),
    }))
    .sort((a, b) => b.gain_m - a.gain_m || a.cell - b.cell);
}
