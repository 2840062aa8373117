import { type Player, playerSchema } from '../golf/player.ts';
import { ONLY } from '../logbook/database.ts';
import { readPlayer } from '../logbook/readLogbook.ts';
import type { Settings } from '../logbook/settings.ts';
import type { Keeper } from './keeper.ts';
import { type NotValid, type Outcome, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** Saves choices about the app on this phone; the others stay. */
export function saveSettings(keeper: Keeper, changes: Partial<Settings>): Promise<Outcome> {
  return write(keeper, async (pen) => {
    await pen.db.settings.put({ ...(await pen.db.settings.get(ONLY)), ...changes, key: ONLY });
    return written(undefined);
  });
}

/** Saves what the golfer says about themselves: nickname, hand, unit of length, swings of their own. */
export function savePlayer(
  keeper: Keeper,
  changes: Partial<Pick<Player, 'name' | 'hand' | 'units' | 'swings'>>,
): Promise<Outcome<Player, NotValid>> {
  return write<Player, NotValid>(keeper, async (pen) => {
    const before = await readPlayer(pen.db);
    const checked = valid(playerSchema, { ...before, ...changes });
    if (checked.kind === 'refused') return checked;
    const after = pen.stamped(checked.value, before.changedAt);
    await pen.db.player.put(after);
    return written(after);
  });
}
