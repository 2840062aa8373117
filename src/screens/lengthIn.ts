import { type Metres, metres } from '../units/metres.ts';
import { metresFromYards, yards } from '../units/yards.ts';
import type { DistanceUnit } from './distance.ts';

/** A figure in the unit on screen as a length. @throws RangeError when it is not finite. */
export function lengthIn(figure: number, unit: DistanceUnit): Metres {
  return unit === 'yards' ? metresFromYards(yards(figure)) : metres(figure);
}
