import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { IDBFactory } from 'fake-indexeddb';
import { type Keeper, type KeeperOptions, keepLogbook } from '../../src/actions/keeper.ts';
import type { Outcome } from '../../src/actions/outcome.ts';
import { startRound } from '../../src/actions/startRound.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { rememberedStart } from '../../src/golf/newRound.ts';
import type { Round } from '../../src/golf/round.ts';
import { blankEntry, type ShotChanges, type ShotEntry } from '../../src/golf/shotEntry.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import type { LogbookDatabase } from '../../src/logbook/database.ts';
import { readLogbook } from '../../src/logbook/readLogbook.ts';

// Dexie looks for a browser's store once, when it is loaded, and that may be before the simulated one is.
Dexie.dependencies.indexedDB = globalThis.indexedDB;

/** An invented phone: a store of its own, a clock that the test turns, and ids that count up. */
export interface Phone {
  readonly factory: IDBFactory;
  readonly clock: { ms: number; now: () => number };
  readonly newId: () => string;
  /** Opens the app in one more tab. */
  readonly tab: (options?: KeeperOptions) => Keeper;
}

/** A phone whose clock stands at noon UTC of 1 June 2026. */
export function phone(prefix = 'p'): Phone {
  const factory = new IDBFactory();
  const clock = { ms: Date.parse('2026-06-01T12:00:00Z'), now: () => clock.ms };
  let count = 0;
  const newId = () => {
    count += 1;
    return `${prefix}-${count}`;
  };
  const tab = (options: KeeperOptions = {}) =>
    keepLogbook({ name: 'invented', factory, clock, newId, retryEvery_ms: 1_000_000, ...options });
  return { factory, clock, newId, tab };
}

/** The value of an action that must have been saved. */
export function saved<T>(outcome: { kind: 'saved'; value: T } | { kind: 'unsaved' | 'refused'; why: unknown }): T {
  if (outcome.kind !== 'saved') throw new Error(`not saved: ${JSON.stringify(outcome)}`);
  return outcome.value;
}

/** Why an action was refused. */
export function refused<R extends { readonly kind: string }>(outcome: Outcome<unknown, R>): R {
  if (outcome.kind !== 'refused') throw new Error(`not refused: ${JSON.stringify(outcome)}`);
  return (outcome as { why: R }).why;
}

/** What the store answers to a reading. */
export async function reading<T>(keeper: Keeper, work: (db: LogbookDatabase) => Promise<T>): Promise<T> {
  const stored = await keeper.connection.withDatabase(work);
  if (stored.kind !== 'ok') throw new Error(`not read: ${JSON.stringify(stored)}`);
  return stored.value;
}

/** The logbook as stored, its shots in order. */
export async function logbookOf(keeper: Keeper): Promise<Logbook> {
  const logbook = await reading(keeper, readLogbook);
  return { ...logbook, shots: inOrder(logbook.shots) };
}

/** Starts an invented round. */
export async function aRound(keeper: Keeper, slots: Partial<Parameters<typeof startRound>[1]> = {}): Promise<Round> {
  const start = { ...rememberedStart([]), course: 'Larch Hill (invented)', play: 'casual' as const, ...slots };
  return saved(await startRound(keeper, start));
}

/** An invented entry on a hole. */
export function entry(number: number, slots: ShotChanges = {}): ShotEntry {
  return { ...blankEntry(slots.hole ?? 1, number), ...slots };
}
