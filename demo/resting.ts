import type { Lie } from '../src/golf/lie.ts';
import type { CourseHole, Trouble } from './courses.ts';
import { fromYards } from './records.ts';
import type { SeededNumbers } from './seededNumbers.ts';

/** A place on a hole, m: `along` grows from the tee to 0 at the middle of the green, `right` of the line. */
export interface Place {
  readonly along: number;
  readonly right: number;
}

/** What became of a ball by where it pitched and would come to rest. */
export type Resting =
  | { readonly kind: 'at rest'; readonly lie: Lie | 'green'; readonly nearTrees: boolean }
  | { readonly kind: 'penalty area'; readonly trouble: Trouble }
  | { readonly kind: 'out of bounds' };

/** Half the depth and half the width of every green of the demo, m. */
export const GREEN_HALF = { depth_m: fromYards(14), width_m: fromYards(11) } as const;

export function distance(from: Place, to: Place): number {
  return Math.hypot(to.along - from.along, to.right - from.right);
}

/** The place reached from one towards another: so far along that line and so far right of it. */
export function reached(from: Place, towards: Place, ahead_m: number, right_m: number): Place {
  const full = distance(from, towards);
  const along = (towards.along - from.along) / full;
  const right = (towards.right - from.right) / full;
  return {
    along: from.along + along * ahead_m - right * right_m,
    right: from.right + right * ahead_m + along * right_m,
  };
}

export function onGreen(place: Place): boolean {
  return (place.along / GREEN_HALF.depth_m) ** 2 + (place.right / GREEN_HALF.width_m) ** 2 < 1;
}

function meets(trouble: Trouble, place: Place): boolean {
  if (place.along < -trouble.begins_m || place.along > -trouble.ends_m) return false;
  if (trouble.side === 'across') return Math.abs(place.right) < 45;
  return (trouble.side === 'right' ? place.right : -place.right) > trouble.off_m;
}

/** Where the ball lies, and in what. */
export function restOf(hole: CourseHole, pitch: Place, rest: Place, numbers: SeededNumbers): Resting {
  for (const trouble of hole.trouble) {
    const wet = trouble.kind === 'penalty area' && (meets(trouble, pitch) || meets(trouble, rest));
    if (wet) return { kind: 'penalty area', trouble };
    if (trouble.kind === 'out of bounds' && meets(trouble, rest)) return { kind: 'out of bounds' };
  }
  const lie = (name: Lie | 'green', nearTrees = false): Resting => ({ kind: 'at rest', lie: name, nearTrees });
  if (onGreen(rest)) return lie('green');
  const off = Math.abs(rest.right);
  const bunker = hole.trouble.some((trouble) => trouble.kind === 'fairway bunker' && meets(trouble, rest));
  if (bunker && off < 28) return lie('fairway bunker');
  const toGreen = Math.hypot(rest.along, rest.right);
  if (toGreen < fromYards(27)) {
    if (numbers.chance(0.24)) return lie('greenside bunker');
    return lie(numbers.pick(['fairway', 'fairway', 'light rough', 'light rough', 'heavy rough', 'bare']));
  }
  if (off < hole.half_m) return lie(numbers.chance(0.02) ? 'bare' : 'fairway');
  if (off < hole.half_m + fromYards(9)) return lie('light rough');
  if (off < hole.half_m + fromYards(18)) return lie(numbers.chance(0.7) ? 'heavy rough' : 'light rough');
  return numbers.chance(0.55) ? lie('other', true) : lie('heavy rough', true);
}
