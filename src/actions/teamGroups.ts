import { teamTables } from '../logbook/teamStore.ts';
import { cleanName } from './cleanName.ts';
import type { Keeper } from './keeper.ts';
import { type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { write } from './write.ts';

const unnamed = refuse<NotValid>({ kind: 'not valid', path: 'name' });

/** Saves a group of golfers under a name; without an id a new one. */
export function saveGroup(
  team: Keeper,
  group: { readonly id: string | null; readonly name: string; readonly playerIds: readonly string[] },
): Promise<Outcome<string, NotValid>> {
  const id = group.id ?? team.newId();
  const name = cleanName(group.name);
  return write<string, NotValid>(team, async ({ db }) => {
    if (name === '') return unnamed;
    await teamTables(db).groups.put({ id, name, playerIds: [...new Set(group.playerIds)].sort() });
    return written(id);
  });
}

/** Removes a group; its golfers stay. */
export function removeGroup(team: Keeper, id: string): Promise<Outcome> {
  return write(team, async ({ db }) => {
    await teamTables(db).groups.delete(id);
    return written(undefined);
  });
}
