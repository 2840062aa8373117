import { metres } from '../../../units/metres.ts';
import type { DistanceUnit } from '../../distance.ts';
import { wholeDistance } from '../../distance.ts';
import { shotWords as words } from '../../words/shot.ts';
import type { Spot } from './pitch.ts';

/** A spot about the flag as a golfer says it: `4 short, 3 left`; straight past the flag only the length is said. */
export function spotWords(spot: Spot, unit: DistanceUnit): string {
  const figure = (length: number) => wholeDistance(metres(Math.abs(length)), unit);
  const [long, right] = [figure(spot.long_m), figure(spot.right_m)];
  const along = long === '0' ? null : spot.long_m > 0 ? words.long(long) : words.short(long);
  const across = right === '0' ? null : spot.right_m > 0 ? words.right(right) : words.left(right);
  if (along === null) return across === null ? words.atFlag : `${words.pinHigh}, ${across}`;
  return across === null ? along : `${along}, ${across}`;
}
