import type { Shot } from '../../../golf/shot.ts';
import type { ShotEntry } from '../../../golf/shotEntry.ts';

/** An entry as the shot it will be, before the logbook has stamped it. */
export function asShot(entry: ShotEntry, roundId: string, id: string): Shot {
  return { ...entry, id, roundId, changedAt: '', device: '' };
}
