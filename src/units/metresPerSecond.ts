import { type Quantity, quantity } from './quantity.ts';

/** A speed in metres per second (SI). */
export type MetresPerSecond = Quantity<'m/s'>;

/** A speed in metres per second (SI). @throws RangeError when the figure is not finite. */
export function metresPerSecond(value: number): MetresPerSecond {
  return quantity<'m/s'>(value, 'm/s');
}
