import type { DistanceUnit } from '../distance.ts';
import type { WindUnit } from '../windSpeed.ts';

/** The units that a round is shown and typed in. */
export interface ShownUnits {
  readonly distance: DistanceUnit;
  readonly temperature: '°F' | '°C';
  readonly windSpeed: WindUnit;
}
