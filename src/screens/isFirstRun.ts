import type { Shelf } from '../actions/shelf.ts';
import { liveClubs, liveRounds, liveSettings } from '../logbook/live.ts';

/** Whether nobody has begun anything here: no bag, no round, and no demo season on the screen. */
export function isFirstRun(shelf: Shelf): boolean | 'not known yet' {
  const { connection } = shelf.own;
  const settings = liveSettings(connection).value;
  if (settings.kind !== 'ready') return 'not known yet';
  // Once begun, nothing more needs to be read for this.
  if (settings.value.showing === 'demo' || settings.value.bagStarted) return false;
  const clubs = liveClubs(connection).value;
  const rounds = liveRounds(connection).value;
  if (clubs.kind !== 'ready' || rounds.kind !== 'ready') return 'not known yet';
  return clubs.value.length === 0 && rounds.value.length === 0;
}
