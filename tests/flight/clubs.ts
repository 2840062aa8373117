import type { FlownClub, FlownKind } from '../../src/flight/flownClub.ts';
import { type ClubLaunch, launchFor } from '../../src/flight/launch.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';

/** A club and the full carries, m, that golfers get from it (common practice, no source). */
export interface PlayedClub {
  readonly kind: FlownKind;
  readonly loft: number;
  readonly shortest: number;
  readonly longest: number;
}

/** Clubs hit hard enough that the flight is one: below these carries lift matters less than drag. */
export const PLAYED: readonly PlayedClub[] = [
  { kind: 'driver', loft: 10.5, shortest: 205, longest: 300 },
  { kind: 'fairway wood', loft: 15, shortest: 195, longest: 250 },
  { kind: 'hybrid', loft: 22, shortest: 160, longest: 220 },
  { kind: 'driving iron', loft: 20, shortest: 165, longest: 225 },
  { kind: 'iron', loft: 27, shortest: 145, longest: 195 },
  { kind: 'iron', loft: 34, shortest: 120, longest: 175 },
  { kind: 'wedge', loft: 46, shortest: 85, longest: 135 },
  { kind: 'wedge', loft: 56, shortest: 60, longest: 105 },
];

export function club(kind: FlownKind, loft: number, height: FlownClub['height'] = null): FlownClub {
  return { kind, loft_deg: degrees(loft), height };
}

/** The launch of a club, which must exist. */
export function launched(flown: FlownClub, carry: number): ClubLaunch {
  const found = launchFor(flown, metres(carry));
  if (found.kind !== 'launch') throw new Error(found.why);
  return found;
}
