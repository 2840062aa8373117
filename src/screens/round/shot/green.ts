import type { Spot } from './pitch.ts';

/*
 * A green as a hole-location sheet draws it: a free outline about the flag. It is not the hole's own
 * green, whose shape nobody has told; about 28 deep and 24 wide is common practice, no source.
 */
const DEEP_M = 12.8; // half of it, 14 yd
const WIDE_M = 11; // half of it, 12 yd

/** How far the green reaches from the flag in a direction, metres; 0 is long, a quarter turn is right. */
export function edgeOfGreen(turn: number): number {
  const ellipse = (DEEP_M * WIDE_M) / Math.hypot(WIDE_M * Math.cos(turn), DEEP_M * Math.sin(turn));
  return ellipse * (1 + 0.07 * Math.sin(2 * turn + 0.6) + 0.05 * Math.cos(3 * turn));
}

/** Whether a spot lies on the green as drawn. */
export function isOnGreen(spot: Spot): boolean {
  return Math.hypot(spot.long_m, spot.right_m) <= edgeOfGreen(Math.atan2(spot.right_m, spot.long_m));
}
