import { HOLE_LIMIT } from './hole.ts';
import type { Round } from './round.ts';

/** Holes on one loop out and back. */
const LOOP = 9;

/**
 * Numbers of the holes played, in the order played. Eighteen go round from the first hole; nine stay
 * on the loop that the first hole belongs to (1 to 9, 10 to 18, …), so that a shotgun start on 5
 * plays 5 to 9 and then 1 to 4.
 *
 * @param count 9 or 18.
 * @param startHole number of the first hole played, 1 to 54; eighteen holes from 19 on stay within
 *   the second course (19 to 36), and so on.
 * @throws RangeError when the start hole is no hole number.
 */
export function holeNumbers(count: 9 | 18, startHole: number): number[] {
  if (!Number.isInteger(startHole) || startHole < 1 || startHole > HOLE_LIMIT) {
    throw new RangeError(`hole ${startHole}: a round starts on hole 1 to ${HOLE_LIMIT}`);
  }
  const loop = count === 9 ? LOOP : 2 * LOOP;
  const first = Math.floor((startHole - 1) / loop) * loop;
  return Array.from({ length: loop }, (_, index) => first + ((startHole - 1 - first + index) % loop) + 1);
}

/**
 * Numbers of the holes of a round in the order played: upwards from the hole it started on, then
 * those before it.
 */
export function roundOrder(round: Pick<Round, 'holes' | 'startHole'>): number[] {
  const numbers = round.holes.map((hole) => hole.number).sort((one, other) => one - other);
  const later = numbers.filter((number) => number >= round.startHole);
  return [...later, ...numbers.filter((number) => number < round.startHole)];
}

/** Number of the hole played after this one; null: it is the last, or not a hole of the round. */
export function holeAfter(round: Pick<Round, 'holes' | 'startHole'>, hole: number): number | null {
  const order = roundOrder(round);
  const place = order.indexOf(hole);
  return place < 0 ? null : (order[place + 1] ?? null);
}

/** Number of the hole played before this one; null: it is the first, or not a hole of the round. */
export function holeBefore(round: Pick<Round, 'holes' | 'startHole'>, hole: number): number | null {
  const order = roundOrder(round);
  return order[order.indexOf(hole) - 1] ?? null;
}
