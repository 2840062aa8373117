import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import { normalDensity } from '../statistics/normal.ts';
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

/**
 * Points over what the balls may show, in standard deviations, with their weights: the trapezium rule,
 * which bears the kinks where one club takes over from another better than few Gaussian points do.
 */
const NODES = Array.from({ length: 9 }, (_, i) => (i - 4) * 0.8);
const NODE_WEIGHTS = NODES.map((z) => normalDensity(z) / NODES.reduce((sum, other) => sum + normalDensity(other), 0));
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

/** The cell that leaves least from each distance as things are known. */
function bestNow(facing: readonly Facing[], forecasts: readonly GaussianMixture[]): number[] {
  return facing.map(({ distance_m, cells }) => {
    const leave = cells.map((cell) => expectedLeave(forecasts[cell], distance_m));
    return cells[leave.indexOf(Math.min(...leave))];
  });
}

/**
 * What information on one cell is worth before it is had: the expected leave now, less the expectation
 * of the least expected leave once the carries are known that much better,
 *
 *   V = Σ_d w_d E_z [ L_b(d; z) − min_j L_j(d; z) ],   L_j(d; z) = L_j(d; θ_j + u_j z, C_jj − u_j²)
 *
 * with b the club that is best from d now: E_z L_b(d; z) is what it leaves now, since knowing a carry
 * better does not make the ball straighter. It pays because from some distances another club or swing
 * turns out to be right. Never negative.
 *
 * Source: Frazier, Powell & Dayanik (2009), The knowledge-gradient policy for correlated normal beliefs,
 * INFORMS J. Computing 21, 599–613.
 */
function worthOf(
  direction: Float64Array,
  facing: readonly Facing[],
  forecasts: readonly GaussianMixture[],
  best: readonly number[],
): number {
  let worth = 0;
  NODES.forEach((z, q) => {
    const shifted = forecasts.map((forecast, j) => moved(forecast, direction[j] * z, direction[j] ** 2));
    facing.forEach(({ distance_m, weight, cells }, d) => {
      const stay = expectedLeave(shifted[best[d]], distance_m);
      let least = stay;
      for (const cell of cells) {
        if (cell !== best[d]) least = Math.min(least, expectedLeave(shifted[cell], distance_m));
      }
      worth += NODE_WEIGHTS[q] * weight * (stay - least);
    });
  });
  return worth;
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
  const best = bestNow(facing, ground.forecasts);
  const rungs = among.map((cell): PracticeRung => {
    const perBall = ballInformation(ground.cells[cell], ground.theta[cell], ground.scatter2, ground.mishits);
    const narrow = narrowing(ground.covariance, n, cell, sessionInformation(perBall, balls));
    const variance = ground.covariance[cell * n + cell];
    return {
      cell,
      balls,
      gain_m: worthOf(narrow.direction, facing, ground.forecasts, best),
      before: Math.sqrt(variance),
      after: Math.sqrt(variance - narrow.direction[cell] ** 2),
    };
  });
  return rungs.sort((a, b) => b.gain_m - a.gain_m || a.cell - b.cell);
}

/** A session and what it is made of, rungs in order of what they are worth. */
export interface PracticePlan {
  readonly balls: number;
  readonly rungs: readonly PracticeRung[];
}

/**
 * Sessions of so many balls on some cells (the wedge ladder): five by five to the cell where the next
 * five are worth most, one step ahead at a time, the carries expected to stay where they are. A longer
 * session goes on where a shorter one ends.
 *
 * @param among all cells that are played. @param ladder those to practise.
 * @param sessions balls of each plan, in fives, the fewest first.
 * @param to_m distances up to here count: no further than the longest rung is of use.
 * @throws RangeError when there is no rung, or a session is not in fives.
 */
export function practicePlans(
  ground: PracticeGround,
  among: readonly number[],
  ladder: readonly number[],
  sessions: readonly number[],
  to_m: number,
): PracticePlan[] {
  if (ladder.length === 0) throw new RangeError('0 cells to practise: at least 1 is needed');
  for (const balls of sessions) {
    if (!(balls >= STEP_BALLS) || balls % STEP_BALLS !== 0) throw new RangeError(`${balls} balls: fives are needed`);
  }
  const n = ground.cells.length;
  const facing = facings(ground, among, to_m);
  const count = new Int32Array(n);
  const gain = new Float64Array(n);
  let { covariance, forecasts } = ground;
  const perBall = ground.cells.map((cell, i) =>
    ballInformation(cell, ground.theta[i], ground.scatter2, ground.mishits),
  );
  const plans: PracticePlan[] = [];
  for (let balls = STEP_BALLS; plans.length < sessions.length; balls += STEP_BALLS) {
    const now = bestNow(facing, forecasts);
    const options = ladder.map((cell) => {
      const had = sessionInformation(perBall[cell], count[cell]);
      const narrow = narrowing(covariance, n, cell, sessionInformation(perBall[cell], count[cell] + STEP_BALLS) - had);
      return { cell, narrow, worth: worthOf(narrow.direction, facing, forecasts, now) };
    });
    const best = options.reduce((a, b) => (b.worth > a.worth ? b : a));
    count[best.cell] += STEP_BALLS;
    gain[best.cell] += best.worth;
    covariance = narrowed(covariance, best.narrow);
    forecasts = forecasts.map((forecast, j) => moved(forecast, 0, best.narrow.direction[j] ** 2));
    if (sessions[plans.length] === balls)
      plans.push({ balls, rungs: rungsOf(ladder, count, gain, ground, covariance) });
    else if (sessions[plans.length] < balls) throw new RangeError(`${sessions.join(', ')} balls: the fewest first`);
  }
  return plans;
}

function rungsOf(
  ladder: readonly number[],
  count: Int32Array,
  gain: Float64Array,
  ground: PracticeGround,
  covariance: Float64Array,
): PracticeRung[] {
  const n = ground.cells.length;
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
