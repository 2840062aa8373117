import { type Quantity, quantity } from './quantity.ts';

/** A span of time in days of 86,400 s. */
export type Days = Quantity<'d'>;

/** A span of time in days of 86,400 s. @throws RangeError when the figure is not finite. */
export function days(value: number): Days {
  return quantity<'d'>(value, 'd');
}
