import type { Shot } from './shot.ts';
import { blankEntry, type ShotChanges, type ShotEntry } from './shotEntry.ts';

/** One entry as the two shots it was. */
export interface SplitShot {
  /** What changes of the entry, which stays the first of the two. */
  readonly first: ShotChanges;
  /** The second; its place in the order is that of the first, for the caller to move on. */
  readonly second: ShotEntry;
}

/**
 * Parts an entry that was two shots. The first keeps what was said before impact and what was measured of its flight;
 * where the ball came to rest, what became of it and its penalty strokes go to the second, with the mark of the rest and
 * the total that was taken to it. Club, lie and strike of the second are open, and so is where the first came to rest. A
 * provisional ball makes two shots with it. Which of the two a figure belongs to is our own choice.
 */
export function splitShot(shot: Shot): SplitShot {
  const isProvisional = shot.outcome === 'provisional unused';
  const isTotalToRest = shot.total !== null && shot.marks.rest !== null;
  const { ball, pitch, rest } = shot.marks;
  const first: ShotChanges = {
    restLie: null,
    outcome: isProvisional ? shot.outcome : 'in play',
    penalty: 0,
    marks: { ...shot.marks, ball, pitch, rest: null },
    ...(isTotalToRest ? { total: null } : {}),
  };
  const second: ShotEntry = {
    ...blankEntry(shot.hole, shot.number),
    at: shot.at,
    restLie: shot.restLie,
    outcome: shot.outcome,
    penalty: shot.penalty,
    marks: { ball: null, pitch: null, rest },
  };
  return { first, second };
}
