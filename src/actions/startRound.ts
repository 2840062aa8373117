import { bagGate } from '../golf/bagGate.ts';
import { type RoundStart, startingHoles } from '../golf/newRound.ts';
import { type Round, roundSchema } from '../golf/round.ts';
import { ONLY } from '../logbook/database.ts';
import { openRoundId, putRound } from '../logbook/roundStore.ts';
import { localDay } from './clock.ts';
import type { Keeper } from './keeper.ts';
import { type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** Another round is being played. */
export interface RoundOpen {
  readonly kind: 'round open';
  readonly roundId: string;
}

/** More clubs in the bag than a round by the Rules may be started with. */
export interface TooManyClubs {
  readonly kind: 'too many clubs';
  readonly clubs: number;
}

/**
 * Starts a round with the clubs that are in the bag. Only one round is played at a time, and a round
 * by the Rules starts with at most fourteen clubs (Rule 4.1b).
 */
export function startRound(
  keeper: Keeper,
  start: RoundStart,
): Promise<Outcome<Round, RoundOpen | TooManyClubs | NotValid>> {
  const id = keeper.newId();
  return keeper.line.after(() =>
    write<Round, RoundOpen | TooManyClubs | NotValid>(keeper, async (pen) => {
      const there = await pen.db.rounds.get(id);
      if (there) return written(there);
      const open = await openRoundId(pen.db);
      if (open !== null) return refuse({ kind: 'round open', roundId: open });
      const inBag = (await pen.db.clubs.toArray()).filter((club) => club.inBag);
      const gate = bagGate(inBag);
      if (start.play === 'rules' && gate.kind === 'too many')
        return refuse({ kind: 'too many clubs', clubs: gate.clubs });
      const { holes: _holes, ...said } = start;
      const checked = valid(roundSchema, {
        ...said,
        id,
        date: start.date ?? localDay(keeper.clock.now()),
        startHole: start.play === 'practice ground' ? 1 : start.startHole,
        startedAt: pen.now,
        closed: false,
        bag: inBag.map((club) => club.id),
        holes: startingHoles(start, await pen.db.rounds.toArray()),
      });
      if (checked.kind === 'refused') return checked;
      const round = pen.stamped(checked.value);
      await putRound(pen.db, round);
      await pen.db.openRound.put({ key: ONLY, roundId: id });
      return written(round);
    }),
  );
}
