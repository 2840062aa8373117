import { degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import type { Mark } from './mark.ts';
import { markDistance } from './markDistance.ts';
import { USUAL_ACCURACY } from './markError.ts';

/** Fixes older than this do not belong to the present stand, seconds. Own choice: longer, and one is walking again. */
const STAND_S = 20;

/** A fix further than this from the latest was taken while walking, metres. Own choice: three steps. */
const STAND_M = 3;

/**
 * Share of the variance of one fix that all fixes of a stand have in common. Own choice, from memory: a
 * satellite fix errs by the air and by reflections, which change over minutes, so seconds more help little.
 */
const COMMON_SHARE = 0.7;

/** Least radius of an averaged fix, metres: 2 yd. */
const LEAST_ACCURACY: Metres = metres(1.8288);

function seconds(mark: Mark): number {
  return mark.at === null ? 0 : Date.parse(mark.at) / 1000;
}

/**
 * The fixes that were taken where the golfer stands now: going back from the latest until one is older than
 * 20 s, or further off than 3 m and than half the latest's radius.
 *
 * @param fixes in the order they came.
 */
export function standingFixes(fixes: readonly Mark[]): Mark[] {
  const latest = fixes.at(-1);
  if (!latest) return [];
  const within = Math.max(STAND_M, (latest.accuracy_m ?? USUAL_ACCURACY) / 2);
  const moved = fixes.findLastIndex(
    (fix) => seconds(latest) - seconds(fix) > STAND_S || markDistance(latest, fix).m > within,
  );
  return fixes.slice(moved + 1);
}

/** East of the meridian of `from`, −180 to 180: so that a mean across the date line is near it. */
function eastOf(from: Mark, mark: Mark): number {
  return ((((mark.lon_deg - from.lon_deg + 180) % 360) + 360) % 360) - 180;
}

/**
 * One mark out of the fixes of one stand: their mean, each weighted by 1/r², where r is the radius it reported.
 *
 * The radius of the mean: fixes seconds apart share most of their error, so with weights w the variance is
 * share · Σ w r² + (1 − share) · Σ w² r², share .7, and the radius is never below 2 yd. One fix stays as it is
 * but for that floor.
 *
 * @param fixes at least one; a fix without a radius counts as 4.9 m.
 * @throws RangeError when there is no fix.
 */
export function averagedFix(fixes: readonly Mark[]): Mark {
  const latest = fixes.at(-1);
  if (!latest) throw new RangeError('0 fixes have no mean');
  const radii = fixes.map((fix) => Math.max(0.1, fix.accuracy_m ?? USUAL_ACCURACY));
  const total = radii.reduce((sum, radius) => sum + radius ** -2, 0);
  const weights = radii.map((radius) => radius ** -2 / total);
  const sumOf = (value: (index: number) => number) =>
    weights.reduce((sum, weight, index) => sum + weight * value(index), 0);
  const north = sumOf((index) => fixes[index].lat_deg - latest.lat_deg);
  const east = sumOf((index) => eastOf(latest, fixes[index]));
  const variance =
    COMMON_SHARE * sumOf((index) => radii[index] ** 2) +
    (1 - COMMON_SHARE) * sumOf((index) => weights[index] * radii[index] ** 2);
  const lon = latest.lon_deg + east;
  return {
    lat_deg: degrees(latest.lat_deg + north),
    lon_deg: degrees(lon > 180 ? lon - 360 : lon < -180 ? lon + 360 : lon),
    accuracy_m: metres(Math.max(LEAST_ACCURACY, Math.sqrt(variance))),
    at: latest.at,
  };
}
