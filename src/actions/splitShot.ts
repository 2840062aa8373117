import { placesAfterMove } from '../golf/moveInOrder.ts';
import { type Shot, shotSchema } from '../golf/shot.ts';
import { splitShot as parts } from '../golf/splitShot.ts';
import { findShot, putShot, type ShotRef, shotsOfRound } from '../logbook/shotStore.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { editOne } from './editOne.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** Parts an entry that was two shots; the answer is the second of them. Undo takes it back as one step. */
export function splitShot(keeper: Keeper, ref: ShotRef): Promise<Outcome<Shot, Gone | NotValid | ByTheRules>> {
  const { id, roundId } = ref;
  const newId = keeper.newId();
  return keeper.line.after(() =>
    write<Shot, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const round = await pen.db.rounds.get(roundId);
      const before = await findShot(pen.db, { id, roundId });
      if (!round || !before) return gone;
      const held = await earlierHeldBack(pen.db, roundId);
      if (held) return held;
      const there = await findShot(pen.db, { id: newId, roundId });
      if (there) return written(there);
      const { first, second } = parts(before);
      const made = { ...second, id: newId, roundId, changedAt: before.changedAt, device: '' };
      const checked = valid(shotSchema, made);
      if (checked.kind === 'refused') return checked;
      const shots = await shotsOfRound(pen.db, roundId);
      const places = placesAfterMove([...shots, checked.value], newId, { hole: before.hole, after: id });
      const images: Image[] = [];
      for (const shot of shots) {
        const changes = { ...places.get(shot.id), ...(shot.id === id ? first : {}) };
        if (Object.keys(changes).length === 0) continue;
        const edited = await editOne(pen, round, shot, changes);
        if (edited.kind === 'refused') return edited;
        images.push(edited.image);
      }
      const added = pen.stamped({ ...checked.value, ...places.get(newId) });
      await putShot(pen.db, added);
      images.push({ of: 'shot', id: newId, roundId, before: null, after: added.changedAt });
      await pen.remember('split shot', images);
      return written(added);
    }),
  );
}
