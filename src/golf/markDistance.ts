import geodesics from 'geographiclib-geodesic';
import { type Degrees, degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import type { Mark } from './mark.ts';
import { markError } from './markError.ts';

const { WGS84 } = geodesics.Geodesic;

/** How far and in which direction one mark lies from another. */
export interface MarkedDistance {
  /** Along the ground of the ellipsoid, ≥ 0. */
  readonly m: Metres;
  /** Standard error of `m`. */
  readonly error_m: Metres;
  /** Clockwise from true north at the first mark, 0 up to but without 360. */
  readonly bearing_deg: Degrees;
}

const FULL_TURN = 360; // degrees

/**
 * Distance and bearing from one satellite mark to another: the geodesic on the WGS 84 ellipsoid, the
 * one the fixes are given on. Heights are not used, so it is a horizontal distance, as a carry is.
 *
 * Accuracy of the geodesic: about 10 nm; that of the marks is in `error_m`.
 *
 * @throws RangeError when a latitude is beyond ±90°, as a mark's schema forbids.
 * Source: Karney (2013), Algorithms for geodesics, J. Geodesy 87, 43–55.
 */
export function markDistance(from: Mark, to: Mark): MarkedDistance {
  if (Math.abs(from.lat_deg) > 90 || Math.abs(to.lat_deg) > 90) {
    throw new RangeError(`latitude ${from.lat_deg}° or ${to.lat_deg}° is beyond 90°`);
  }
  const { s12, azi1 } = WGS84.Inverse(from.lat_deg, from.lon_deg, to.lat_deg, to.lon_deg);
  if (s12 === undefined || azi1 === undefined) throw new RangeError('no geodesic between the marks');
  return {
    m: metres(s12),
    error_m: markError(from, to),
    bearing_deg: degrees(((azi1 % FULL_TURN) + FULL_TURN) % FULL_TURN),
  };
}
