import { airDensity, pressureAtAltitude } from '../../../src/flight/air.ts';
import { FORECAST_HEIGHT, type Wind, windFromBearings } from '../../../src/flight/wind.ts';
import { bearingOfPoint, pointOfBearing } from '../../../src/golf/compass.ts';
import { FORCE_REFERENCE_M, forceOfSpeed, speedOfForce } from '../../../src/golf/windForce.ts';
import { celsius } from '../../../src/units/celsius.ts';
import { type Degrees, degrees } from '../../../src/units/degrees.ts';
import { hectopascals } from '../../../src/units/hectopascals.ts';
import { metres } from '../../../src/units/metres.ts';
import { metresPerSecond } from '../../../src/units/metresPerSecond.ts';
import { percent } from '../../../src/units/percent.ts';
import type { RandomNumbers } from '../randomNumbers.ts';
import type { Outing } from '../season.ts';
import type { Setting } from './settings.ts';

/** How well wind is seen and how unsteady it is; one standard deviation each. */
export interface Seeing {
  /** Judged strength over true, ln: the golfer's own for good, and of one look. */
  readonly bias: number;
  readonly look: number;
  /** Where it comes from, degrees, before that is rounded. */
  readonly direction_deg: number;
  /** Wind of one shot, over its whole flight, against the round's: strength, ln, and veering, degrees. */
  readonly gusts: number;
  readonly veering_deg: number;
  /** A shot's line against its hole's bearing: doglegs and corners cut, degrees. */
  readonly offTheBearing_deg: number;
}

/** How much the air's pressure differs day by day, hPa. */
const PRESSURE_SD_hPa = 8;
const HOLES = 18;

/** How a golfer notes wind: one look before the round and bearings on the holes, or the clock on each shot. */
export interface Eye {
  readonly notes: 'the round' | 'each shot';
  /** ln of judged strength over true. */
  readonly bias: number;
  readonly seeing: Seeing;
}

export function drawEye(seeing: Seeing, numbers: RandomNumbers): Eye {
  return {
    notes: numbers.chance(0.5) ? 'the round' : 'each shot',
    bias: numbers.normal(0, seeing.bias),
    seeing,
  };
}

export interface TrueHole {
  readonly bearing_deg: number;
  readonly risePerMetre: number;
}

/** The weather and course of one outing as they truly were. */
export interface OutingWeather {
  readonly temperature_C: number;
  readonly density: number;
  readonly wind_mps: number;
  readonly windFrom_deg: number;
  readonly roughness_m: number;
  readonly holes: readonly TrueHole[];
}

/** What is written down of an outing. */
export interface NotedWeather {
  readonly temperature_C: number;
  readonly altitude_m: number;
  readonly windFrom_deg: number | null;
  readonly wind_mps: number | null;
  readonly windReference_m: number;
}

/** The wind on one shot as it truly was, and as it was called. */
export interface ShotWeather {
  readonly wind: Wind;
  readonly called: 'calm' | { readonly from_clock: number; readonly mps: number; readonly reference_m: number };
}

const turned = (bearing_deg: number) => degrees(((bearing_deg % 360) + 360) % 360);

/** A cold spring, a warm summer: the mean of the day, °C. */
function meanOfTheDay(date: string): number {
  const day = (Date.parse(date) - Date.parse(`${date.slice(0, 4)}-01-01`)) / 86_400_000;
  return 14 - 9 * Math.cos((2 * Math.PI * (day - 20)) / 365);
}

export function drawOutingWeather(
  setting: Setting,
  altitude_m: number,
  outing: Outing,
  numbers: RandomNumbers,
): OutingWeather {
  const { temperature_C: usual, wind_mps: wind } = setting;
  const temperature_C =
    usual === 'course of the year' ? meanOfTheDay(outing.date) + numbers.normal(0, 4) : numbers.normal(...usual);
  const pressure = pressureAtAltitude(metres(altitude_m)) + numbers.normal(0, PRESSURE_SD_hPa);
  const density = airDensity({
    temperature_C: celsius(temperature_C),
    humidity_pct: percent(numbers.between(35, 95)),
    pressure_hPa: hectopascals(pressure),
    altitude_m: null,
  });
  return {
    temperature_C,
    density,
    wind_mps: Math.min(wind[3], Math.max(wind[2], numbers.normal(wind[0], wind[1]))),
    windFrom_deg: numbers.between(0, 360),
    roughness_m: Math.exp(numbers.between(Math.log(0.015), Math.log(0.06))),
    holes: Array.from({ length: HOLES }, () => ({
      bearing_deg: numbers.between(0, 360),
      risePerMetre: outing.practice ? 0 : numbers.normal(0, setting.rise.sd),
    })),
  };
}

/** What the golfer's eye makes of a wind: the middle of a force of the Beaufort scale; 0 for less than a light breeze. */
function judged(mps: number, eye: Eye, numbers: RandomNumbers): number {
  const force = forceOfSpeed(metresPerSecond(mps * Math.exp(eye.bias + numbers.normal(0, eye.seeing.look))));
  return force === null ? 0 : speedOfForce(force);
}

/** The outing as noted: whole °C, altitude to 50 m, the wind's force and point of the compass. */
export function noteOuting(weather: OutingWeather, altitude_m: number, eye: Eye, numbers: RandomNumbers): NotedWeather {
  const seen_deg = weather.windFrom_deg + numbers.normal(0, eye.seeing.direction_deg);
  const wind_mps = judged(weather.wind_mps, eye, numbers);
  const round = eye.notes === 'the round';
  return {
    temperature_C: Math.round(weather.temperature_C + numbers.normal(0, 1)),
    altitude_m: Math.round(altitude_m / 50) * 50,
    windFrom_deg: round ? bearingOfPoint(pointOfBearing(degrees(seen_deg))) : null,
    wind_mps: round ? wind_mps : null,
    windReference_m: FORCE_REFERENCE_M,
  };
}

/** A hole's bearing as noted: from the map, to 10°. */
export function noteBearing(hole: TrueHole): Degrees {
  return turned(Math.round(hole.bearing_deg / 10) * 10);
}

/** The wind on one shot, and how a golfer who notes it shot by shot calls it: by the hour of the clock. */
export function drawShotWeather(weather: OutingWeather, hole: TrueHole, eye: Eye, numbers: RandomNumbers): ShotWeather {
  const { seeing } = eye;
  const mps = weather.wind_mps * Math.exp(numbers.normal(-0.5 * seeing.gusts ** 2, seeing.gusts));
  const from_deg = weather.windFrom_deg + numbers.normal(0, seeing.veering_deg);
  const bearing_deg = hole.bearing_deg + numbers.normal(0, seeing.offTheBearing_deg);
  const true_wind = windFromBearings(degrees(from_deg), degrees(bearing_deg), metresPerSecond(mps), FORECAST_HEIGHT);
  const seen_deg = from_deg - bearing_deg + numbers.normal(0, eye.seeing.direction_deg);
  const called_mps = judged(mps, eye, numbers);
  return {
    wind: { ...true_wind, roughness_m: metres(weather.roughness_m) },
    called:
      called_mps === 0
        ? 'calm'
        : { from_clock: Math.round(turned(seen_deg) / 30) % 12, mps: called_mps, reference_m: FORCE_REFERENCE_M },
  };
}
