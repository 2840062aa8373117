import type { Round } from '../../golf/round.ts';
import type { Shot } from '../../golf/shot.ts';
import { carryError } from '../../yardages/carryError.ts';
import { day } from '../day.ts';
import { type DistanceUnit, distanceWithUnit, plusMinusOfError } from '../distance.ts';
import { words } from '../words.ts';

/** What was measured of a shot, in words: its carry, else a bound on it, else its total, else that nothing was. */
function measured(shot: Shot, unit: DistanceUnit): string {
  const { carry, carryAtLeast_m: least, carryAtMost_m: most, total } = shot;
  if (carry) {
    return words.number.carry(distanceWithUnit(carry.m, unit), plusMinusOfError(carryError(shot), unit));
  }
  const bounds = [
    ...(least === null ? [] : [words.number.cleared(distanceWithUnit(least, unit))]),
    ...(most === null ? [] : [words.number.shortOf(distanceWithUnit(most, unit))]),
  ];
  if (bounds.length > 0) return bounds.join(', ');
  return total ? words.number.total(distanceWithUnit(total.m, unit)) : words.number.noMeasure;
}

/**
 * A shot as a golfer would note it: `2 May · fairway · solid · 147 yd ± 3`. The carry is as measured, not
 * adjusted to standard conditions.
 *
 * @param round where it was hit; undefined when the logbook has lost it, and the day is then the shot's own.
 */
export function shotSentence(shot: Shot, round: Round | undefined, unit: DistanceUnit, asOf: string): string {
  const date = round?.date ?? shot.at;
  return [
    ...(date ? [day(date, asOf)] : []),
    shot.lie === null ? words.number.lieOpen : words.lie[shot.lie],
    shot.strike === null ? words.number.strikeOpen : words.strike[shot.strike],
    measured(shot, unit),
  ].join(' · ');
}
