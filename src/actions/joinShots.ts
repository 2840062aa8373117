import { joinShots as joined } from '../golf/joinShots.ts';
import type { Shot } from '../golf/shot.ts';
import { findShot, type ShotRef } from '../logbook/shotStore.ts';
import { binShot } from './binShot.ts';
import { editOne } from './editOne.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/**
 * Makes one shot of two entries that were one; the second goes to the bin. Undo takes it back as one step.
 *
 * @param secondId id of the entry that was no shot of its own, of the same round.
 */
export function joinShots(
  keeper: Keeper,
  first: ShotRef,
  secondId: string,
): Promise<Outcome<Shot, Gone | NotValid | ByTheRules>> {
  const { id, roundId } = first;
  return keeper.line.after(() =>
    write<Shot, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const round = await pen.db.rounds.get(roundId);
      const before = await findShot(pen.db, { id, roundId });
      const second = await findShot(pen.db, { id: secondId, roundId });
      if (!round || !before || !second || id === secondId) return gone;
      const held = await earlierHeldBack(pen.db, roundId);
      if (held) return held;
      const edited = await editOne(pen, round, before, joined(before, second));
      if (edited.kind === 'refused') return edited;
      await binShot(pen, second);
      await pen.remember('join shots', [
        edited.image,
        { of: 'shot', id: secondId, roundId, before: second, after: null },
      ]);
      return written(edited.shot);
    }),
  );
}
