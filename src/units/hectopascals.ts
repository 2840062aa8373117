import { type Quantity, quantity } from './quantity.ts';

/** An air pressure in hectopascals, as a weather service gives it (1 hPa = 100 Pa). */
export type Hectopascals = Quantity<'hPa'>;

/** An air pressure in hectopascals, as a weather service gives it (1 hPa = 100 Pa). @throws RangeError when the figure is not finite. */
export function hectopascals(value: number): Hectopascals {
  return quantity<'hPa'>(value, 'hPa');
}
