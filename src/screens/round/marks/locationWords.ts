import { type DistanceUnit, distanceWithUnit } from '../../distance.ts';
import { marksWords as words } from '../../words/marks.ts';
import type { Location } from './location.ts';

/** How well the place is known, or why it is not and what to do instead. */
export function locationWords(location: Location, unit: DistanceUnit): string {
  switch (location.kind) {
    case 'off':
      return words.off;
    case 'looking':
      return words.looking;
    case 'no fix':
      return words.noFix;
    case 'refused':
      return words.refused;
    case 'not offered':
      return words.notOffered;
    case 'fix': {
      const { mark, fixes, isPoor } = location;
      if (mark.accuracy_m === null) return words.noFix;
      const radius = distanceWithUnit(mark.accuracy_m, unit);
      return isPoor ? words.poor(radius) : words.good(radius, fixes);
    }
  }
}
