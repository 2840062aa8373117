import { type MergeReport, mergeReport } from '../exchange/mergeReport.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';
import { inOrder } from '../golf/shotOrder.ts';
import { type ClosedShots, type LogbookDatabase, newDevice, newPlayer, ONLY } from './database.ts';
import { restOf } from './fileRest.ts';
import { readLogbook } from './readLogbook.ts';

/** Where the shots of a logbook are kept: those of open rounds one by one, the others a record a round. */
function placed(logbook: Logbook): { open: Shot[]; closed: ClosedShots[] } {
  const openRounds = new Set(logbook.rounds.filter((round) => !round.closed).map((round) => round.id));
  const byRound = new Map<string, Shot[]>();
  for (const round of logbook.rounds) if (round.closed) byRound.set(round.id, []);
  const open: Shot[] = [];
  for (const shot of logbook.shots) {
    if (openRounds.has(shot.roundId)) {
      open.push(shot);
      continue;
    }
    const shots = byRound.get(shot.roundId);
    if (shots) shots.push(shot);
    else byRound.set(shot.roundId, [shot]);
  }
  return { open, closed: [...byRound].map(([roundId, shots]) => ({ roundId, shots: inOrder(shots) })) };
}

/** The stores that hold the golfer's records, as against what belongs to this phone. */
function recordStores(db: LogbookDatabase) {
  return [db.player, db.clubs, db.rounds, db.shots, db.closedShots, db.reviews, db.done, db.deleted];
}

async function putRecords(db: LogbookDatabase, logbook: Logbook): Promise<void> {
  await Promise.all(recordStores(db).map((store) => store.clear()));
  const { open, closed } = placed(logbook);
  await Promise.all([
    db.player.put(logbook.player),
    db.clubs.bulkPut([...logbook.clubs]),
    db.rounds.bulkPut([...logbook.rounds]),
    db.shots.bulkPut(open),
    db.closedShots.bulkPut(closed),
    db.reviews.bulkPut([...logbook.reviews]),
    db.done.bulkPut([...logbook.done]),
    db.deleted.bulkPut([...logbook.deleted]),
    db.settings.put({ key: 'file rest', rest: restOf(logbook) }),
  ]);
}

function latestOpen(rounds: readonly Round[]): Round | undefined {
  const key = (round: Round) => `${round.date} ${round.startedAt ?? ''} ${round.id}`;
  return rounds.filter((round) => !round.closed).sort((one, other) => (key(one) < key(other) ? 1 : -1))[0];
}

/** Points at the round being played: the one before if it is still open, else the latest open one. */
async function pointAtOpenRound(db: LogbookDatabase, rounds: readonly Round[]): Promise<void> {
  const before = await db.openRound.get(ONLY);
  const round = rounds.find((each) => each.id === before?.roundId && !each.closed) ?? latestOpen(rounds);
  if (round) await db.openRound.put({ key: ONLY, roundId: round.id });
  else await db.openRound.delete(ONLY);
}

/** Puts a logbook in place of the one stored, all of it or nothing. The bin and the undo stack go. */
export function replaceLogbook(db: LogbookDatabase, logbook: Logbook): Promise<void> {
  return db.transaction('rw', db.tables, async () => {
    await putRecords(db, logbook);
    await Promise.all([db.bin.clear(), db.undo.clear(), db.draft.clear(), db.openRound.clear()]);
    await pointAtOpenRound(db, logbook.rounds);
  });
}

/** Merges a logbook into the one stored, all of it or nothing, and says what that did. */
export function mergeIn(db: LogbookDatabase, logbook: Logbook): Promise<MergeReport> {
  return db.transaction('rw', db.tables, async () => {
    const { merged, report } = mergeReport(await readLogbook(db), logbook);
    await putRecords(db, merged);
    await pointAtOpenRound(db, merged.rounds);
    return report;
  });
}

/**
 * Empties every store in one transaction and leaves a new golfer on a new device. The database itself
 * stays: deleting it would wait for every other tab to let go.
 */
export function eraseLogbook(db: LogbookDatabase, playerId: string, deviceId: string): Promise<void> {
  return db.transaction('rw', db.tables, async () => {
    await Promise.all(db.tables.map((table) => table.clear()));
    await db.player.put(newPlayer(playerId));
    await db.device.put(newDevice(deviceId));
  });
}
