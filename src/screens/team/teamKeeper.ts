import { openTeam } from '../../actions/openTeam.ts';

/** The one keeper of the team's books on this device. Nothing is opened before the Team place is gone to. */
export const teamKeeper = openTeam();
