import { type Binned, ONLY } from '../logbook/database.ts';
import { openRoundId } from '../logbook/roundStore.ts';
import { findShot } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { bringBackRound, bringBackShot } from './binShot.ts';
import { type ByTheRules, heldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/** Days a deleted shot or round stays in the bin. */
const BIN_DAYS = 30;

const MS_PER_DAY = 86_400_000;

/**
 * Brings a deleted shot, or a deleted round with its shots, back. A shot whose round is gone must wait
 * for its round. A round that was open comes back closed when another is being played.
 */
export function restoreFromBin(keeper: Keeper, binned: Binned): Promise<Outcome<undefined, Gone | ByTheRules>> {
  return keeper.line.after(() =>
    write<undefined, Gone | ByTheRules>(keeper, async (pen) => {
      const { db } = pen;
      const kept = await db.bin.get(binned.id);
      if (!kept) {
        const there = binned.of === 'shot' ? await findShot(db, binned.shot) : await db.rounds.get(binned.id);
        return there ? written(undefined) : gone;
      }
      const roundId = kept.of === 'shot' ? kept.shot.roundId : kept.id;
      const held = await heldBack(db, { kind: 'edit', roundId });
      if (held) return held;
      if (kept.of === 'shot') {
        if (!(await db.rounds.get(kept.shot.roundId))) return gone;
        const back = await bringBackShot(pen, kept.shot);
        const { id, roundId, changedAt } = back;
        await pen.remember('restore shot', [{ of: 'shot', id, roundId, before: null, after: changedAt }]);
        return written(undefined);
      }
      const closed = kept.round.closed || (await openRoundId(db)) !== null;
      const round = await bringBackRound(pen, { ...kept.round, closed });
      const images: Image[] = [{ of: 'round', id: round.id, before: null, after: round.changedAt }];
      if (!closed) await db.openRound.put({ key: ONLY, roundId: kept.round.id });
      for (const shot of kept.shots) {
        const { id, roundId, changedAt } = await bringBackShot(pen, shot);
        images.push({ of: 'shot', id, roundId, before: null, after: changedAt });
      }
      await pen.remember('restore round', images);
      return written(undefined);
    }),
  );
}

/** Empties the bin of what has been in it for more than thirty days, and says how much that was. */
export function purgeBin(keeper: Keeper): Promise<Outcome<number>> {
  return write(keeper, async (pen) => {
    const last = Date.parse(pen.now) - BIN_DAYS * MS_PER_DAY;
    const old = (await pen.db.bin.toArray()).filter((binned) => Date.parse(binned.deletedAt) < last);
    await pen.db.bin.bulkDelete(old.map((binned) => binned.id));
    return written(old.length);
  });
}
