import type { Round } from '../../golf/round.ts';
import type { Shot } from '../../golf/shot.ts';
import { carryError } from '../../yardages/carryError.ts';
import { day } from '../day.ts';
import { type DistanceUnit, distanceWithUnit, plusMinusOfError } from '../distance.ts';
import { words } from '../words.ts';

/** What was measured of a shot, in words: its carry, else a bound on it, else its total; null when nothing was. */
function measured(shot: Shot, unit: DistanceUnit): string | null {
  const { carry, carryAtLeast_m: least, carryAtMost_m: most, total } = shot;
  if (carry) {
    return words.number.carry(distanceWithUnit(carry.m, unit), plusMinusOfError(carryError(shot), unit));
  }
  const bounds = [
    ...(least === null ? [] : [words.number.cleared(distanceWithUnit(least, unit))]),
    ...(most === null ? [] : [words.number.shortOf(distanceWithUnit(most, unit))]),
  ];
  if (bounds.length > 0) return bounds.join(', ');
  return total && words.number.total(distanceWithUnit(total.m, unit));
}

function where(shot: Shot, round: Round | undefined): string {
  if (round?.play === 'practice ground') {
    return round.ball === 'range' ? words.number.rangeBall : words.number.practiceGround;
  }
  return shot.lie === null ? words.number.lieOpen : words.lie[shot.lie];
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
    date && day(date, asOf),
    where(shot, round),
    shot.strike === null ? words.number.strikeOpen : words.strike[shot.strike],
    measured(shot, unit),
  ]
    .filter((piece) => piece !== null)
    .join(' · ');
}
