import { type Metres, metres } from '../../../units/metres.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../../units/yards.ts';
import type { DistanceUnit } from '../../distance.ts';

/** Feet in a yard, exact. */
const FEET_PER_YARD = 3;

/** Ten usual lengths of a putt and five more, each one tap: golfers who think in yards pace putts in feet. Common practice, no source. */
const LENGTHS = {
  yards: { usual: [3, 4, 5, 6, 8, 10, 15, 20, 30, 40], others: [2, 12, 25, 50, 60] },
  metres: { usual: [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10], others: [0.5, 7, 12, 15, 20] },
} as const;

/** The lengths in the order they are offered where so many find room on the first page. */
export function puttLengths(unit: DistanceUnit, room: number): number[] {
  const { usual, others } = LENGTHS[unit];
  const all = [...usual, ...others].sort((one, other) => one - other);
  return room >= all.length ? all : [...usual, ...others];
}

/** The length of a putt said in feet, or in metres by those who play in metres. */
export function puttLength(figure: number, unit: DistanceUnit): Metres {
  return unit === 'yards' ? metresFromYards(yards(figure / FEET_PER_YARD)) : metres(figure);
}

/** The figure a golfer would say for the length of a putt: whole feet, or metres to the decimetre. */
export function puttFigure(length: Metres, unit: DistanceUnit): number {
  return unit === 'yards' ? Math.round(yardsFromMetres(length) * FEET_PER_YARD) : Math.round(length * 10) / 10;
}
