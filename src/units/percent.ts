import { type Quantity, quantity } from './quantity.ts';

/** A share in hundredths, 0 to 100. */
export type Percent = Quantity<'%'>;

/** A share in hundredths, 0 to 100. @throws RangeError when the figure is not finite. */
export function percent(value: number): Percent {
  return quantity<'%'>(value, '%');
}
