import type { LookedAtNumber } from '../book/teamTable.ts';
import { teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/** Notes that the coach reviewed a golfer now: later changes are told against these numbers. */
export function noteLooked(team: Keeper, playerId: string, numbers: readonly LookedAtNumber[]): Promise<Outcome> {
  return write(team, async ({ db, now }) => {
    await teamTables(db).looks.put({ playerId, at: now, numbers });
    return written(undefined);
  });
}
