import { type Restored, type RestoreRefusal, restoreBackup } from '../../actions/restoreBackup.ts';
import { saveSettings } from '../../actions/saveSettings.ts';
import type { Shelf } from '../../actions/shelf.ts';
import type { CarrybookFile } from '../../exchange/carrybookFile.ts';
import type { Refusal } from '../../exchange/refusal.ts';
import { compute } from '../../worker/compute.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import { putFileAway } from './opening.ts';

/** How far the bringing back of a backup has got. */
export type Restoring =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading'; readonly name: string }
  | { readonly kind: 'refused'; readonly name: string; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'read'; readonly text: string; readonly file: CarrybookFile }
  | { readonly kind: 'working' }
  | { readonly kind: 'restored'; readonly restored: Restored };

/** Reads a file as a backup, in the worker, without bringing anything back yet. */
export async function readBackup(file: File): Promise<Restoring> {
  try {
    const text = await file.text();
    const reading = await compute('readFile', text);
    if (reading.kind === 'refused') return { kind: 'refused', name: file.name, refusals: reading.refusals };
    if (reading.value.kind !== 'carrybook') return { kind: 'failed', why: moreWords.restore.notOne };
    return { kind: 'read', text, file: reading.value.file };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { kind: 'failed', why: words.open.notRead(why) };
  }
}

function refusal(name: string, why: RestoreRefusal): Restoring {
  if (why.kind === 'unreadable') return { kind: 'refused', name, refusals: why.refusals };
  return { kind: 'failed', why: words.restore.why(why) };
}

/** Brings the backup back into the golfer's own logbook and shows that. */
export async function bringBack(
  shelf: Shelf,
  { text, file }: { readonly text: string; readonly file: CarrybookFile },
  how: 'replace' | 'merge',
): Promise<Restoring> {
  const outcome = await restoreBackup(shelf.own, text, how);
  if (outcome.kind === 'refused') return refusal(file.player.name, outcome.why);
  if (outcome.kind === 'unsaved') return { kind: 'failed', why: words.storage.why(outcome.why) };
  // The file itself is the backup of what it brought; what a merge had here before is not in it.
  const dated = outcome.value.merge === null ? { lastBackupAt: file.exportedAt } : {};
  const noted = await saveSettings(shelf.own, { bagStarted: true, showing: 'own', ...dated });
  if (noted.kind === 'unsaved') return { kind: 'failed', why: words.storage.why(noted.why) };
  putFileAway();
  return { kind: 'restored', restored: outcome.value };
}
