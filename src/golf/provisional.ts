import { endedAs } from './endedAs.ts';
import { nextShot } from './nextShot.ts';
import type { Shot } from './shot.ts';
import { blankEntry, type ShotChanges, type ShotEntry } from './shotEntry.ts';
import { numberAfterLast, shotsOfHole } from './shotOrder.ts';

/**
 * The prefilled slots of a provisional ball: the place of the last counting shot again, and
 * `provisional unused` as its outcome until the first ball turns out to be lost or out of bounds.
 *
 * A further stroke with the provisional ball goes on from where that ball came to rest.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rule 18.3: the provisional becomes the ball in play
 * only when the first is lost or out of bounds.
 */
export function provisionalEntry(hole: number, shots: readonly Shot[]): ShotEntry {
  const onHole = shotsOfHole(shots, hole);
  const last = onHole.at(-1);
  const ahead = last?.outcome === 'provisional unused';
  const next = ahead
    ? nextShot(
        hole,
        onHole.slice(-1).map((shot): Shot => ({ ...shot, outcome: 'in play' })),
      )
    : nextShot(hole, onHole, 'same place');
  const entry = next.kind === 'shot' ? next.entry : blankEntry(hole, numberAfterLast(onHole));
  return { ...entry, number: numberAfterLast(onHole), outcome: 'provisional unused' };
}

/** One shot to change, and how. */
export interface ShotEdit {
  readonly id: string;
  readonly changes: ShotChanges;
}

/**
 * The changes to make when the first ball is given up: it takes the outcome with its penalty stroke,
 * and the provisional strokes after it become strokes in play.
 *
 * @param shots shots of the hole, in any order.
 * @param firstId id of the ball that was lost or went out of bounds.
 * @throws RangeError when no shot has that id.
 */
export function provisionalInPlay(
  shots: readonly Shot[],
  firstId: string,
  outcome: 'lost' | 'out of bounds',
): ShotEdit[] {
  const first = shots.find((shot) => shot.id === firstId);
  if (!first) throw new RangeError(`no shot ${firstId} on this hole`);
  const onHole = shotsOfHole(shots, first.hole);
  const after = onHole.slice(onHole.findIndex((shot) => shot.id === firstId) + 1);
  const taken = after.filter((shot) => shot.outcome === 'provisional unused');
  return [
    { id: firstId, changes: endedAs(outcome) },
    ...taken.map(
      (shot): ShotEdit => ({ id: shot.id, changes: { outcome: shot.restLie === 'holed' ? 'holed' : 'in play' } }),
    ),
  ];
}
