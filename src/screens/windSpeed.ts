import type { Settings } from '../logbook/settings.ts';
import {
  kilometresPerHour,
  kilometresPerHourFromMetresPerSecond,
  metresPerSecondFromKilometresPerHour,
} from '../units/kilometresPerHour.ts';
import { type MetresPerSecond, metresPerSecond } from '../units/metresPerSecond.ts';
import {
  metresPerSecondFromMilesPerHour,
  milesPerHour,
  milesPerHourFromMetresPerSecond,
} from '../units/milesPerHour.ts';

/** The units that a golfer may have the wind told in. */
export type WindUnit = Settings['windSpeed'];

/** A wind speed as it is told in a unit. @throws RangeError when the figure is not finite. */
export function spokenWind(figure: number, unit: WindUnit): MetresPerSecond {
  if (unit === 'mph') return metresPerSecondFromMilesPerHour(milesPerHour(figure));
  return unit === 'km/h' ? metresPerSecondFromKilometresPerHour(kilometresPerHour(figure)) : metresPerSecond(figure);
}

/** The figure of a wind speed in a unit, to the tenth. */
export function windFigure(speed: MetresPerSecond, unit: WindUnit): number {
  const figure =
    unit === 'mph'
      ? milesPerHourFromMetresPerSecond(speed)
      : unit === 'km/h'
        ? kilometresPerHourFromMetresPerSecond(speed)
        : speed;
  return Math.round(figure * 10) / 10;
}

/** A wind speed with its unit, whole: `12 mph`. In m/s, the coarsest of the three units, to the half. */
export function windText(speed: MetresPerSecond, unit: WindUnit): string {
  const figure = windFigure(speed, unit);
  return `${unit === 'm/s' ? Math.round(figure * 2) / 2 : Math.round(figure)}\u00a0${unit}`;
}
