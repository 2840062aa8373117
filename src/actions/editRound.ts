import { type Round, roundSchema } from '../golf/round.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { binRound } from './binShot.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** What may be changed of a round apart from its holes, its shots and whether it is open. */
export type RoundChanges = Partial<
  Pick<
    Round,
    'date' | 'course' | 'tees' | 'startHole' | 'play' | 'bag' | 'ball' | 'distanceDevices' | 'conditions' | 'frozenBook'
  >
>;

/** Changes what is noted of a round. */
export function editRound(
  keeper: Keeper,
  roundId: string,
  changes: RoundChanges,
): Promise<Outcome<Round, Gone | NotValid>> {
  return keeper.line.after(() =>
    write<Round, Gone | NotValid>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return gone;
      const checked = valid(roundSchema, { ...before, ...changes });
      if (checked.kind === 'refused') return checked;
      const after = pen.stamped(checked.value, before.changedAt);
      await pen.db.rounds.put(after);
      await pen.remember('edit round', [{ of: 'round', id: roundId, before, after: after.changedAt }]);
      return written(after);
    }),
  );
}

/** Deletes a round with its shots; the bin keeps them together for thirty days. */
export function deleteRound(keeper: Keeper, roundId: string): Promise<Outcome<undefined, Gone>> {
  return keeper.line.after(() =>
    write<undefined, Gone>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return (await pen.db.bin.get(roundId)) ? written(undefined) : gone;
      const shots = await binRound(pen, before);
      const lost = shots.map((shot): Image => ({ of: 'shot', id: shot.id, roundId, before: shot, after: null }));
      await pen.remember('delete round', [{ of: 'round', id: roundId, before, after: null }, ...lost]);
      return written(undefined);
    }),
  );
}
