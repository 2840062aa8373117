import type { DistanceUnit } from '../distance.ts';

/** The units that a round is shown and typed in. */
export interface ShownUnits {
  readonly distance: DistanceUnit;
  readonly temperature: '°F' | '°C';
}
