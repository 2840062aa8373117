import { type Metres, metres } from './metres.ts';
import { type Quantity, quantity } from './quantity.ts';

/** A length in international yards: what golfers read. Only the edges of the program speak it. */
export type Yards = Quantity<'yd'>;

/** Metres in one yard, exact. Source: International yard and pound agreement, 1959. */
export const METRES_PER_YARD = 0.9144;

/** A length in yards. @throws RangeError when the figure is not finite. */
export function yards(value: number): Yards {
  return quantity<'yd'>(value, 'yd');
}

/** The same length in yards, sign kept. Source: International yard and pound agreement, 1959. */
export function yardsFromMetres(length: Metres): Yards {
  return yards(length / METRES_PER_YARD);
}

/** The same length in metres, sign kept. Source: International yard and pound agreement, 1959. */
export function metresFromYards(length: Yards): Metres {
  return metres(length * METRES_PER_YARD);
}
