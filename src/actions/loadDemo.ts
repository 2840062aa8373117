import { heldBack } from './heldBack.ts';
import { type Outcome, refuse } from './outcome.ts';
import { type Restored, type RestoreRefusal, restoreBackup } from './restoreBackup.ts';
import { saveSettings } from './saveSettings.ts';
import type { Shelf } from './shelf.ts';

/**
 * Loads the demo season from its file and shows it; the golfer's own logbook is not touched. Not while a round by
 * the Rules is open in that.
 */
export async function loadDemo(shelf: Shelf, text: string): Promise<Outcome<Restored, RestoreRefusal>> {
  const held = await shelf.own.connection.withDatabase((db) => heldBack(db, { kind: 'import' }));
  if (held.kind === 'ok' && held.value) return refuse({ kind: 'round by the Rules' });
  const restored = await restoreBackup(shelf.demo, text, 'replace');
  if (restored.kind !== 'saved') return restored;
  const shown = await saveSettings(shelf.own, { showing: 'demo' });
  return shown.kind === 'saved' ? restored : shown;
}
