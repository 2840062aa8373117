import { findShot, type ShotRef } from '../logbook/shotStore.ts';
import { binShot } from './binShot.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/**
 * Deletes a shot: it stays in the bin for thirty days, and its tombstone keeps an old file from
 * bringing it back. Kept and tried again when the store does not take it.
 */
export function deleteShot(keeper: Keeper, ref: ShotRef): Promise<Outcome<undefined, Gone | ByTheRules>> {
  const { id, roundId } = ref;
  return keeper.line.add<undefined, Gone | ByTheRules>({
    id: keeper.newId(),
    what: 'delete',
    roundId,
    shotId: id,
    apply: (shots) => shots.filter((shot) => shot.id !== id),
    run: () =>
      write<undefined, Gone | ByTheRules>(keeper, async (pen) => {
        const before = await findShot(pen.db, { id, roundId });
        if (!before) return (await pen.db.bin.get(id)) ? written(undefined) : gone;
        const held = await earlierHeldBack(pen.db, roundId);
        if (held) return held;
        await binShot(pen, before);
        await pen.remember('delete shot', [{ of: 'shot', id, roundId, before, after: null }]);
        return written(undefined);
      }),
  });
}
