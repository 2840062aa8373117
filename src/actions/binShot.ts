import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';
import type { Tombstone } from '../golf/tombstone.ts';
import { putRound, takeRound } from '../logbook/roundStore.ts';
import { putShot, shotsOfRound, takeShot } from '../logbook/shotStore.ts';
import type { Pen } from './pen.ts';

/** Leaves a tombstone that wins over the record as it was. */
export async function leaveTombstone(pen: Pen, of: Tombstone['of'], record: { id: string; changedAt: string }) {
  await pen.db.deleted.put({ id: record.id, of, at: pen.stampAfter(record.changedAt), device: pen.deviceId });
}

/** Takes a tombstone away and tells when it was left; an array, for a stamp to be later than. */
export async function liftTombstone(pen: Pen, of: Tombstone['of'], id: string): Promise<string[]> {
  const tombstone = await pen.db.deleted.get([of, id]);
  if (!tombstone) return [];
  await pen.db.deleted.delete([of, id]);
  return [tombstone.at];
}

/** Moves a shot to the bin and leaves its tombstone. */
export async function binShot(pen: Pen, shot: Shot): Promise<void> {
  await takeShot(pen.db, shot);
  await leaveTombstone(pen, 'shot', shot);
  await pen.db.bin.put({ of: 'shot', id: shot.id, deletedAt: pen.now, shot });
}

/** Stores a shot in place of what is there or of what was deleted, later than both. */
export async function bringBackShot(pen: Pen, shot: Shot, ...moments: readonly string[]): Promise<Shot> {
  const lifted = await liftTombstone(pen, 'shot', shot.id);
  const back = pen.stamped(shot, shot.changedAt, ...lifted, ...moments);
  await putShot(pen.db, back);
  await pen.db.bin.delete(shot.id);
  return back;
}

/** Moves a round with its shots to the bin and leaves their tombstones. */
export async function binRound(pen: Pen, round: Round): Promise<readonly Shot[]> {
  const shots = await shotsOfRound(pen.db, round.id);
  await takeRound(pen.db, round.id);
  await leaveTombstone(pen, 'round', round);
  for (const shot of shots) await leaveTombstone(pen, 'shot', shot);
  await pen.db.bin.put({ of: 'round', id: round.id, deletedAt: pen.now, round, shots });
  return shots;
}

/** Stores a round in place of what is there or of what was deleted, later than both. */
export async function bringBackRound(pen: Pen, round: Round, ...moments: readonly string[]): Promise<Round> {
  const lifted = await liftTombstone(pen, 'round', round.id);
  const back = pen.stamped(round, round.changedAt, ...lifted, ...moments);
  await putRound(pen.db, back);
  await pen.db.bin.delete(round.id);
  return back;
}
