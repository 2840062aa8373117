import type { TeamPage } from '../book/teamPage.ts';
import { teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

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
