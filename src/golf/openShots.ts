import type { Shot } from './shot.ts';
import { inOrder } from './shotOrder.ts';

/** A slot of a shot that a number of the book needs and the golfer left open. */
export type MissingSlot = 'club' | 'lie' | 'measure';

/** A shot with slots left open, and which. */
export interface OpenShot {
  readonly shot: Shot;
  readonly missing: readonly MissingSlot[];
}

function measured(shot: Shot): boolean {
  return shot.carry !== null || shot.total !== null || shot.carryAtLeast_m !== null || shot.carryAtMost_m !== null;
}

/**
 * Whether the golfer is content to leave a shot unmeasured: a tee shot with its club noted and no flag to play
 * at. Most drives are never measured, and asking for each of them at every tee would bury the shots that can still be
 * put right. One that may still be measured has its slots on the shot's own page.
 */
function mayStayUnmeasured(shot: Shot): boolean {
  return shot.lie === 'tee' && shot.clubId !== null && shot.flag_m === null;
}

/**
 * The slots of a shot still worth asking for. A measure is asked for only where the book would use
 * it and the golfer was after it: a normal shot that came to rest in play, from anywhere but a tee without a flag. The
 * strike is never asked for again: it may stay unrecorded. What is asked is our own choice.
 */
export function missingSlots(shot: Shot): MissingSlot[] {
  const missing: MissingSlot[] = [];
  if (shot.outcome === 'conceded') return missing;
  if (shot.clubId === null) missing.push('club');
  if (shot.lie === null) missing.push('lie');
  const feedsBook = shot.intent === 'normal' && (shot.outcome === 'in play' || shot.outcome === 'holed');
  if (feedsBook && !measured(shot) && !mayStayUnmeasured(shot)) missing.push('measure');
  return missing;
}

/** The shots that still wait for a slot, by hole and in the order played. */
export function openShots(shots: readonly Shot[]): OpenShot[] {
  return inOrder(shots)
    .map((shot) => ({ shot, missing: missingSlots(shot) }))
    .filter((open) => open.missing.length > 0);
}
