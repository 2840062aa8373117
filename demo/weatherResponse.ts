import type { ClubKind } from '../src/golf/club.ts';
import type { Weather } from './seasonPlan.ts';

/** Share of carry lost per kelvin below 20 °C, air and ball together: 1 % per 5 °C. Common practice, no source. */
const LOSS_PER_KELVIN = 0.002;
/** Share of carry won per metre of height: about 1.5 % per 1,000 ft. Common practice, no source. */
const GAIN_PER_METRE = 0.00005;
/** Share of carry lost per mile per hour of wind against. Common practice, no source. */
const LOSS_PER_MPH_INTO = 0.01;
/** Share of carry won per mile per hour of wind behind. Common practice, no source. */
const GAIN_PER_MPH_DOWN = 0.006;
/** Miles per hour in one m/s. Source: mile of 1,609.344 m, exact. */
const MPH_PER_MPS = 3600 / 1609.344;

/** How much of the wind a lower flight feels. Invented for the demo. */
const WIND_SHARE: Readonly<Record<string, number>> = { full: 1, '10:30': 0.85, '9:00': 0.7, '7:30': 0.55 };

/** A driver's low flight feels less of it as well, woods a little less. Invented. */
const KIND_SHARE: Readonly<Partial<Record<ClubKind, number>>> = {
  driver: 0.72,
  'fairway wood': 0.82,
  'driving iron': 0.85,
};

/** Wind of this moment on a shot: its strength at 10 m and the bearing it comes from. */
export interface Gust {
  readonly mps: number;
  readonly from_deg: number;
}

/** The gust's part against a ball played on a bearing, m/s; negative when it helps. */
export function against(gust: Gust, bearing_deg: number): number {
  return gust.mps * Math.cos(((gust.from_deg - bearing_deg) * Math.PI) / 180);
}

/** The gust's part that pushes the ball to the right, m/s. */
export function pushesRight(gust: Gust, bearing_deg: number): number {
  return -gust.mps * Math.sin(((gust.from_deg - bearing_deg) * Math.PI) / 180);
}

/**
 * What the weather makes of a carry in standard conditions: a factor, 1 in still air of 20 °C at sea level.
 * On purpose a rule of thumb and not the flight model of src/flight, so that the demo tests it from outside.
 */
export function weatherFactor(
  weather: Weather,
  gust: Gust,
  bearing_deg: number,
  swing: string,
  kind: ClubKind,
): number {
  const air = 1 + LOSS_PER_KELVIN * Math.min(10, weather.temperature_C - 20) + GAIN_PER_METRE * weather.altitude_m;
  const head_mph = against(gust, bearing_deg) * MPH_PER_MPS;
  const share = head_mph * (WIND_SHARE[swing] ?? 1) * (KIND_SHARE[kind] ?? 1);
  const wind = 1 - (share > 0 ? LOSS_PER_MPH_INTO : GAIN_PER_MPH_DOWN) * share;
  return air * wind;
}
