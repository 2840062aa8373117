import { eraseLogbook } from '../logbook/replaceLogbook.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, written } from './outcome.ts';
import { saveSettings } from './saveSettings.ts';
import type { Shelf } from './shelf.ts';
import { write } from './write.ts';

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
