import type { Outcome } from './outcome.ts';
import { type Restored, type RestoreRefusal, restoreBackup } from './restoreBackup.ts';
import { saveSettings } from './saveSettings.ts';
import type { Shelf } from './shelf.ts';

/** Loads the demo season from its file and shows it; the golfer's own logbook is not touched. */
export async function loadDemo(shelf: Shelf, text: string): Promise<Outcome<Restored, RestoreRefusal>> {
  const restored = await restoreBackup(shelf.demo, text, 'replace');
  if (restored.kind !== 'saved') return restored;
  const shown = await saveSettings(shelf.own, { showing: 'demo' });
  return shown.kind === 'saved' ? restored : shown;
}
