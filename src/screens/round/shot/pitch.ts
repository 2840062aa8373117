import type { KnownBy } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { type Metres, metres } from '../../../units/metres.ts';

/** A spot about the flag, metres: + long, + right. */
export interface Spot {
  readonly long_m: Metres;
  readonly right_m: Metres;
}

/** Where a shot pitched about the flag, as far as it was noted; null: it was not, or a carry was typed instead. */
export function pitchOf(entry: Pick<ShotEntry, 'flag_m' | 'carry' | 'offline_m' | 'aim'>): Spot | null {
  const { flag_m, carry, offline_m, aim } = entry;
  if (flag_m === null || carry === null || offline_m === null) return null;
  return { long_m: metres(carry.m - flag_m), right_m: metres(offline_m + aim.right_m) };
}

/**
 * The slots that change when a ball pitched there: the carry is the flag and what it was long of it
 * (common practice: a golfer who is 4 short of 78 carried 74), the line is about the aim. A ball
 * cannot carry less than nothing.
 *
 * @param by how the distance to the flag was known; the carry is known the same way.
 * @throws RangeError when the shot has no flag.
 */
export function pitched(
  entry: Pick<ShotEntry, 'flag_m' | 'aim'>,
  spot: Spot,
  by: KnownBy,
): Pick<ShotChanges, 'carry' | 'offline_m'> {
  if (entry.flag_m === null) throw new RangeError('a pitch about the flag needs its distance: null m');
  return {
    carry: { m: metres(Math.max(0, entry.flag_m + spot.long_m)), by, error_m: null },
    offline_m: metres(spot.right_m - entry.aim.right_m),
  };
}
