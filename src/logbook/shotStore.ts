import type { Shot } from '../golf/shot.ts';
import { inOrder } from '../golf/shotOrder.ts';
import type { LogbookDatabase } from './database.ts';

/** What is needed to find a shot again; a shot is one. */
export type ShotRef = Pick<Shot, 'id' | 'roundId'>;

/** The shots of a round, by hole and in the order played. */
export async function shotsOfRound(db: LogbookDatabase, roundId: string): Promise<Shot[]> {
  const [open, closed] = await Promise.all([db.shots.toArray(), db.closedShots.get(roundId)]);
  return inOrder([...open.filter((shot) => shot.roundId === roundId), ...(closed?.shots ?? [])]);
}

/** The shot; undefined when the logbook has none of that id in that round. */
export async function findShot(db: LogbookDatabase, ref: ShotRef): Promise<Shot | undefined> {
  const open = await db.shots.get(ref.id);
  if (open) return open.roundId === ref.roundId ? open : undefined;
  const closed = await db.closedShots.get(ref.roundId);
  return closed?.shots.find((shot) => shot.id === ref.id);
}

/** Stores a shot where the shots of its round are kept, in place of an earlier one of its id. */
export async function putShot(db: LogbookDatabase, shot: Shot): Promise<void> {
  const round = await db.rounds.get(shot.roundId);
  if (round && !round.closed) {
    await db.shots.put(shot);
    return;
  }
  const closed = await db.closedShots.get(shot.roundId);
  const others = (closed?.shots ?? []).filter((other) => other.id !== shot.id);
  await db.closedShots.put({ roundId: shot.roundId, shots: inOrder([...others, shot]) });
}

/** Takes a shot out of the store; nothing happens when it is not there. */
export async function takeShot(db: LogbookDatabase, ref: ShotRef): Promise<void> {
  await db.shots.delete(ref.id);
  const closed = await db.closedShots.get(ref.roundId);
  if (!closed?.shots.some((shot) => shot.id === ref.id)) return;
  await db.closedShots.put({ roundId: ref.roundId, shots: closed.shots.filter((shot) => shot.id !== ref.id) });
}
