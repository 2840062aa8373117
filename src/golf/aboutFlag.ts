import { type Metres, metres } from '../units/metres.ts';
import type { Mark } from './mark.ts';
import { markDistance } from './markDistance.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Where something lies about the flag as the golfer sees it from the ball, metres: + long, + right. */
export interface AboutFlag {
  readonly long_m: Metres;
  readonly right_m: Metres;
  /** How far the flag was from the ball. */
  readonly flag_m: Metres;
}

/**
 * Where a ball pitched about the flag, from three marks: ball, pitch and flag. `long_m` is along the line from
 * ball to flag, so that flag + long is the carry of a ball on that line; `right_m` is square to it.
 *
 * On the plane of the two geodesics from the ball: over a shot's length the ellipsoid bends away by less than
 * .1 mm. Marks that lie on one another give no line; then all of it counts as long.
 */
export function aboutFlag(ball: Mark, pitch: Mark, flag: Mark): AboutFlag {
  const toFlag = markDistance(ball, flag);
  const toPitch = markDistance(ball, pitch);
  const turn = (toPitch.bearing_deg - toFlag.bearing_deg) * RADIANS_PER_DEGREE;
  return {
    long_m: metres(toPitch.m * Math.cos(turn) - toFlag.m),
    right_m: metres(toPitch.m * Math.sin(turn)),
    flag_m: toFlag.m,
  };
}
