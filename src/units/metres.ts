import { type Quantity, quantity } from './quantity.ts';

/** A length in metres (SI). Carries are horizontal distances; the sign is stated where one is meant. */
export type Metres = Quantity<'m'>;

/** A length in metres (SI). Carries are horizontal distances; the sign is stated where one is meant. @throws RangeError when the figure is not finite. */
export function metres(value: number): Metres {
  return quantity<'m'>(value, 'm');
}
