import { NEVER_CHANGED } from '../golf/instant.ts';
import { type Shot, shotSchema } from '../golf/shot.ts';
import type { ShotEntry } from '../golf/shotEntry.ts';
import { findShot, putShot } from '../logbook/shotStore.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { shotSpec } from './shotSpec.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/**
 * Logs a shot of a round. It counts as saved only when its transaction has reached the disk; until
 * then it is kept in `keeper.unsaved` and tried again. The spec period is that of the club on the day
 * of the round; the moment is now when the entry names none.
 */
export async function logShot(
  keeper: Keeper,
  roundId: string,
  entry: ShotEntry,
): Promise<Outcome<Shot, Gone | NotValid | ByTheRules>> {
  const id = keeper.newId();
  const at = entry.at ?? new Date(keeper.clock.now()).toISOString();
  const checked = valid(shotSchema, { ...entry, id, roundId, at, changedAt: NEVER_CHANGED, device: '' });
  if (checked.kind === 'refused') return checked;
  const shot = checked.value;
  return keeper.line.add<Shot, Gone | NotValid | ByTheRules>({
    id: keeper.newId(),
    what: 'log',
    roundId,
    shotId: id,
    apply: (shots) => [...shots.filter((other) => other.id !== id), shot],
    run: () =>
      write<Shot, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
        const round = await pen.db.rounds.get(roundId);
        if (!round || (await pen.db.deleted.get(['shot', id]))) return gone;
        const there = await findShot(pen.db, shot);
        if (there) return written(there);
        const held = await earlierHeldBack(pen.db, roundId);
        if (held) return held;
        const specId = await shotSpec(pen.db, shot.clubId, round);
        const logged = pen.stamped({ ...shot, specId });
        await putShot(pen.db, logged);
        await pen.remember('log shot', [{ of: 'shot', id, roundId, before: null, after: logged.changedAt }]);
        return written(logged);
      }),
  });
}
