import { type FlightConditions, flightConditions, type Refused } from '../flight/flightConditions.ts';
import type { LaunchHeight } from '../flight/flownClub.ts';
import { expectedRoll } from '../flight/roll.ts';
import type { Club } from '../golf/club.ts';
import type { Conditions, Ground } from '../golf/conditions.ts';
import type { Shot } from '../golf/shot.ts';
import type { Swing } from '../golf/swing.ts';
import { type Degrees, degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import { DEVIATE_80 } from '../yardages/gaps.ts';
import { forecastQuantiles, nextBall } from '../yardages/nextBall.ts';
import { PRIOR } from '../yardages/priorTable.ts';
import { RESPONSES, sharedIndex } from '../yardages/sharedEffects.ts';
import { effectOf } from './adjustments.ts';
import type { FittedBook } from './fitBook.ts';
import { responseLoadings } from './responseLoadings.ts';

/** The weather and ground that a card is prepared for; null: as in standard conditions. */
export interface DayConditions
  extends Pick<Conditions, 'temperature_C' | 'humidity_pct' | 'pressure_hPa' | 'altitude_m'> {
  /** The wind against the shots, by the clock: 12 into, 6 from behind. */
  readonly wind: Shot['wind'];
  readonly ground: Ground;
}

/** One number of the card for the day. */
export interface DayNumber {
  readonly kind: 'number';
  readonly clubId: string;
  readonly specId: string;
  readonly swing: Swing;
  /** Stock carry in standard conditions, as in the book. */
  readonly standard_m: Metres;
  /** Stock carry in the day's conditions; `lo80_m` to `hi80_m` holds it with 80 % probability. */
  readonly today_m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  /** Quantiles p05, p10 … p95 of the next ball in the day's conditions, mishits included. */
  readonly next_m: readonly Metres[];
  /** What air and wind each put on or take off the standard carry; with the golfer's own response. */
  readonly air_m: Metres;
  readonly wind_m: Metres;
  /** How far the stock shot runs on from its pitch mark on the day's ground, and the standard deviation of that. */
  readonly roll_m: Metres;
  readonly rollSd_m: Metres;
}

/** A club and swing that the day's conditions are too much for; `why` reads as a sentence for the golfer. */
export interface NoDayNumber {
  readonly kind: 'no number';
  readonly clubId: string;
  readonly specId: string;
  readonly swing: Swing;
  readonly why: string;
}

/** A golfer's card for one day. */
export interface DayCard {
  readonly kind: 'card';
  readonly asOf: string;
  /** In the order of the book's cells. */
  readonly numbers: readonly (DayNumber | NoDayNumber)[];
  /** A sentence when the day's air is unlike any the golfer has played in; null: it is not, or his response is known. */
  readonly airUnknown: string | null;
}

/** Air within this of some round's is air that the golfer has played in, ln density: 6 °C, or 200 m up. Own choice. */
const LIKE_AIR_LOG = 0.025;
/** A response with more than this of its variance before any shot is not known. Own choice. */
const UNKNOWN_SHARE = 0.8;
const AIR = RESPONSES.indexOf('air');

/**
 * The whole card for a day: every stock carry, its uncertainty and the next ball in given air and wind.
 *
 * For cell i in conditions that change its stock shot by d = ln(carry today / standard carry) and load
 * by l on the golfer's own responses κ to wind and air, from the joint posterior of carries and responses:
 *
 *   ln today = θ_i + d + lᵀκ,   Var = C_ii + 2 lᵀ C_iκ + lᵀ C_κκ l + (reading of the wind)²
 *
 * so that a golfer who only ever played in today's air gets today's number as sure as his own shots in it,
 * whatever that air did to them. The wind of the day is taken as uncertain as a wind noted on a shot.
 *
 * @param clubs the golfer's clubs, for their launch heights; a cell of no club has the usual.
 * @returns `refused` when both pressure and altitude are given.
 * @throws RangeError when a figure is outside its range.
 * Source: flight/standardise.ts for d and its errors; yardages/scaleAverage.ts for the posterior.
 */
export function dayCard(fitted: FittedBook, clubs: readonly Club[], day: DayConditions): DayCard | Refused {
  const conditions = conditionsOf(day);
  if (conditions.kind === 'refused') return conditions;
  return {
    kind: 'card',
    asOf: fitted.asOf,
    numbers: fitted.cells.map((cell, i) => {
      const height = clubs.find(({ id }) => id === cell.clubId)?.launch ?? null;
      return dayNumber(fitted, i, height, conditions, day.ground);
    }),
    airUnknown: airUnknown(fitted, conditions.density),
  };
}

function conditionsOf(day: DayConditions): FlightConditions | Refused {
  const { temperature_C, humidity_pct, pressure_hPa, altitude_m, wind, ground } = day;
  const round = { temperature_C, humidity_pct, pressure_hPa, altitude_m, ground };
  const noWind = { windFrom_deg: null, wind_mps: null, windReference_m: metres(2) };
  return flightConditions({ ...round, ...noWind }, wind, null);
}

function dayNumber(
  fitted: FittedBook,
  i: number,
  height: LaunchHeight | null,
  conditions: FlightConditions,
  ground: Ground,
): DayNumber | NoDayNumber {
  const { model, theta, mishits } = fitted;
  const cell = fitted.cells[i];
  const { clubId, specId, swing, kind } = cell;
  if (kind === 'putter') throw new RangeError(`club ${clubId} is a putter: it has no carry`);
  const loft_deg: Degrees = degrees(cell.loft_deg);
  const effect = effectOf({ kind, loft_deg, height }, Math.exp(theta[i]), conditions, 0);
  if (effect.kind !== 'adjusted') return { kind: 'no number', clubId, specId, swing, why: effect.why };
  const { responses } = model;
  const n = fitted.cells.length;
  const r = RESPONSES.length;
  const loading = new Float64Array(r);
  for (const [index, value] of responseLoadings(effect, cell.loft_deg)) {
    loading[RESPONSES.findIndex((response) => sharedIndex(response) === index)] = value;
  }
  let wind = effect.windLog;
  let variance = model.covariance[i * n + i] + effect.sigmas.windReadingLog ** 2;
  for (let a = 0; a < r; a++) {
    if (a !== AIR) wind += loading[a] * responses.mean[a];
    variance += 2 * loading[a] * responses.withCarries[i * r + a];
    for (let b = 0; b < r; b++) variance += loading[a] * loading[b] * responses.covariance[a * r + b];
  }
  const airLog = effect.airLog + loading[AIR] * responses.mean[AIR];
  const today = theta[i] + airLog + wind;
  const half = DEVIATE_80 * Math.sqrt(variance);
  const forecast = nextBall(cell, today, variance, mishits, model.scatter2, model.loose);
  const today_m = metres(Math.exp(today));
  const roll = expectedRoll(kind, loft_deg, today_m, ground);
  return {
    kind: 'number',
    clubId,
    specId,
    swing,
    standard_m: metres(Math.exp(theta[i])),
    today_m,
    lo80_m: metres(Math.exp(today - half)),
    hi80_m: metres(Math.exp(today + half)),
    next_m: forecastQuantiles(forecast).map(metres),
    air_m: metres(Math.exp(theta[i]) * Math.expm1(airLog)),
    wind_m: metres(Math.exp(theta[i] + airLog) * Math.expm1(wind)),
    roll_m: roll.roll_m,
    rollSd_m: roll.sd_m,
  };
}

/** Says so when the day's air is unlike that of every round and the shots do not tell how this golfer's ball takes it. */
function airUnknown({ counted, model }: FittedBook, density: number): string | null {
  const known = model.responses.covariance[AIR * RESPONSES.length + AIR] / PRIOR.airResponse ** 2 < UNKNOWN_SHARE;
  if (known || counted.length === 0) return null;
  const logs = [...new Set(counted.map(({ round }) => round))].flatMap(({ conditions }) => {
    const played = flightConditions(conditions, 'calm', null);
    return played.kind === 'conditions' ? [Math.log(density / played.density)] : [];
  });
  if (logs.length === 0 || logs.some((log) => Math.abs(log) < LIKE_AIR_LOG)) return null;
  const nearest = logs.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a));
  const size = (100 * Math.abs(Math.expm1(nearest))).toFixed(0);
  return (
    `This air is ${size} % ${nearest < 0 ? 'thinner' : 'denser'} than in any round of yours, and how far your ball ` +
    'answers to that is not known yet: it takes rounds in both. The ± allows for it.'
  );
}
