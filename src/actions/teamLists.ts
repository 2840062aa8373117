import type { TeamPage } from '../book/teamPage.ts';
import type { LookedAtNumber } from '../book/teamTable.ts';
import { cleanText, NAME_LIMIT } from '../golf/text.ts';
import { teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { write } from './write.ts';

function cleanName(name: string): string {
  return cleanText(name).replace(/\s+/g, ' ').trim().slice(0, NAME_LIMIT);
}

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

/** Notes that the coach reviewed a golfer now: later changes are told against these numbers. */
export function noteLooked(team: Keeper, playerId: string, numbers: readonly LookedAtNumber[]): Promise<Outcome> {
  return write(team, async ({ db, now }) => {
    await teamTables(db).looks.put({ playerId, at: now, numbers });
    return written(undefined);
  });
}

/** Keeps a page that was reckoned, in the stead of earlier ones of the same golfer; not for one deleted meanwhile. */
export function savePage(team: Keeper, playerId: string, key: string, page: TeamPage): Promise<Outcome> {
  return write(team, async ({ db }) => {
    const { pages, members } = teamTables(db);
    if (!(await members.get(playerId))) return written(undefined);
    await pages.filter((other) => other.playerId === playerId && other.key !== key).delete();
    await pages.put({ key, playerId, page });
    return written(undefined);
  });
}
