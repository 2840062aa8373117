import type { Club } from '../golf/club.ts';
import { clubEvents } from '../golf/clubInPlay.ts';
import type { Round } from '../golf/round.ts';
import { judge, type PlayEvent, playState, type Refusing } from '../golf/rulesOfPlay.ts';
import type { LogbookDatabase } from '../logbook/database.ts';
import { openRoundId } from '../logbook/roundStore.ts';
import { type Refused, refuse } from './outcome.ts';

/** A round by the Rules is being played, and this waits until it is over; `why` names the clause. */
export interface ByTheRules {
  readonly kind: 'by the Rules';
  readonly why: Refusing;
}

/** The round being played; null: none. */
export async function openRoundOf(db: LogbookDatabase): Promise<Round | null> {
  const id = await openRoundId(db);
  return id === null ? null : ((await db.rounds.get(id)) ?? null);
}

/** The refusal of the first of the events that the round being played does not allow; null: all are allowed. */
export async function heldBack(
  db: LogbookDatabase,
  ...events: readonly PlayEvent[]
): Promise<Refused<ByTheRules> | null> {
  const open = await openRoundOf(db);
  if (open === null) return null;
  const inBag = (await db.clubs.toArray()).filter((club) => club.inBag).map((club) => club.id);
  let state = playState(open, inBag);
  for (const event of events) {
    const verdict = judge(state, event);
    if (verdict.kind === 'not allowed') return refuse({ kind: 'by the Rules', why: verdict.why });
    state = verdict.state;
  }
  return null;
}

/** The refusal of a change of a round that is not the one being played; null: it is that one, or it is allowed. */
export async function earlierHeldBack(db: LogbookDatabase, roundId: string): Promise<Refused<ByTheRules> | null> {
  return (await openRoundId(db)) === roundId ? null : heldBack(db, { kind: 'edit', roundId });
}

/** The refusal of changes of clubs that the round being played does not allow; null: all are allowed. */
export async function clubsHeldBack(
  db: LogbookDatabase,
  changes: readonly { readonly before: Club | null; readonly after: Club | null }[],
): Promise<Refused<ByTheRules> | null> {
  const startedWith = (await openRoundOf(db))?.bag ?? [];
  return heldBack(db, ...changes.flatMap(({ before, after }) => clubEvents(startedWith, before, after)));
}
