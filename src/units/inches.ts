import { type Metres, metres } from './metres.ts';
import { type Quantity, quantity } from './quantity.ts';

/** A length in international inches: how a club's length is told everywhere. Only the edges of the program speak it. */
export type Inches = Quantity<'in'>;

/** Metres in one inch, exact. Source: International yard and pound agreement, 1959. */
const METRES_PER_INCH = 0.0254;

/** A length in inches. @throws RangeError when the figure is not finite. */
export function inches(value: number): Inches {
  return quantity<'in'>(value, 'in');
}

/** The same length in inches, sign kept. Source: International yard and pound agreement, 1959. */
export function inchesFromMetres(length: Metres): Inches {
  return inches(length / METRES_PER_INCH);
}

/** The same length in metres, sign kept. Source: International yard and pound agreement, 1959. */
export function metresFromInches(length: Inches): Metres {
  return metres(length * METRES_PER_INCH);
}
