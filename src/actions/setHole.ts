import { type Hole, holeSchema } from '../golf/hole.ts';
import { blankHole } from '../golf/newRound.ts';
import type { Round } from '../golf/round.ts';
import { type ByTheRules, earlierHeldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** What may be changed of a hole. */
export type HoleChanges = Partial<
  Pick<Hole, 'par' | 'length_m' | 'bearing_deg' | 'strokes' | 'penalties' | 'result' | 'putts'>
>;

/**
 * Changes what is noted of a hole: par, length, putts, penalties, strokes, result. A hole the round
 * does not have yet is added. Kept and tried again when the store does not take it.
 */
export function setHole(
  keeper: Keeper,
  roundId: string,
  number: number,
  changes: HoleChanges,
): Promise<Outcome<Hole, Gone | NotValid | ByTheRules>> {
  return keeper.line.add<Hole, Gone | NotValid | ByTheRules>({
    id: keeper.newId(),
    what: 'hole',
    roundId,
    shotId: null,
    apply: (shots) => shots,
    run: () =>
      write<Hole, Gone | NotValid | ByTheRules>(keeper, async (pen) => {
        const before = await pen.db.rounds.get(roundId);
        if (!before) return gone;
        const held = await earlierHeldBack(pen.db, roundId);
        if (held) return held;
        const there = before.holes.find((hole) => hole.number === number);
        const checked = valid(holeSchema, { ...(there ?? blankHole(number)), ...changes });
        if (checked.kind === 'refused') return checked;
        if (there && JSON.stringify(there) === JSON.stringify(checked.value)) return written(there);
        const after = withHole(before, checked.value, pen);
        await pen.db.rounds.put(after);
        await pen.remember('set hole', [{ of: 'round', id: roundId, before, after: after.changedAt }]);
        return written(checked.value);
      }),
  });
}

/**
 * The round with one hole changed. The other holes keep the stamp they had, so that two phones that
 * each noted other holes of a round lose none of them when they are merged.
 */
function withHole(round: Round, hole: Hole, pen: Pen): Round {
  const { changedAt: _changedAt, device: _device, ...changed } = hole;
  const others = round.holes.filter((other) => other.number !== hole.number);
  const dated = others.map((other) =>
    typeof other.changedAt === 'string' ? other : { ...other, changedAt: round.changedAt, device: round.device },
  );
  const holes = [...dated, changed as Hole].sort((one, other) => one.number - other.number);
  return { ...round, holes, changedAt: pen.stampAfter(round.changedAt), device: pen.deviceId };
}
