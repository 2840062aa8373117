import { endedAs } from '../../../golf/endedAs.ts';
import type { RestLie } from '../../../golf/lie.ts';
import type { Outcome } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';

/** The slots that change when the ball came to rest there. A provisional ball stays provisional wherever it lies. */
export function restedAt(entry: ShotEntry, lie: RestLie): ShotChanges {
  if (entry.outcome === 'provisional unused') return { restLie: lie };
  return { ...endedAs(lie === 'holed' ? 'holed' : 'in play'), restLie: lie };
}

/** The slots that change when the ball ended where it cannot be played. A provisional ball is then simply nowhere. */
export function endedThere(
  entry: ShotEntry,
  outcome: Extract<Outcome, 'penalty area' | 'out of bounds' | 'lost'>,
): ShotChanges {
  return entry.outcome === 'provisional unused' ? { restLie: null } : endedAs(outcome);
}
