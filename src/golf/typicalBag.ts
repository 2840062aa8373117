import { degrees } from '../units/degrees.ts';
import { metres } from '../units/metres.ts';
import type { ClubKind } from './club.ts';
import type { ClubForm } from './clubForm.ts';

/**
 * Names, lofts and lengths of a usual set of today, longest first; the lengths in inches.
 * Common practice, from memory, no source: lofts differ by several degrees from one set to the next.
 */
const TYPICAL: readonly (readonly [kind: ClubKind, name: string, loft_deg: number, length_in: number])[] = [
  ['driver', 'driver', 10.5, 45.5],
  ['fairway wood', '3 wood', 15, 43],
  ['hybrid', '4 hybrid', 21, 40],
  ['iron', '5 iron', 25, 38],
  ['iron', '6 iron', 28.5, 37.5],
  ['iron', '7 iron', 32.5, 37],
  ['iron', '8 iron', 37, 36.5],
  ['iron', '9 iron', 41.5, 36],
  ['wedge', 'PW', 46, 35.75],
  ['wedge', '50°', 50, 35.5],
  ['wedge', '54°', 54, 35.25],
  ['wedge', '58°', 58, 35],
  ['putter', 'putter', 3, 34],
];

/** Metres in an inch, exact. Source: International yard and pound agreement, 1959. */
const METRES_PER_INCH = 0.0254;

/**
 * A bag of thirteen clubs with usual lofts and lengths, to start from and to correct: twelve clubs
 * and a putter, which leaves one place.
 */
export function typicalBag(): ClubForm[] {
  return TYPICAL.map(([kind, name, loft, length]) => ({
    id: null,
    kind,
    name,
    inBag: true,
    claimed_m: null,
    notPlayed: [],
    launch: null,
    spec: {
      loft_deg: degrees(loft),
      lie_deg: null,
      length_m: metres(Math.round(length * METRES_PER_INCH * 10_000) / 10_000),
      bounce_deg: null,
      shaft: '',
      head: '',
      note: '',
    },
  }));
}
