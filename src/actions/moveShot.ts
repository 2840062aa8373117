import { type MoveTo, placesAfterMove } from '../golf/moveInOrder.ts';
import type { Shot } from '../golf/shot.ts';
import { putShot, type ShotRef, shotsOfRound } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/**
 * Moves a shot to another place in the order of its round. Kept and tried again when the store does
 * not take it.
 */
export function moveShot(keeper: Keeper, ref: ShotRef, to: MoveTo): Promise<Outcome<Shot, Gone | ByTheRules>> {
  const { id, roundId } = ref;
  return keeper.line.add<Shot, Gone | ByTheRules>({
    id: keeper.newId(),
    what: 'move',
    roundId,
    shotId: id,
    apply: (shots) => (shots.some((shot) => shot.id === id) ? moved(shots, id, to) : shots),
    run: () =>
      write<Shot, Gone | ByTheRules>(keeper, async (pen) => {
        const shots = await shotsOfRound(pen.db, roundId);
        if (!shots.some((shot) => shot.id === id)) return gone;
        const held = await earlierHeldBack(pen.db, roundId);
        if (held) return held;
        const images: Image[] = [];
        let result: Shot | undefined;
        for (const [index, after] of moved(shots, id, to).entries()) {
          const before = shots[index];
          if (before.hole !== after.hole || before.number !== after.number) {
            const stamped = pen.stamped(after, before.changedAt);
            await putShot(pen.db, stamped);
            images.push({ of: 'shot', id: before.id, roundId, before, after: stamped.changedAt });
            if (before.id === id) result = stamped;
          } else if (before.id === id) result = before;
        }
        if (images.length > 0) await pen.remember('move shot', images);
        return result ? written(result) : gone;
      }),
  });
}

/** The shots in the order given, at the places they have after the move. */
function moved(shots: readonly Shot[], id: string, to: MoveTo): Shot[] {
  const places = placesAfterMove(shots, id, to);
  return shots.map((shot) => ({ ...shot, ...places.get(shot.id) }));
}
