import { computed, type ReadonlySignal } from '@preact/signals';
import { eraseLogbook } from '../logbook/backup.ts';
import { liveSettings } from '../logbook/live.ts';
import { type Keeper, type KeeperOptions, keepLogbook, OWN_LOGBOOK } from './keeper.ts';
import { type Outcome, written } from './outcome.ts';
import { type Restored, type RestoreRefusal, restoreBackup } from './restoreBackup.ts';
import { saveSettings } from './saveSettings.ts';
import { write } from './write.ts';

/** Name of the demo season in the browser's store. */
export const DEMO_LOGBOOK = 'carrybook-demo';

/**
 * The two logbooks on a phone: the golfer's own, and the demo season when it was loaded. They are two
 * databases, so that the demo can never mix with real shots, nor be exported, merged or left behind with
 * them; removing it empties its own.
 */
export interface Shelf {
  readonly own: Keeper;
  readonly demo: Keeper;
  /** The keeper of the logbook on the screen; screens write through this one. */
  readonly shown: ReadonlySignal<Keeper>;
}

/** Opens the shelf. Which logbook is shown stands in the settings of the own one. */
export function openShelf(options: Omit<KeeperOptions, 'name'> = {}): Shelf {
  const own = keepLogbook({ ...options, name: OWN_LOGBOOK });
  const demo = keepLogbook({ ...options, name: DEMO_LOGBOOK });
  const shown = computed(() => {
    const settings = liveSettings(own.connection).value;
    return settings.kind === 'ready' && settings.value.showing === 'demo' ? demo : own;
  });
  return { own, demo, shown };
}

/** Loads the demo season from its file and shows it; the golfer's own logbook is not touched. */
export async function loadDemo(shelf: Shelf, text: string): Promise<Outcome<Restored, RestoreRefusal>> {
  const restored = await restoreBackup(shelf.demo, text, 'replace');
  if (restored.kind !== 'saved') return restored;
  const shown = await saveSettings(shelf.own, { showing: 'demo' });
  return shown.kind === 'saved' ? restored : shown;
}

function erase(keeper: Keeper): Promise<Outcome> {
  const playerId = keeper.newId();
  const deviceId = keeper.newId();
  return keeper.line.after(async () => {
    const erased = await write(keeper, async (pen) => {
      await eraseLogbook(pen.db, playerId, deviceId);
      return written(undefined);
    });
    if (erased.kind === 'saved') keeper.line.giveUpAll();
    return erased;
  });
}

/** Shows the golfer's own logbook again and empties the demo's. */
export async function removeDemo(shelf: Shelf): Promise<Outcome> {
  const shown = await saveSettings(shelf.own, { showing: 'own' });
  return shown.kind === 'saved' ? erase(shelf.demo) : shown;
}

/** Deletes everything this app has stored on this phone: both logbooks, settings and what is unsaved. */
export async function deleteEverything(shelf: Shelf): Promise<Outcome> {
  const demo = await erase(shelf.demo);
  return demo.kind === 'saved' ? erase(shelf.own) : demo;
}
