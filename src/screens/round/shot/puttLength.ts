import { type Metres, metres } from '../../../units/metres.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../../units/yards.ts';
import type { DistanceUnit } from '../../distance.ts';

/** Feet in a yard, exact. */
const FEET_PER_YARD = 3;

/** Lengths offered for a putt, each one tap: golfers who think in yards pace putts in feet. Common practice, no source. */
export const PUTT_LENGTHS: Readonly<Record<DistanceUnit, readonly number[]>> = {
  yards: [2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60],
  metres: [0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20],
};

/** The length of a putt said in feet, or in metres by those who play in metres. */
export function puttLength(figure: number, unit: DistanceUnit): Metres {
  return unit === 'yards' ? metresFromYards(yards(figure / FEET_PER_YARD)) : metres(figure);
}

/** The figure a golfer would say for the length of a putt: whole feet, or metres to the decimetre. */
export function puttFigure(length: Metres, unit: DistanceUnit): number {
  return unit === 'yards' ? Math.round(yardsFromMetres(length) * FEET_PER_YARD) : Math.round(length * 10) / 10;
}
