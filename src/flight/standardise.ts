import { type Metres, metres } from '../units/metres.ts';
import { metresPerSecond } from '../units/metresPerSecond.ts';
import { errorShare } from './adjustmentError.ts';
import { STANDARD_DENSITY } from './air.ts';
import type { FlightConditions } from './flightConditions.ts';
import type { ClubLaunch } from './launch.ts';
import { fly } from './trajectory.ts';
import { CALM, FELT_HEIGHT, OPEN_GROUND, type Wind, windShare } from './wind.ts';

/**
 * One standard deviation of each part. What the model may get wrong about a golfer is shared by all shots
 * in like conditions (a response to wind or air learned per golfer stands for it); the reading of the
 * wind is new with every shot.
 */
export interface AdjustmentSigmas {
  readonly windModelLog: number;
  readonly windReadingLog: number;
  readonly airModelLog: number;
  readonly slope_m: Metres;
  /** All of them together, as a share of the carry. */
  readonly totalLog: number;
}

/**
 * What the conditions did to a stock shot. Standard carry = (measured carry + slopeAdd_m) × e^−(windLog + airLog);
 * the other way round for a day's number.
 */
export interface Adjusted {
  readonly kind: 'adjusted';
  /** ln(carry in this air and wind / carry in this air without wind); below 0: the wind cost distance. */
  readonly windLog: number;
  /** ln(carry in this air / carry in standard air). */
  readonly airLog: number;
  /** Added to a measured carry to make it level; above 0 when the landing point lies above the ball. */
  readonly slopeAdd_m: Metres;
  readonly sigmas: AdjustmentSigmas;
}

/** The conditions are beyond what the model can be trusted with; `why` reads as a sentence for the golfer. */
export interface NotAdjustable {
  readonly kind: 'not adjustable';
  readonly why: string;
}

/** The landing point lies above the top of this club's flight. */
export interface UnreachableRise {
  readonly kind: 'unreachable';
  readonly why: string;
}

export type Adjustment = Adjusted | NotAdjustable | UnreachableRise;

/** A stronger wind, at the height a golfer feels it, is not adjusted for, m/s (25 mph). Own rule. */
const STRONGEST_WIND = 11.176;
/** A noted wind speed is taken as right to ± 20 %, one standard deviation. Own estimate. */
const WIND_SPEED_SHARE = 0.2;
/** A noted wind direction, rounded to the hour of the clock, is right to ± 10°, one standard deviation. Own estimate. */
const WIND_DIRECTION = Math.sin((10 * Math.PI) / 180);
/**
 * An adjustment less sure than it is large is kept as long as it is surer than this: its shot then counts for
 * little, but for what it says. Leaving such shots out from 4 % on was tried on synthetic golfers in a windy spring:
 * they came out 9 % further from the truth. Own choice.
 */
const GUESS_LOG = 0.15;
/** Wind for the slope of carry on headwind, worked out once per launch, m/s at 2 m. */
const PROBE_MPS = 3;
/** Shorter than this the flight has no carry to compare, m. */
const LEAST_CARRY_M = 1;

/** A launch made ready to be adjusted many times. */
export interface Standardiser {
  readonly launch: ClubLaunch;
  /** Change of ln carry per m/s of headwind at 2 m, in standard air. */
  readonly perHeadwind: number;
  /** Carry without wind in air of a density, m; the last density's is kept, as a round has one air. */
  readonly calmCarry: (density: number) => number;
}

function carry(club: ClubLaunch, density: number, wind: Wind): number {
  const flight = fly(club.launch, { density, wind });
  return flight.kind === 'landed' ? flight.carry_m : 0;
}

function headwind(mps: number, reference_m: Metres): Wind {
  return {
    head_mps: metresPerSecond(mps),
    fromRight_mps: metresPerSecond(0),
    reference_m,
    roughness_m: OPEN_GROUND,
  };
}

/**
 * Makes a club's launch ready for `standardise`: two flights tell how it takes a headwind.
 * Do it once per club, swing and stock carry.
 */
export function standardiser(launch: ClubLaunch): Standardiser {
  const into = carry(launch, STANDARD_DENSITY, headwind(PROBE_MPS, FELT_HEIGHT));
  const down = carry(launch, STANDARD_DENSITY, headwind(-PROBE_MPS, FELT_HEIGHT));
  const perHeadwind = Math.log(Math.max(into, LEAST_CARRY_M) / Math.max(down, LEAST_CARRY_M)) / (2 * PROBE_MPS);
  let keptDensity = STANDARD_DENSITY;
  let keptCarry: number = launch.standardCarry_m;
  const calmCarry = (density: number): number => {
    if (density !== keptDensity) {
      keptCarry = carry(launch, density, CALM);
      keptDensity = density;
    }
    return keptCarry;
  };
  return { launch, perHeadwind, calmCarry };
}

/** Strength of a wind at the height a golfer feels it, against that at its own. */
function shareFelt({ reference_m, roughness_m }: Wind): number {
  return windShare(FELT_HEIGHT, reference_m, roughness_m);
}

interface WindEffect {
  readonly log: number;
  readonly model: number;
  readonly reading: number;
  readonly wind: Wind;
}

