import type { Round } from '../golf/round.ts';
import { type LogbookDatabase, ONLY } from './database.ts';
import { shotsOfRound } from './shotStore.ts';

/**
 * Stores a round, and moves its shots to where those of an open or a closed round are kept. Every
 * closed round has a record of its shots, be it empty.
 */
export async function putRound(db: LogbookDatabase, round: Round): Promise<void> {
  const shots = await shotsOfRound(db, round.id);
  await db.rounds.put(round);
  if (round.closed) {
    await db.closedShots.put({ roundId: round.id, shots });
    await db.shots.bulkDelete(shots.map((shot) => shot.id));
    return;
  }
  // Touching the closed rounds for nothing would have every reader read them again.
  if (!(await db.closedShots.get(round.id))) return;
  await db.shots.bulkPut(shots);
  await db.closedShots.delete(round.id);
}

/** Takes a round and all its shots out of the store. */
export async function takeRound(db: LogbookDatabase, roundId: string): Promise<void> {
  const shots = await shotsOfRound(db, roundId);
  await db.shots.bulkDelete(shots.map((shot) => shot.id));
  await db.closedShots.delete(roundId);
  await db.rounds.delete(roundId);
  if ((await openRoundId(db)) === roundId) await db.openRound.delete(ONLY);
}

/** Id of the round being played; null: none. */
export async function openRoundId(db: LogbookDatabase): Promise<string | null> {
  const pointer = await db.openRound.get(ONLY);
  if (!pointer) return null;
  const round = await db.rounds.get(pointer.roundId);
  return round && !round.closed ? pointer.roundId : null;
}
