import { type Celsius, celsius } from '../units/celsius.ts';
import { type Hectopascals, hectopascals } from '../units/hectopascals.ts';
import type { Metres } from '../units/metres.ts';
import { type Percent, percent } from '../units/percent.ts';

/** The air as noted; null: not noted. Station pressure or altitude, never both. */
export interface Air {
  readonly temperature_C: Celsius | null;
  readonly humidity_pct: Percent | null;
  /** Pressure at the course itself, not reduced to sea level. */
  readonly pressure_hPa: Hectopascals | null;
  readonly altitude_m: Metres | null;
}

/** Temperature of standard conditions, also taken when none is noted. Convention of the trade for this book. */
export const STANDARD_TEMPERATURE = celsius(20);
/** Pressure of standard conditions, also taken when neither pressure nor altitude is noted. Source: ISO 2533, sea level. */
export const STANDARD_PRESSURE = hectopascals(1013.25);
/** Relative humidity of standard conditions, also taken when none is noted. */
export const STANDARD_HUMIDITY = percent(50);

/** Specific gas constant of dry air, J/(kg K). Source: ISO 2533 (287.053, rounded). */
const GAS_CONSTANT_DRY = 287.055;
/** Specific gas constant of water vapour, J/(kg K). Physical constant, from memory. */
const GAS_CONSTANT_VAPOUR = 461.5;
const ZERO_CELSIUS_K = 273.15;

/**
 * The station pressure usual at an altitude.
 *
 * Assumes the standard atmosphere's pressure, so a day's high or low (about ± 2 %) is not in it.
 *
 * @param altitude_m above mean sea level, −500 to 11,000 m.
 * @throws RangeError outside that range.
 * Source: ISO 2533, troposphere: p = 1013.25 (1 − 0.0065 h / 288.15)^5.25588.
 */
export function pressureAtAltitude(altitude_m: Metres): Hectopascals {
  if (!(altitude_m >= -500 && altitude_m <= 11_000)) {
    throw new RangeError(`altitude ${altitude_m} m is outside −500 to 11000 m`);
  }
  return hectopascals(1013.25 * (1 - (0.0065 * altitude_m) / 288.15) ** 5.25588);
}

/**
 * Vapour pressure of saturated air over water, Pa.
 * Source: Magnus formula with the coefficients of the WMO guide (WMO No. 8), from memory; within .5 % for −20 to 50 °C.
 */
function saturationPressure(temperature_C: number): number {
  return 611.2 * Math.exp((17.62 * temperature_C) / (243.12 + temperature_C));
}

/**
 * How heavy the air is, in kg/m³: what drag and lift are proportional to.
 *
 * Dry air and vapour as ideal gases: ρ = (p − e)/(287.055 T) + e/(461.5 T). What is not noted is taken
 * as in standard conditions (20 °C, 1013.25 hPa, 50 %). Within .1 % of CIPM-2007 in golf weather.
 *
 * @param air temperature −60 to 60 °C, humidity 0 to 100 %, station pressure 200 to 1100 hPa or
 *   altitude −500 to 11,000 m.
 * @throws RangeError when both pressure and altitude are given, or a figure is out of range.
 * Source: ISO 2533 for altitude; ideal gas law; checked against Picard et al. 2008 (CIPM-2007).
 */
export function airDensity(air: Air): number {
  if (air.pressure_hPa !== null && air.altitude_m !== null) {
    throw new RangeError(
      `pressure ${air.pressure_hPa} hPa and altitude ${air.altitude_m} m: give one, the other is in it already`,
    );
  }
  const temperature = air.temperature_C ?? STANDARD_TEMPERATURE;
  const humidity = air.humidity_pct ?? STANDARD_HUMIDITY;
  if (!(temperature >= -60 && temperature <= 60)) {
    throw new RangeError(`temperature ${temperature} °C is outside −60 to 60 °C`);
  }
  if (!(humidity >= 0 && humidity <= 100)) throw new RangeError(`humidity ${humidity} % is outside 0 to 100 %`);
  const pressure =
    air.altitude_m === null ? (air.pressure_hPa ?? STANDARD_PRESSURE) : pressureAtAltitude(air.altitude_m);
  if (!(pressure >= 200 && pressure <= 1100))
    throw new RangeError(`pressure ${pressure} hPa is outside 200 to 1100 hPa`);
  const kelvin = temperature + ZERO_CELSIUS_K;
  const vapour = (humidity / 100) * saturationPressure(temperature);
  return (pressure * 100 - vapour) / (GAS_CONSTANT_DRY * kelvin) + vapour / (GAS_CONSTANT_VAPOUR * kelvin);
}

/** Density of the air in standard conditions, kg/m³ (about 1.199). */
export const STANDARD_DENSITY = airDensity({
  temperature_C: null,
  humidity_pct: null,
  pressure_hPa: null,
  altitude_m: null,
});