/** Wind of known direction: the ratio of two flights. Null: the flight has no carry to speak of. */
function knownWind(ready: Standardiser, density: number, calmCarry: number, wind: Wind): WindEffect | null {
  const { launch } = ready;
  if (wind.head_mps === 0 && wind.fromRight_mps === 0) return { log: 0, model: 0, reading: 0, wind };
  const flown = carry(launch, density, wind);
  if (flown < LEAST_CARRY_M) return null;
  const log = Math.log(flown / calmCarry);
  const at2 = shareFelt(wind);
  return {
    log,
    model: Math.abs(log) * errorShare(wind.head_mps >= 0 ? 'headwind' : 'tailwind', launch.club.loft_deg),
    reading: Math.hypot(WIND_SPEED_SHARE * log, ready.perHeadwind * at2 * wind.fromRight_mps * WIND_DIRECTION),
    wind,
  };
}

/**
 * Wind of unknown direction: ln carry ≈ a h + b h² in the headwind h = u cos φ, averaged over all φ:
 * mean b u²/2, variance (a u)²/2 + (b u²)²/8.
 */
function unknownWind(ready: Standardiser, density: number, calm: number, mps: number, at: Metres): WindEffect | null {
  const into = carry(ready.launch, density, headwind(mps, at));
  const down = carry(ready.launch, density, headwind(-mps, at));
  if (into < LEAST_CARRY_M || down < LEAST_CARRY_M) return null;
  const odd = Math.log(into / down) / 2;
  const even = Math.log(into / calm) / 2 + Math.log(down / calm) / 2;
  return {
    log: even / 2,
    model: Math.abs(even / 2) * errorShare('headwind', ready.launch.club.loft_deg),
    reading: Math.sqrt((odd * odd) / 2 + (even * even) / 8),
    wind: CALM,
  };
}

/**
 * What air, wind and slope did to a shot with this club, and how sure that is.
 *
 * Forward only: the stock shot is flown in standard conditions and in these, and the measured carry is
 * later scaled by the ratio; a measured carry is never inverted through the wind, which may have no answer.
 * The slope is added, not scaled: the stock shot's level carry less its carry to that height, in this air and wind.
 *
 * @param rise_m height of the landing point above the ball; negative: below.
 * @returns `adjusted`; `not adjustable` above 25 mph of wind as felt, or when the standard deviation is above both the
 *   adjustment and 15 % of the carry; `unreachable` when the landing point lies above the top of the flight.
 * @throws RangeError when the rise is not finite or the density outside 0 to 2 kg/m³.
 * Source: trajectory.ts; error shares our own (adjustmentError.ts).
 */
export function standardise(ready: Standardiser, conditions: FlightConditions, rise_m: number): Adjustment {
  const { launch } = ready;
  const { density } = conditions;
  const loft = launch.club.loft_deg;
  const noted = conditions.wind;
  const speed = noted.kind === 'known' ? Math.hypot(noted.wind.head_mps, noted.wind.fromRight_mps) : noted.mps;
  const felt = speed * (noted.kind === 'known' ? shareFelt(noted.wind) : shareFelt(headwind(0, noted.reference_m)));
  if (!(felt <= STRONGEST_WIND + 1e-9)) {
    return {
      kind: 'not adjustable',
      why: `the wind, ${felt.toFixed(0)} m/s as felt, is stronger than 25 mph (11 m/s)`,
    };
  }
  const standard = launch.standardCarry_m;
  const calm = ready.calmCarry(density);
  const airLog = Math.log(Math.max(calm, LEAST_CARRY_M) / Math.max(standard, LEAST_CARRY_M));
  const airModelLog = Math.abs(airLog) * errorShare('air', loft);

  const effect =
    noted.kind === 'known'
      ? knownWind(ready, density, calm, noted.wind)
      : unknownWind(ready, density, calm, noted.mps, noted.reference_m);
  if (effect === null || calm < LEAST_CARRY_M) {
    return { kind: 'not adjustable', why: 'in this wind the shot would carry next to nothing' };
  }
  let slopeAdd = 0;
  if (rise_m !== 0) {
    const sloped = fly(launch.launch, { density, wind: effect.wind }, rise_m);
    if (sloped.kind === 'unreachable') {
      return {
        kind: 'unreachable',
        why: `the landing point, ${rise_m.toFixed(0)} m above the ball, is out of this flight's reach: ${sloped.why}`,
      };
    }
    const level = noted.kind === 'known' ? calm * Math.exp(effect.log) : calm;
    slopeAdd = level - sloped.carry_m;
  }
  const slopeSigma = Math.abs(slopeAdd) * errorShare(rise_m > 0 ? 'up' : 'down', loft);
  const change = effect.log + airLog - slopeAdd / standard;
  const totalLog = Math.hypot(effect.model, effect.reading, airModelLog, slopeSigma / standard);
  if (totalLog > Math.abs(change) && totalLog > GUESS_LOG) {
    const share = (100 * totalLog).toFixed(0);
    const size = (100 * Math.abs(change)).toFixed(0);
    return {
      kind: 'not adjustable',
      why:
        noted.kind === 'known'
          ? `the adjustment, ${size} % of the carry, is less sure than it is large (± ${share} %)`
          : `a wind of ${noted.mps.toFixed(0)} m/s is noted but not from where: it may be ± ${share} % of the carry`,
    };
  }
  return {
    kind: 'adjusted',
    windLog: effect.log,
    airLog,
    slopeAdd_m: metres(slopeAdd),
    sigmas: {
      windModelLog: effect.model,
      windReadingLog: effect.reading,
      airModelLog,
      slope_m: metres(slopeSigma),
      totalLog,
    },
  };
}
