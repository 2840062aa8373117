import { type Round, roundSchema } from '../golf/round.ts';
import type { PlayEvent } from '../golf/rulesOfPlay.ts';
import { sameFreeze } from '../golf/shownLogbook.ts';
import type { Image } from '../logbook/undoEntry.ts';
import { binRound } from './binShot.ts';
import { type ByTheRules, heldBack, openRoundOf } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** What may be changed of a round apart from its holes, its shots and whether it is open. */
export type RoundChanges = Partial<
  Pick<
    Round,
    'date' | 'course' | 'tees' | 'startHole' | 'play' | 'bag' | 'ball' | 'distanceDevices' | 'conditions' | 'frozenBook'
  >
>;

/** A change of what the freeze rests on would thaw the book; the receiver may be switched off, not on. */
async function freezeEvents(pen: Pen, before: Round, changes: RoundChanges): Promise<PlayEvent[]> {
  if ((await openRoundOf(pen.db))?.id !== before.id) return [];
  const events: PlayEvent[] = sameFreeze(before, { ...before, ...changes }) ? [] : [{ kind: 'change evidence' }];
  return changes.distanceDevices === true && !before.distanceDevices ? [...events, { kind: 'mark' }] : events;
}

/**
 * Changes what is noted of a round. While it is played by the Rules it stays so, with its bag and its
 * frozen book, and a round without distance devices stays one.
 */
export function editRound(
  keeper: Keeper,
  roundId: string,
  changes: RoundChanges,
): Promise<Outcome<Round, Gone | NotValid | ByTheRules>> {
  return keeper.line.after(() =>
    write<Round, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return gone;
      const held = await heldBack(pen.db, { kind: 'edit', roundId }, ...(await freezeEvents(pen, before, changes)));
      if (held) return held;
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
export function deleteRound(keeper: Keeper, roundId: string): Promise<Outcome<undefined, Gone | ByTheRules>> {
  return keeper.line.after(() =>
    write<undefined, Gone | ByTheRules>(keeper, async (pen) => {
      const before = await pen.db.rounds.get(roundId);
      if (!before) return (await pen.db.bin.get(roundId)) ? written(undefined) : gone;
      const held = await heldBack(pen.db, { kind: 'delete', roundId });
      if (held) return held;
      const shots = await binRound(pen, before);
      const lost = shots.map((shot): Image => ({ of: 'shot', id: shot.id, roundId, before: shot, after: null }));
      await pen.remember('delete round', [{ of: 'round', id: roundId, before, after: null }, ...lost]);
      return written(undefined);
    }),
  );
}
