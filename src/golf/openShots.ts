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
 * The slots of a shot still worth asking for. A measure is asked for only where the book would use
 * it: a normal shot that came to rest in play. The strike is never asked for again: it may stay
 * unrecorded.
 */
export function missingSlots(shot: Shot): MissingSlot[] {
  const missing: MissingSlot[] = [];
  if (shot.outcome === 'conceded') return missing;
  if (shot.clubId === null) missing.push('club');
  if (shot.lie === null) missing.push('lie');
  const feedsBook = shot.intent === 'normal' && (shot.outcome === 'in play' || shot.outcome === 'holed');
  if (feedsBook && !measured(shot)) missing.push('measure');
  return missing;
}

/** The shots that still wait for a slot, by hole and in the order played. */
export function openShots(shots: readonly Shot[]): OpenShot[] {
  return inOrder(shots)
    .map((shot) => ({ shot, missing: missingSlots(shot) }))
    .filter((open) => open.missing.length > 0);
}
