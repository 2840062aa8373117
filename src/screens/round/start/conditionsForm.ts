import { bearingOfClock, bearingOfPoint, type CompassPoint, pointOfBearing } from '../../../golf/compass.ts';
import type { Conditions } from '../../../golf/conditions.ts';
import {
  FORCE_REFERENCE_M,
  forceOfMiddle,
  forceOfSpeed,
  speedOfForce,
  type WindForce,
} from '../../../golf/windForce.ts';
import { celsius } from '../../../units/celsius.ts';
import { type Degrees, degrees } from '../../../units/degrees.ts';
import { celsiusFromFahrenheit, fahrenheit, fahrenheitFromCelsius } from '../../../units/fahrenheit.ts';
import { hectopascals } from '../../../units/hectopascals.ts';
import { type Metres, metres } from '../../../units/metres.ts';
import { metresPerSecond } from '../../../units/metresPerSecond.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../../units/yards.ts';
import { spokenWind, windFigure } from '../../windSpeed.ts';
import type { ShownUnits } from '../shownUnits.ts';
import { typedNumber } from './typedNumber.ts';

/** How the golfer tells the wind: not at all, that there is none, by the compass, or by the clock on the first hole. */
export type WindTold = 'open' | 'none' | 'compass' | 'clock';

/** What stands in the fields of a day's conditions; a field left empty is text without a character. */
export interface ConditionsForm {
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
  /** The speed of the wind as a figure, which goes before the force; empty: by its force. */
  readonly windSpeed: string;
  readonly ground: Conditions['ground'];
}

/** The fields of it that hold a number. */
export const conditionNumbers = ['temperature', 'altitude', 'pressure', 'windSpeed'] as const;
export type ConditionNumber = (typeof conditionNumbers)[number];

/** What the form says, or the field that holds something else than a number. */
export type ConditionsRead =
  | {
      readonly kind: 'ok';
      readonly conditions: Conditions;
      /** Bearing of the first hole, when the golfer told it; null: not told. */
      readonly bearing_deg: Degrees | null;
    }
  | { readonly kind: 'wrong'; readonly field: ConditionNumber };

/** Feet in a yard, exact: heights above the sea are told in feet where lengths are told in yards. */
const FEET_PER_YARD = 3;

/** How strong a wind is when nothing is remembered: flags extend. */
const USUAL_FORCE: WindForce = 3;

function heightText(altitude: Metres, unit: ShownUnits['distance']): string {
  return String(Math.round(unit === 'yards' ? yardsFromMetres(altitude) * FEET_PER_YARD : altitude));
}

function windTold({ wind_mps, windFrom_deg }: Conditions): WindTold {
  if (wind_mps === null) return 'open';
  if (wind_mps === 0) return 'none';
  return windFrom_deg === null ? 'open' : 'compass';
}

/** The fields as conditions noted before fill them. */
export function conditionsFormOf(conditions: Conditions, units: ShownUnits): ConditionsForm {
  const { temperature_C, altitude_m, pressure_hPa, windFrom_deg, wind_mps, ground } = conditions;
  const force = wind_mps === null ? null : forceOfMiddle(wind_mps);
  const shown =
    temperature_C === null || units.temperature === '°C' ? temperature_C : fahrenheitFromCelsius(temperature_C);
  return {
    temperature: shown === null ? '' : String(Math.round(shown)),
    altitude: altitude_m === null ? '' : heightText(altitude_m, units.distance),
    pressure: pressure_hPa === null ? '' : String(pressure_hPa),
    wind: windTold(conditions),
    windFrom: windFrom_deg === null ? 'W' : pointOfBearing(windFrom_deg),
    windClock: '12',
    heading: 'N',
    force: (wind_mps === null ? null : forceOfSpeed(wind_mps)) ?? USUAL_FORCE,
    windSpeed:
      wind_mps === null || wind_mps === 0 || force !== null ? '' : String(windFigure(wind_mps, units.windSpeed)),
    ground,
  };
}

type Numbers = Readonly<Record<ConditionNumber, number | null>>;

function windOf(
  form: ConditionsForm,
  figure: number | null,
  units: ShownUnits,
): Pick<Conditions, 'windFrom_deg' | 'wind_mps' | 'windReference_m'> {
  const windReference_m = metres(FORCE_REFERENCE_M);
  if (form.wind === 'open') return { windFrom_deg: null, wind_mps: null, windReference_m };
  if (form.wind === 'none') return { windFrom_deg: null, wind_mps: metresPerSecond(0), windReference_m };
  const windFrom_deg =
    form.wind === 'compass'
      ? bearingOfPoint(form.windFrom)
      : bearingOfClock(Number(form.windClock), bearingOfPoint(form.heading));
  const wind_mps = figure === null ? speedOfForce(form.force) : spokenWind(figure, units.windSpeed);
  return { windFrom_deg, wind_mps, windReference_m };
}

/**
 * Reads the fields. A speed told as a figure belongs to 10 m above the ground, as in a forecast; whether a number is one
 * that a round may hold is for the action to say.
 */
export function readConditions(form: ConditionsForm, units: ShownUnits): ConditionsRead {
  const numbers: Record<ConditionNumber, number | null> = {
    temperature: null,
    altitude: null,
    pressure: null,
    windSpeed: null,
  };
  for (const field of conditionNumbers) {
    const number = typedNumber(form[field]);
    if (number === 'wrong') return { kind: 'wrong', field };
    numbers[field] = number;
  }
  return {
    kind: 'ok',
    conditions: conditionsOf(form, numbers, units),
    bearing_deg: form.wind === 'clock' ? degrees(bearingOfPoint(form.heading)) : null,
  };
}

function conditionsOf(form: ConditionsForm, numbers: Numbers, units: ShownUnits): Conditions {
  const { temperature, altitude, pressure } = numbers;
  return {
    temperature_C:
      temperature === null
        ? null
        : units.temperature === '°C'
          ? celsius(temperature)
          : celsiusFromFahrenheit(fahrenheit(temperature)),
    altitude_m:
      altitude === null
        ? null
        : units.distance === 'yards'
          ? metresFromYards(yards(altitude / FEET_PER_YARD))
          : metres(altitude),
    pressure_hPa: pressure === null ? null : hectopascals(pressure),
    humidity_pct: null,
    ...windOf(form, numbers.windSpeed, units),
    ground: form.ground,
  };
}
