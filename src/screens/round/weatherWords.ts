import { pointOfBearing } from '../../golf/compass.ts';
import type { Conditions } from '../../golf/conditions.ts';
import { forceOfMiddle } from '../../golf/windForce.ts';
import { fahrenheitFromCelsius } from '../../units/fahrenheit.ts';
import type { MetresPerSecond } from '../../units/metresPerSecond.ts';
import { type WindUnit, windText } from '../windSpeed.ts';
import { roundWords } from '../words/round.ts';
import type { ShownUnits } from './shownUnits.ts';

const { weather, start } = roundWords;

/** How strong the wind is: by the force the golfer chose, with the speed that stands for, or by the speed told. */
function strength(speed: MetresPerSecond, unit: WindUnit): string {
  const force = forceOfMiddle(speed);
  const text = windText(speed, unit);
  return force === null ? text : weather.force(start.forces[force], text);
}

/**
 * The conditions as the golfer noted them, in a few words and in the golfer's own units: `48 °F · W wind, 12 mph ·
 * firm`; empty when nothing was.
 */
export function weatherWords(
  conditions: Conditions,
  { temperature, windSpeed }: Pick<ShownUnits, 'temperature' | 'windSpeed'>,
): string {
  const { temperature_C: warmth, windFrom_deg: from, wind_mps: speed, ground } = conditions;
  const degrees = warmth === null || temperature === '°C' ? warmth : fahrenheitFromCelsius(warmth);
  const parts = [
    degrees === null ? '' : `${Math.round(degrees)}\u00a0${temperature}`.replace('-', '\u2212'),
    speed === null
      ? ''
      : speed === 0
        ? weather.noWind
        : weather.wind(from === null ? null : pointOfBearing(from), strength(speed, windSpeed)),
    weather.ground[ground],
  ];
  return parts.filter((part) => part !== '').join(' · ');
}
