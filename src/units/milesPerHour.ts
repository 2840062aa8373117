import { type MetresPerSecond, metresPerSecond } from './metresPerSecond.ts';
import { type Quantity, quantity } from './quantity.ts';

/** A speed in statute miles per hour. Only the edges of the program speak it. */
export type MilesPerHour = Quantity<'mph'>;

/** Metres per second in one mile per hour: 1760 yd of 0.9144 m in 3600 s, exact. */
const MPS_PER_MPH = (1760 * 0.9144) / 3600;

/** A speed in mph. @throws RangeError when the figure is not finite. */
export function milesPerHour(value: number): MilesPerHour {
  return quantity<'mph'>(value, 'mph');
}

/** The same speed in mph, sign kept. */
export function milesPerHourFromMetresPerSecond(speed: MetresPerSecond): MilesPerHour {
  return milesPerHour(speed / MPS_PER_MPH);
}

/** The same speed in m/s, sign kept. */
export function metresPerSecondFromMilesPerHour(speed: MilesPerHour): MetresPerSecond {
  return metresPerSecond(speed * MPS_PER_MPH);
}
