import type { Outcome } from './shot.ts';
import type { ShotChanges } from './shotEntry.ts';

/** Penalty strokes that an outcome costs by itself. */
const PENALTY_STROKES: Readonly<Record<Outcome, number>> = {
  'in play': 0,
  holed: 0,
  'penalty area': 1,
  'out of bounds': 1,
  lost: 1,
  'provisional unused': 0,
  conceded: 0,
};

/**
 * Penalty strokes that go with what became of the ball, 0 or 1.
 *
 * Relief from a penalty area costs one stroke; a ball lost or out of bounds costs stroke and
 * distance, of which the distance is the stroke played again and so logged by itself.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rules 17.1d and 18.2b.
 */
export function penaltyStrokes(outcome: Outcome): number {
  return PENALTY_STROKES[outcome];
}

/**
 * The slots that change when a ball ended so: the outcome, its penalty strokes, and where the ball
 * came to rest when that is thereby known (holed) or thereby unknown (lost).
 */
export function endedAs(outcome: Outcome): ShotChanges {
  const changes: ShotChanges = { outcome, penalty: penaltyStrokes(outcome) };
  if (outcome === 'holed') return { ...changes, restLie: 'holed' };
  if (outcome === 'lost' || outcome === 'out of bounds' || outcome === 'penalty area')
    return { ...changes, restLie: null };
  return changes;
}
