import type { KnownBy } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { type Metres, metres } from '../../../units/metres.ts';
import { metresFromYards, yards } from '../../../units/yards.ts';
import type { DistanceUnit } from '../../distance.ts';
import type { NumberSlot } from './slots.ts';

/** Longest distance a shot may hold, metres, as its schema has it. */
const LONGEST = metres(600);

/** A distance spoken in the golfer's unit. */
export function spokenDistance(figure: number, unit: DistanceUnit): Metres {
  return unit === 'yards' ? metresFromYards(yards(figure)) : metres(figure);
}

/** The largest whole figure that a distance of a shot may have in the golfer's unit. */
export function largestFigure(unit: DistanceUnit): number {
  return Math.floor(LONGEST / spokenDistance(1, unit));
}

/** Whether the digits say a distance that a shot may hold. */
export function isDistance(typed: string, unit: DistanceUnit): boolean {
  const figure = Number(typed);
  return typed !== '' && figure >= 1 && figure <= largestFigure(unit);
}

/** The distance that stands in a number slot; null: none. */
export function distanceIn(slot: NumberSlot, entry: ShotEntry): Metres | null {
  switch (slot) {
    case 'flag':
      return entry.flag_m;
    case 'carry':
      return entry.carry?.m ?? null;
    case 'total':
      return entry.total?.m ?? null;
    case 'cleared':
      return entry.carryAtLeast_m;
    case 'short of':
      return entry.carryAtMost_m;
  }
}

/**
 * The slots that change when a distance was typed. A carry typed takes the place of a pitch about the
 * flag, for the two would contradict each other.
 */
export function distanceTyped(slot: NumberSlot, distance: Metres, by: KnownBy): ShotChanges {
  switch (slot) {
    case 'flag':
      return { flag_m: distance };
    case 'carry':
      return { carry: { m: distance, by, error_m: null }, offline_m: null };
    case 'total':
      return { total: { m: distance, by, error_m: null } };
    case 'cleared':
      return { carryAtLeast_m: distance };
    case 'short of':
      return { carryAtMost_m: distance };
  }
}
