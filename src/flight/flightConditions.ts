import type { Conditions } from '../golf/conditions.ts';
import type { Shot } from '../golf/shot.ts';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import type { MetresPerSecond } from '../units/metresPerSecond.ts';
import { airDensity } from './air.ts';
import { CALM, type Wind, windFromBearings, windFromClock } from './wind.ts';

/** What is known of the wind on a shot: its components, or only how strong it was. */
export type ShotWind =
  | { readonly kind: 'known'; readonly wind: Wind }
  | { readonly kind: 'direction unknown'; readonly mps: MetresPerSecond; readonly reference_m: Metres };

/** What was not noted and is taken as in standard conditions. */
export type Assumed = 'temperature' | 'pressure' | 'humidity' | 'wind';

/** The air and wind that one shot flew through. */
export interface FlightConditions {
  readonly kind: 'conditions';
  /** kg/m³. */
  readonly density: number;
  readonly wind: ShotWind;
  readonly assumed: readonly Assumed[];
}

/** The conditions as noted contradict themselves. */
export interface Refused {
  readonly kind: 'refused';
  readonly why: string;
}

function windOf(round: Conditions, shot: Shot['wind'], bearing: Degrees | null, assumed: Assumed[]): ShotWind {
  if (shot === 'calm') return { kind: 'known', wind: CALM };
  if (shot) return { kind: 'known', wind: windFromClock(shot.from_clock, shot.mps, shot.reference_m) };
  if (round.wind_mps === null) {
    assumed.push('wind');
    return { kind: 'known', wind: CALM };
  }
  if (round.wind_mps === 0) return { kind: 'known', wind: CALM };
  if (round.windFrom_deg === null || bearing === null) {
    return { kind: 'direction unknown', mps: round.wind_mps, reference_m: round.windReference_m };
  }
  return {
    kind: 'known',
    wind: windFromBearings(round.windFrom_deg, bearing, round.wind_mps, round.windReference_m),
  };
}

/**
 * The air and wind a shot flew through, from what the round and the shot say.
 *
 * A wind noted on the shot counts before the round's. What nobody noted is taken as in standard
 * conditions and named in `assumed`. A round's wind whose direction against the shot is not known stays
 * "direction unknown": it moves no number but makes it less sure.
 *
 * @param round the round's conditions.
 * @param shotWind the shot's own wind; null: not noted.
 * @param bearing_deg the bearing the shot was played along, clockwise from north; null: not known.
 * @returns `refused` when both pressure and altitude are noted: one holds the other already.
 * @throws RangeError when a figure is outside its range (the schema keeps them inside).
 */
export function flightConditions(
  round: Conditions,
  shotWind: Shot['wind'],
  bearing_deg: Degrees | null,
): FlightConditions | Refused {
  if (round.pressure_hPa !== null && round.altitude_m !== null) {
    return {
      kind: 'refused',
      why: `pressure ${round.pressure_hPa} hPa and altitude ${round.altitude_m} m are both noted: keep one, it holds the other`,
    };
  }
  const assumed: Assumed[] = [];
  if (round.temperature_C === null) assumed.push('temperature');
  if (round.pressure_hPa === null && round.altitude_m === null) assumed.push('pressure');
  if (round.humidity_pct === null) assumed.push('humidity');
  const density = airDensity(round);
  return { kind: 'conditions', density, wind: windOf(round, shotWind, bearing_deg, assumed), assumed };
}
