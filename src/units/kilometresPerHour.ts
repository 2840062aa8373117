import { type MetresPerSecond, metresPerSecond } from './metresPerSecond.ts';
import { type Quantity, quantity } from './quantity.ts';

/** A speed in kilometres per hour. Only the edges of the program speak it. */
export type KilometresPerHour = Quantity<'km/h'>;

/** Kilometres per hour in one metre per second: 3600 s by 1000 m, exact. */
const KMH_PER_MPS = 3.6;

/** A speed in km/h. @throws RangeError when the figure is not finite. */
export function kilometresPerHour(value: number): KilometresPerHour {
  return quantity<'km/h'>(value, 'km/h');
}

/** The same speed in km/h, sign kept. */
export function kilometresPerHourFromMetresPerSecond(speed: MetresPerSecond): KilometresPerHour {
  return kilometresPerHour(speed * KMH_PER_MPS);
}

/** The same speed in m/s, sign kept. */
export function metresPerSecondFromKilometresPerHour(speed: KilometresPerHour): MetresPerSecond {
  return metresPerSecond(speed / KMH_PER_MPS);
}
