import { TEAM_STORE, teamVersions } from '../logbook/teamStore.ts';
import { type Keeper, type KeeperOptions, keepLogbook } from './keeper.ts';

/** Opens the team's books: a store apart from the golfer's own, so that no shot of another can ever mix with them. */
export function openTeam(options: Omit<KeeperOptions, 'versions'> = {}): Keeper {
  return keepLogbook({ name: TEAM_STORE, ...options, versions: teamVersions });
}
