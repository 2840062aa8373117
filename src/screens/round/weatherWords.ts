import { pointOfBearing } from '../../golf/compass.ts';
import type { Conditions } from '../../golf/conditions.ts';
import { forceOfSpeed } from '../../golf/windForce.ts';
import type { Settings } from '../../logbook/settings.ts';
import { fahrenheitFromCelsius } from '../../units/fahrenheit.ts';
import { roundWords } from '../words/round.ts';

const { weather, start } = roundWords;

/** The conditions as the golfer noted them, in a few words: `48 °F · wind from W, flags extend · firm`; empty when nothing was. */
export function weatherWords(conditions: Conditions, temperature: Settings['temperature']): string {
  const { temperature_C: warmth, windFrom_deg: from, wind_mps: speed, ground } = conditions;
  const force = speed === null ? null : forceOfSpeed(speed);
  const degrees = warmth === null || temperature === '°C' ? warmth : fahrenheitFromCelsius(warmth);
  const parts = [
    degrees === null ? '' : `${Math.round(degrees)}\u00a0${temperature}`.replace('-', '\u2212'),
    speed === null
      ? ''
      : force === null
        ? weather.noWind
        : weather.wind(from === null ? null : pointOfBearing(from), start.forces[force]),
    weather.ground[ground],
  ];
  return parts.filter((part) => part !== '').join(' · ');
}
