import { bearingOfClock, bearingOfPoint, type CompassPoint, pointOfBearing } from '../../../golf/compass.ts';
import type { Conditions } from '../../../golf/conditions.ts';
import { HOLE_LIMIT } from '../../../golf/hole.ts';
import type { RoundStart } from '../../../golf/newRound.ts';
import type { Ball, Play } from '../../../golf/round.ts';
import { FORCE_REFERENCE_M, forceOfSpeed, speedOfForce, type WindForce } from '../../../golf/windForce.ts';
import { celsius } from '../../../units/celsius.ts';
import { type Degrees, degrees } from '../../../units/degrees.ts';
import { celsiusFromFahrenheit, fahrenheit, fahrenheitFromCelsius } from '../../../units/fahrenheit.ts';
import { hectopascals } from '../../../units/hectopascals.ts';
import { type Metres, metres } from '../../../units/metres.ts';
import { metresPerSecond } from '../../../units/metresPerSecond.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../../units/yards.ts';
import type { ShownUnits } from '../shownUnits.ts';

/** How the golfer tells the wind: not at all, that there is none, by the compass, or by the clock on the first hole. */
export type WindTold = 'open' | 'none' | 'compass' | 'clock';

/** What stands in the form that a round starts from; a field left empty is text without a character. */
export interface StartForm {
  readonly course: string;
  readonly tees: string;
  readonly holes: '9' | '18';
  readonly startHole: string;
  readonly play: Play;
  readonly ball: Ball;
  readonly distanceDevices: boolean;
  readonly temperature: string;
  readonly altitude: string;
  readonly pressure: string;
  readonly wind: WindTold;
  readonly windFrom: CompassPoint;
  /** The hour of the clock the wind comes from, 1 to 12. */
  readonly windClock: string;
  /** Where the first hole is played towards, for a wind told by the clock. */
  readonly heading: CompassPoint;
  readonly force: WindForce;
  readonly ground: Conditions['ground'];
}

/** The fields that hold a number. */
export type NumberField = 'startHole' | 'temperature' | 'altitude' | 'pressure';

/** What the form says, or the field that holds something else than a number. */
export type StartRead =
  | {
      readonly kind: 'ok';
      readonly start: RoundStart;
      /** Bearing of the first hole, when the golfer told it; null: not told. */
      readonly bearing_deg: Degrees | null;
    }
  | { readonly kind: 'wrong'; readonly field: NumberField };

/** Feet in a yard, exact: heights above the sea are told in feet where lengths are told in yards. */
const FEET_PER_YARD = 3;

/** How strong a wind is when nothing is remembered: flags extend. */
const USUAL_FORCE: WindForce = 3;

/** A number as typed, with a comma or a point; null: nothing typed; NaN never: `wrong` instead. */
function typedNumber(text: string): number | null | 'wrong' {
  const trimmed = text.trim().replace('\u2212', '-').replace(',', '.');
  if (trimmed === '') return null;
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : 'wrong';
}

function isHole(number: number): boolean {
  return Number.isInteger(number) && number >= 1 && number <= HOLE_LIMIT;
}

function heightText(altitude: Metres, unit: ShownUnits['distance']): string {
  return String(Math.round(unit === 'yards' ? yardsFromMetres(altitude) * FEET_PER_YARD : altitude));
}

/** The form as it stands when a round begins, with what is remembered of the last one. */
export function startFormOf(start: RoundStart, units: ShownUnits): StartForm {
  const { temperature_C, altitude_m, pressure_hPa, windFrom_deg, wind_mps, ground } = start.conditions;
  const force = wind_mps === null ? null : forceOfSpeed(wind_mps);
  const shown =
    temperature_C === null || units.temperature === '°C' ? temperature_C : fahrenheitFromCelsius(temperature_C);
  return {
    course: start.course,
    tees: start.tees,
    holes: start.holes === 9 ? '9' : '18',
    startHole: String(start.startHole),
    play: start.play,
    ball: start.ball,
    distanceDevices: start.distanceDevices,
    temperature: shown === null ? '' : String(Math.round(shown)),
    altitude: altitude_m === null ? '' : heightText(altitude_m, units.distance),
    pressure: pressure_hPa === null ? '' : String(pressure_hPa),
    wind: wind_mps === null ? 'open' : force === null ? 'none' : windFrom_deg === null ? 'open' : 'compass',
    windFrom: windFrom_deg === null ? 'W' : pointOfBearing(windFrom_deg),
    windClock: '12',
    heading: 'N',
    force: force ?? USUAL_FORCE,
    ground,
  };
}

function windOf(form: StartForm): Pick<Conditions, 'windFrom_deg' | 'wind_mps' | 'windReference_m'> {
  const windReference_m = metres(FORCE_REFERENCE_M);
  if (form.wind === 'open') return { windFrom_deg: null, wind_mps: null, windReference_m };
  if (form.wind === 'none') return { windFrom_deg: null, wind_mps: metresPerSecond(0), windReference_m };
  const windFrom_deg =
    form.wind === 'compass'
      ? bearingOfPoint(form.windFrom)
      : bearingOfClock(Number(form.windClock), bearingOfPoint(form.heading));
  return { windFrom_deg, wind_mps: speedOfForce(form.force), windReference_m };
}

/** Reads the form. Whether a number is one that a round may hold is for the action to say. */
export function readStart(form: StartForm, units: ShownUnits): StartRead {
  const numbers = { startHole: 1, temperature: 0, altitude: 0, pressure: 0 };
  const noted = { startHole: true, temperature: true, altitude: true, pressure: true };
  for (const field of ['startHole', 'temperature', 'altitude', 'pressure'] as const) {
    const number = typedNumber(form[field]);
    if (number === 'wrong' || (field === 'startHole' && !isHole(number ?? 1))) return { kind: 'wrong', field };
    noted[field] = number !== null;
    numbers[field] = number ?? numbers[field];
  }
  const { temperature, altitude } = numbers;
  const conditions: Conditions = {
    temperature_C: !noted.temperature
      ? null
      : units.temperature === '°C'
        ? celsius(temperature)
        : celsiusFromFahrenheit(fahrenheit(temperature)),
    altitude_m: !noted.altitude
      ? null
      : units.distance === 'yards'
        ? metresFromYards(yards(altitude / FEET_PER_YARD))
        : metres(altitude),
    pressure_hPa: noted.pressure ? hectopascals(numbers.pressure) : null,
    humidity_pct: null,
    ...windOf(form),
    ground: form.ground,
  };
  return {
    kind: 'ok',
    start: {
      course: form.course.trim(),
      tees: form.tees.trim(),
      holes: form.holes === '9' ? 9 : 18,
      startHole: numbers.startHole,
      play: form.play,
      ball: form.play === 'practice ground' ? form.ball : 'own',
      distanceDevices: form.distanceDevices,
      conditions,
    },
    bearing_deg: form.wind === 'clock' ? degrees(bearingOfPoint(form.heading)) : null,
  };
}
