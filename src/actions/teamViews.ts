import { teamTables } from '../logbook/teamStore.ts';
import { cleanName } from './cleanName.ts';
import type { Keeper } from './keeper.ts';
import { type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { write } from './write.ts';

const unnamed = refuse<NotValid>({ kind: 'not valid', path: 'name' });

/** Saves a way of looking at the table under a name; a view of that name is replaced. */
export function saveView(
  team: Keeper,
  name: string,
  view: Readonly<Record<string, string>>,
): Promise<Outcome<undefined, NotValid>> {
  const newId = team.newId();
  const clean = cleanName(name);
  return write<undefined, NotValid>(team, async ({ db }) => {
    if (clean === '') return unnamed;
    const { views } = teamTables(db);
    const same = (await views.toArray()).find((other) => other.name === clean);
    await views.put({ id: same?.id ?? newId, name: clean, view });
    return written(undefined);
  });
}

/** Removes a saved view. */
export function removeView(team: Keeper, id: string): Promise<Outcome> {
  return write(team, async ({ db }) => {
    await teamTables(db).views.delete(id);
    return written(undefined);
  });
}
