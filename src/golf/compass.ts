import { type Degrees, degrees } from '../units/degrees.ts';

/** The eight points that a golfer names a direction by, clockwise from north. */
export const compassPoints = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
export type CompassPoint = (typeof compassPoints)[number];

const DEGREES_PER_POINT = 45;
const DEGREES_PER_HOUR = 30;
const FULL_TURN = 360;

/** Bearing of a compass point, clockwise from true north, 0 up to but without 360. */
export function bearingOfPoint(point: CompassPoint): Degrees {
  return degrees(compassPoints.indexOf(point) * DEGREES_PER_POINT);
}

/** The compass point nearest to a bearing. */
export function pointOfBearing(bearing: Degrees): CompassPoint {
  const turned = ((bearing % FULL_TURN) + FULL_TURN) % FULL_TURN;
  const nearest = Math.round(turned / DEGREES_PER_POINT) % compassPoints.length;
  return compassPoints[nearest] ?? 'N';
}

/**
 * Bearing that a wind comes from, clockwise from true north, 0 up to but without 360, when it is told by
 * the clock against a hole: 12 into the player, 3 from the right, 6 from behind.
 *
 * @param clock 1 to 12.
 * @param hole bearing that the hole is played along.
 */
export function bearingOfClock(clock: number, hole: Degrees): Degrees {
  return degrees((((hole + clock * DEGREES_PER_HOUR) % FULL_TURN) + FULL_TURN) % FULL_TURN);
}
