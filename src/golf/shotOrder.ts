import type { Shot } from './shot.ts';

/** Places in the order of a hole closer than this are taken for one; it leaves room for 30 halvings of 1. */
const LEAST_STEP = 1e-9;

/** Largest order number a shot may hold, as the shot's schema has it. */
const LAST_NUMBER = 999;

/** What decides the place of a shot. */
type Placed = Pick<Shot, 'id' | 'hole' | 'number' | 'at'>;

/** When the shot was hit, in milliseconds; one without a moment stands first. */
function momentOf(shot: Placed): number {
  return shot.at === null ? Number.MIN_SAFE_INTEGER : Date.parse(shot.at);
}

function compare(one: Placed, other: Placed): number {
  if (one.hole !== other.hole) return one.hole - other.hole;
  if (one.number !== other.number) return one.number - other.number;
  const [moment, otherMoment] = [momentOf(one), momentOf(other)];
  if (moment !== otherMoment) return moment - otherMoment;
  return one.id < other.id ? -1 : one.id > other.id ? 1 : 0;
}

/**
 * The shots by hole number, then in the order played: by `number`, then by the moment, then by id so
 * that the order is the same on every phone. The list given stays as it is.
 */
export function inOrder<S extends Placed>(shots: readonly S[]): S[] {
  return [...shots].sort(compare);
}

/** The shots of one hole in the order played. */
export function shotsOfHole<S extends Placed>(shots: readonly S[], hole: number): S[] {
  return inOrder(shots.filter((shot) => shot.hole === hole));
}

/** Whether a shot counts as a stroke: every one but a provisional ball that was not put in play. */
export function countsAsStroke(shot: Pick<Shot, 'outcome'>): boolean {
  return shot.outcome !== 'provisional unused';
}

/**
 * The number a golfer would say for each shot ("playing three"): one more than the strokes and
 * penalty strokes before it on its hole; `null` for a provisional ball that was not put in play.
 *
 * Penalties noted on the hole itself are not known to belong before any shot and are not counted in.
 */
export function playingNumbers(
  shots: readonly (Placed & Pick<Shot, 'outcome' | 'penalty'>)[],
): Map<string, number | null> {
  const numbers = new Map<string, number | null>();
  let hole = Number.NaN;
  let taken = 0;
  for (const shot of inOrder(shots)) {
    if (shot.hole !== hole) {
      hole = shot.hole;
      taken = 0;
    }
    numbers.set(shot.id, countsAsStroke(shot) ? taken + 1 : null);
    if (countsAsStroke(shot)) taken += 1 + shot.penalty;
  }
  return numbers;
}

/** An order number for the next shot of a hole: the whole number after the last. */
export function numberAfterLast(shots: readonly Pick<Shot, 'number'>[]): number {
  const last = shots.reduce((most, shot) => Math.max(most, shot.number), 0);
  return Math.min(Math.floor(last) + 1, LAST_NUMBER);
}

/** An order number in between, or the word that there is no room left and the hole must be numbered anew. */
export type Between = { readonly kind: 'number'; readonly number: number } | { readonly kind: 'no room' };

/**
 * An order number that puts a shot between two others of its hole.
 *
 * @param before number of the shot before; null: to the front of the hole.
 * @param after number of the shot after; null: to the end of the hole.
 */
export function numberBetween(before: number | null, after: number | null): Between {
  if (after === null) {
    const number = Math.floor(before ?? 0) + 1;
    return number <= LAST_NUMBER ? { kind: 'number', number } : { kind: 'no room' };
  }
  const low = before ?? 0;
  const number = low + (after - low) / 2;
  const room = number - low >= LEAST_STEP && after - number >= LEAST_STEP;
  return room ? { kind: 'number', number } : { kind: 'no room' };
}
