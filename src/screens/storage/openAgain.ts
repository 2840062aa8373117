import type { Keeper } from '../../actions/keeper.ts';

/** Lets go of logbooks that could not be read and opens them anew; whoever shows them is told what came of it. */
export async function openAgain(keepers: readonly Keeper[]): Promise<void> {
  for (const { connection } of keepers) {
    connection.close();
    await connection.withDatabase(async (db) => db.player.count());
  }
}
