import { measuresToCome } from '../golf/markChain.ts';
import type { Round } from '../golf/round.ts';
import { ONLY } from '../logbook/database.ts';
import { openRoundId, putRound } from '../logbook/roundStore.ts';
import { putShot, shotsOfRound } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, refuse, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import type { RoundOpen } from './startRound.ts';
import { write } from './write.ts';

/** Works out the distances between the marks of a round that is over; during a round by the Rules they waited. */
async function measureMarks(pen: Pen, roundId: string): Promise<Image[]> {
  const images: Image[] = [];
  for (const shot of await shotsOfRound(pen.db, roundId)) {
    const measures = measuresToCome(shot);
    if (!measures) continue;
    const after = pen.stamped({ ...shot, ...measures }, shot.changedAt);
    await putShot(pen.db, after);
    images.push({ of: 'shot', id: shot.id, roundId, before: shot, after: after.changedAt });
  }
  return images;
}

/**
 * Closes a round ("round over"): its shots become one record, what their marks measure is worked
 * out, the half-entered shot is let go, and it feeds the book from now on. Shots still unsaved are written first; while they cannot be, the round
 * stays open.
 */
export function closeRound(keeper: Keeper, roundId: string): Promise<Outcome<Round, Gone>> {
  return keeper.line.after(async () => {
    const waiting = keeper.unsaved.peek().find((unsaved) => unsaved.roundId === roundId);
    if (waiting) return { kind: 'unsaved', why: waiting.why };
    return write<Round, Gone>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return gone;
      if (before.closed) return written(before);
      const measured = await measureMarks(pen, roundId);
      const after = pen.stamped({ ...before, closed: true, closedAt: pen.now }, before.changedAt);
      await putRound(pen.db, after);
      if ((await pen.db.openRound.get(ONLY))?.roundId === roundId) await pen.db.openRound.delete(ONLY);
      if ((await pen.db.draft.get(ONLY))?.roundId === roundId) await pen.db.draft.delete(ONLY);
      await pen.remember('close round', [{ of: 'round', id: roundId, before, after: after.changedAt }, ...measured]);
      return written(after);
    });
  });
}

/** Opens a closed round again, unless another is being played. */
export function reopenRound(keeper: Keeper, roundId: string): Promise<Outcome<Round, Gone | RoundOpen>> {
  return keeper.line.after(() =>
    write<Round, Gone | RoundOpen>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return gone;
      const open = await openRoundId(pen.db);
      if (open !== null && open !== roundId) return refuse({ kind: 'round open', roundId: open });
      await pen.db.openRound.put({ key: ONLY, roundId });
      if (!before.closed) return written(before);
      const after = pen.stamped({ ...before, closed: false, closedAt: null }, before.changedAt);
      await putRound(pen.db, after);
      await pen.remember('reopen round', [{ of: 'round', id: roundId, before, after: after.changedAt }]);
      return written(after);
    }),
  );
}
