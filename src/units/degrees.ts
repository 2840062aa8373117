import { type Quantity, quantity } from './quantity.ts';

/** An angle in degrees. Lofts are measured from the vertical; bearings clockwise from true north. */
export type Degrees = Quantity<'°'>;

/** An angle in degrees. Lofts are measured from the vertical; bearings clockwise from true north. @throws RangeError when the figure is not finite. */
export function degrees(value: number): Degrees {
  return quantity<'°'>(value, '°');
}
