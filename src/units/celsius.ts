import { type Quantity, quantity } from './quantity.ts';

/** A temperature in degrees Celsius. */
export type Celsius = Quantity<'°C'>;

/** A temperature in degrees Celsius. @throws RangeError when the figure is not finite. */
export function celsius(value: number): Celsius {
  return quantity<'°C'>(value, '°C');
}
