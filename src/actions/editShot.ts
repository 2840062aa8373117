import { type Shot, shotSchema } from '../golf/shot.ts';
import type { ShotChanges } from '../golf/shotEntry.ts';
import { findShot, putShot, type ShotRef } from '../logbook/shotStore.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { shotSpec } from './shotSpec.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** Whether the changes would leave the shot as it is. */
function changesNothing(shot: Shot, changes: ShotChanges): boolean {
  return Object.entries(changes).every(([key, value]) => JSON.stringify(shot[key]) === JSON.stringify(value));
}

/**
 * Changes slots of a shot; the others stay as they are, also when another tab changed them meanwhile.
 * Another club takes the spec period it was in on the day of the round. Kept and tried again when the
 * store does not take it.
 */
export function editShot(
  keeper: Keeper,
  ref: ShotRef,
  changes: ShotChanges,
): Promise<Outcome<Shot, Gone | NotValid | ByTheRules>> {
  const { id, roundId } = ref;
  return keeper.line.add<Shot, Gone | NotValid | ByTheRules>({
    id: keeper.newId(),
    what: 'edit',
    roundId,
    shotId: id,
    apply: (shots) => shots.map((shot) => (shot.id === id ? { ...shot, ...changes } : shot)),
    run: () =>
      write<Shot, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
        const round = await pen.db.rounds.get(roundId);
        const before = await findShot(pen.db, { id, roundId });
        if (!round || !before) return gone;
        const held = await earlierHeldBack(pen.db, roundId);
        if (held) return held;
        if (changesNothing(before, changes)) return written(before);
        const clubId = changes.clubId === undefined ? before.clubId : changes.clubId;
        const specId = clubId === before.clubId ? before.specId : await shotSpec(pen.db, clubId, round);
        const checked = valid(shotSchema, { ...before, specId, ...changes });
        if (checked.kind === 'refused') return checked;
        const after = pen.stamped(checked.value, before.changedAt);
        await putShot(pen.db, after);
        await pen.remember('edit shot', [{ of: 'shot', id, roundId, before, after: after.changedAt }]);
        return written(after);
      }),
  });
}
