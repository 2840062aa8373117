import type { Shelf } from '../actions/shelf.ts';
import { livePlayer, liveSettings } from '../logbook/live.ts';
import type { StorageTrouble } from '../logbook/storageTrouble.ts';

/** Why the logbook on the screen cannot be read; null: it can, as far as is known. */
export function liveTrouble(shelf: Shelf): StorageTrouble | null {
  const readings = [liveSettings(shelf.own.connection).value, livePlayer(shelf.shown.value.connection).value];
  return readings.find((reading) => reading.kind === 'failed')?.why ?? null;
}
