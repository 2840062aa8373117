import { swapClub as swaps } from '../golf/swapClub.ts';
import { shotsOfRound } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { editOne } from './editOne.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/**
 * Puts another club in place of one that was noted wrongly, all through a round, and tells how many shots that
 * changed. Undo takes it back as one step.
 *
 * @param from id of the club noted; null: the shots whose club was left open.
 */
export function swapClub(
  keeper: Keeper,
  roundId: string,
  from: string | null,
  to: string,
): Promise<Outcome<number, Gone | NotValid | ByTheRules>> {
  return keeper.line.after(() =>
    write<number, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const round = await pen.db.rounds.get(roundId);
      if (!round || !(await pen.db.clubs.get(to))) return gone;
      const held = await earlierHeldBack(pen.db, roundId);
      if (held) return held;
      const shots = new Map((await shotsOfRound(pen.db, roundId)).map((shot) => [shot.id, shot]));
      const images: Image[] = [];
      for (const { id, changes } of swaps([...shots.values()], from, to)) {
        const before = shots.get(id);
        if (!before) continue;
        const edited = await editOne(pen, round, before, changes);
        if (edited.kind === 'refused') return edited;
        images.push(edited.image);
      }
      if (images.length > 0) await pen.remember('swap club', images);
      return written(images.length);
    }),
  );
}
