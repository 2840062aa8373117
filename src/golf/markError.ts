import { type Metres, metres } from '../units/metres.ts';
import type { Mark } from './mark.ts';

/**
 * The radius that holds a two-dimensional normal error with 95 % confidence, in units of its standard
 * deviation along one axis: √(−2 ln .05). Source: the Rayleigh distribution, whose quantile it is.
 */
const R95_PER_SD = 2.448;

/** Least standard error of a distance between two marks, metres: 2 yd. Own choice: fixes minutes apart share too much to do better. */
export const LEAST_MARK_ERROR: Metres = metres(1.8288);

/** Radius taken for a mark that was stored without one, metres. Own choice: what phones under open sky often report, from memory. */
export const USUAL_ACCURACY: Metres = metres(4.9);

/**
 * Standard error of the distance between two satellite marks, metres.
 *
 * Each reports the radius that holds it with 95 % confidence. Along the line between them the errors
 * have standard deviations r/2.448, taken as independent, so that of the distance is √(r₁² + r₂²)/2.448;
 * never less than 2 yd. Marks of 4.9 m each give 2.8 m.
 *
 * Source: W3C Geolocation recommendation, "accuracy" as a 95 % radius; propagation of errors.
 */
export function markError(one: Pick<Mark, 'accuracy_m'>, other: Pick<Mark, 'accuracy_m'>): Metres {
  const radii = [one.accuracy_m ?? USUAL_ACCURACY, other.accuracy_m ?? USUAL_ACCURACY];
  return metres(Math.max(LEAST_MARK_ERROR, Math.hypot(...radii) / R95_PER_SD));
}
