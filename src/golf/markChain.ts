import type { Mark } from './mark.ts';
import { markDistance } from './markDistance.ts';
import type { Measure, Shot } from './shot.ts';
import type { ShotChanges, ShotEntry } from './shotEntry.ts';
import { shotsOfHole } from './shotOrder.ts';

/** The three places of a shot that can be marked. */
export const markedPlaces = ['ball', 'pitch', 'rest'] as const;
export type MarkedPlace = (typeof markedPlaces)[number];

type Marked = Pick<Shot, 'marks' | 'carry' | 'total'>;

function measured(from: Mark | null, to: Mark | null): Measure | null {
  if (!from || !to) return null;
  const { m, error_m } = markDistance(from, to);
  return { m, by: 'gnss', error_m };
}

/** Whether a measure may be replaced by one between marks: there is none, or it came from marks itself. */
function open(measure: Measure | null): boolean {
  return measure === null || measure.by === 'gnss';
}

/**
 * The measures that follow from the marks of a shot: ball to pitch is its carry, ball to rest its total. A
 * resting ball never gives a carry. What the golfer measured another way stays.
 */
export function measuresOfMarks(shot: Marked): ShotChanges {
  const { ball, pitch, rest } = shot.marks;
  const carry = open(shot.carry) ? measured(ball, pitch) : null;
  const total = open(shot.total) ? measured(ball, rest) : null;
  return { ...(carry && { carry }), ...(total && { total }) };
}

/**
 * The measures that the marks of a shot give and that do not stand in it yet; null: none. What a round by the Rules
 * leaves to be worked out when it is over.
 */
export function measuresToCome(shot: Marked): ShotChanges | null {
  const { carry, total } = measuresOfMarks(shot);
  const isNew = (carry && shot.carry === null) || (total && shot.total === null);
  return isNew ? { ...(carry && { carry }), ...(total && { total }) } : null;
}

/**
 * The slots that change when a place of a shot is marked.
 *
 * @param measuring whether distances may be worked out now; in a round by the Rules only the marks are kept, and
 *   {@link measuresOfMarks} follows when the round is over.
 */
export function marked(shot: Marked, place: MarkedPlace, mark: Mark, measuring: boolean): ShotChanges {
  const marks = { ...shot.marks, [place]: mark };
  return { marks, ...(measuring ? measuresOfMarks({ ...shot, marks }) : {}) };
}

/** Whether the ball that comes to rest after a shot is the ball of the next: not after a drop, nor when it was lost. */
function restIsNextBall(last: Shot, next: Pick<ShotEntry, 'fromDrop'>): boolean {
  return !next.fromDrop && (last.outcome === 'in play' || last.outcome === 'holed');
}

/** A shot already logged that changes with a mark, and how. */
export interface ChainedChange {
  readonly id: string;
  readonly changes: ShotChanges;
}

/**
 * What a mark of the next ball says of the shot before it on its hole: that it came to rest there, and so its
 * total. One tap at each ball thus walks a whole hole. A drop breaks the chain, and so do a ball lost, out of
 * bounds or in a penalty area; a rest that was marked by itself stays.
 *
 * @param shots shots of the round (or only of the hole), without the next, in any order.
 * @param next the shot about to be played from the mark.
 * @returns the change to the shot before; null: there is none to make.
 */
export function restOfLast(
  shots: readonly Shot[],
  next: Pick<ShotEntry, 'hole' | 'number' | 'fromDrop'>,
  mark: Mark,
  measuring: boolean,
): ChainedChange | null {
  const before = shotsOfHole(shots, next.hole).filter(
    (shot) => shot.number < next.number && shot.outcome !== 'provisional unused',
  );
  const last = before.at(-1);
  if (!last || last.marks.rest !== null || !restIsNextBall(last, next)) return null;
  return { id: last.id, changes: marked(last, 'rest', mark, measuring) };
}
