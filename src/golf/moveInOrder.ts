import type { Shot } from './shot.ts';
import { numberBetween, shotsOfHole } from './shotOrder.ts';

/** Where to put a shot: on a hole, after another shot of it; null: to its front. */
export interface MoveTo {
  readonly hole: number;
  readonly after: string | null;
}

/** Hole and order number of a shot. */
export interface Place {
  readonly hole: number;
  readonly number: number;
}

/**
 * The places that change when a shot is moved: its own, and those of all shots of the hole where no
 * number fits in between any more. A shot to go after one that is not on the hole goes to its end.
 *
 * @param shots shots of the round, in any order.
 * @throws RangeError when none of them has the id.
 */
export function placesAfterMove(shots: readonly Shot[], id: string, to: MoveTo): Map<string, Place> {
  if (!shots.some((shot) => shot.id === id)) throw new RangeError(`no shot ${id} in this round`);
  const others = shotsOfHole(shots, to.hole).filter((shot) => shot.id !== id);
  const found = others.findIndex((shot) => shot.id === to.after);
  const before = to.after === null ? -1 : found < 0 ? others.length - 1 : found;
  const between = numberBetween(others[before]?.number ?? null, others[before + 1]?.number ?? null);
  if (between.kind === 'number') return new Map([[id, { hole: to.hole, number: between.number }]]);
  const order = others.map((shot) => shot.id).toSpliced(before + 1, 0, id);
  return new Map(order.map((each, index) => [each, { hole: to.hole, number: index + 1 }]));
}
