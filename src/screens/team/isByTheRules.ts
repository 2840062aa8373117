import type { Shelf } from '../../actions/shelf.ts';
import { permissions } from '../../golf/permissions.ts';
import { liveOpenRound } from '../../logbook/live.ts';

/** Whether a round by the Rules is open on this device: nothing is brought in or handed out then. For components. */
export function isByTheRules({ own }: Shelf): boolean {
  const open = liveOpenRound(own.connection).value;
  return open.kind === 'ready' && !permissions(open.value?.round ?? null).sharing;
}
