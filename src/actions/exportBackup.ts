import { carrybookFileOf, writeCarrybookFile } from '../exchange/carrybookFile.ts';
import { readLogbook } from '../logbook/readLogbook.ts';
import type { StorageTrouble } from '../logbook/storageTrouble.ts';
import { localDay } from './clock.ts';
import type { Keeper } from './keeper.ts';
import type { Outcome } from './outcome.ts';
import { saveSettings } from './saveSettings.ts';

/** How much longer than a shot a whole logbook may take to be read before the connection counts as lost. */
const PATIENCE_TIMES = 6;

/** A backup to hand over, or why the logbook could not be read. */
export type Backup =
  | {
      readonly kind: 'ok';
      readonly text: string;
      readonly fileName: string;
      /** Changes not saved yet and so not in it. */
      readonly unsaved: number;
    }
  | { readonly kind: 'unread'; readonly why: StorageTrouble };

/** The whole logbook as a Carrybook file, after one more try of what is unsaved. */
export function exportBackup(keeper: Keeper): Promise<Backup> {
  return keeper.line.after(async (): Promise<Backup> => {
    const now = keeper.clock.now();
    const stored = await keeper.connection.withDatabase(readLogbook, PATIENCE_TIMES);
    if (stored.kind !== 'ok') return { kind: 'unread', why: stored };
    const text = writeCarrybookFile(carrybookFileOf(stored.value, new Date(now).toISOString(), 'backup'));
    return { kind: 'ok', text, fileName: `carrybook-${localDay(now)}.json`, unsaved: keeper.unsaved.peek().length };
  });
}

/** Notes that a backup was handed over, so that the reminder counts from now. */
export function noteBackup(keeper: Keeper): Promise<Outcome> {
  return saveSettings(keeper, { lastBackupAt: new Date(keeper.clock.now()).toISOString() });
}
