import { computed, type ReadonlySignal } from '@preact/signals';
import type { Club } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Player } from '../golf/player.ts';
import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';
import type { Connection } from './connection.ts';
import { type Binned, type LogbookDatabase, ONLY } from './database.ts';
import type { Draft } from './draft.ts';
import { type Live, liveSignal } from './liveSignal.ts';
import { readOpenPages, readPlayer, withClosedShots } from './readLogbook.ts';
import { openRoundId } from './roundStore.ts';
import { defaultSettings, type Settings } from './settings.ts';
import { shotsOfRound } from './shotStore.ts';
import type { UndoEntry } from './undoEntry.ts';

/** A round and its shots, by hole and in the order played. */
export interface RoundWithShots {
  readonly round: Round;
  readonly shots: readonly Shot[];
}

/** One signal for each connection, so that several screens share one reading. */
function shared<T>(make: (connection: Connection) => ReadonlySignal<Live<T>>) {
  const made = new WeakMap<Connection, ReadonlySignal<Live<T>>>();
  return (connection: Connection): ReadonlySignal<Live<T>> => {
    const live = made.get(connection) ?? make(connection);
    made.set(connection, live);
    return live;
  };
}

function sharedQuery<T>(query: (db: LogbookDatabase) => Promise<T>) {
  return shared((connection) => liveSignal(connection, query));
}

async function readRound(db: LogbookDatabase, roundId: string | null): Promise<RoundWithShots | null> {
  const round = roundId === null ? undefined : await db.rounds.get(roundId);
  return round ? { round, shots: await shotsOfRound(db, round.id) } : null;
}

/** A round with its shots; null when there is none of that id. */
export function liveRound(connection: Connection, roundId: string): ReadonlySignal<Live<RoundWithShots | null>> {
  return liveSignal(connection, (db) => readRound(db, roundId));
}

/** The round being played with its shots; null: none. */
export const liveOpenRound = sharedQuery(async (db) => readRound(db, await openRoundId(db)));

/** All rounds, the latest first. */
export const liveRounds = sharedQuery<Round[]>(async (db) => {
  const key = (round: Round) => `${round.date} ${round.startedAt ?? ''} ${round.id}`;
  return (await db.rounds.toArray()).sort((one, other) => (key(one) < key(other) ? 1 : -1));
});

/** All clubs, in the bag and out of it. */
export const liveClubs = sharedQuery<Club[]>((db) => db.clubs.toArray());

/** Whose logbook it is. */
export const livePlayer = sharedQuery<Player>(readPlayer);

/** The golfer's choices, with what holds until one was made. */
export const liveSettings = sharedQuery<Settings>(async (db) => ({
  ...defaultSettings,
  ...(await db.settings.get(ONLY)),
}));

/** The half-entered shot; null: none. */
export const liveDraft = sharedQuery<Draft | null>(async (db) => (await db.draft.get(ONLY)) ?? null);

/** Deleted shots and rounds that can still be brought back, the last deleted first. */
export const liveBin = sharedQuery<Binned[]>(async (db) =>
  (await db.bin.toArray()).sort((one, other) => (one.deletedAt < other.deletedAt ? 1 : -1)),
);

/** What `undo` would take back; null: nothing. */
export const liveUndo = sharedQuery<UndoEntry | null>(async (db) => (await db.undo.toArray()).at(-1) ?? null);

const liveOpenPages = sharedQuery(readOpenPages);
const liveClosedShots = sharedQuery((db) => db.closedShots.toArray());

/** Whether the shots of each closed round are there: they come a moment apart from the round itself. */
function together(pages: Logbook, closed: readonly { readonly roundId: string }[]): boolean {
  const there = new Set(closed.map((round) => round.roundId));
  return pages.rounds.every((round) => !round.closed || there.has(round.id));
}

/**
 * The whole logbook. The shots of closed rounds are read only when one of them changed, so that a
 * logged shot does not cost a reading of all seasons.
 */
export const liveLogbook = shared<Logbook>((connection) => {
  let last: Live<Logbook> = { kind: 'loading' };
  return computed(() => {
    const pages = liveOpenPages(connection).value;
    const closed = liveClosedShots(connection).value;
    if (pages.kind === 'failed') last = pages;
    else if (closed.kind === 'failed') last = closed;
    else if (pages.kind === 'ready' && closed.kind === 'ready' && together(pages.value, closed.value)) {
      last = { kind: 'ready', value: withClosedShots(pages.value, closed.value) };
    }
    return last;
  });
});
