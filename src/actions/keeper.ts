import { type ReadonlySignal, signal } from '@preact/signals';
import { type Connection, connect } from '../logbook/connection.ts';
import type { SchemaVersion } from '../logbook/migrations/schemaVersions.ts';
import { type Clock, phoneClock } from './clock.ts';
import { type Line, openLine, type Unsaved } from './line.ts';

/** Name of the golfer's own logbook in the browser's store. */
export const OWN_LOGBOOK = 'carrybook';

/** Who keeps one logbook: the way to it, the clock and the ids it is written with, and what is not written yet. */
export interface Keeper {
  readonly connection: Connection;
  readonly clock: Clock;
  readonly newId: () => string;
  /** Changes kept in memory because the store did not take them, the oldest first. */
  readonly unsaved: ReadonlySignal<readonly Unsaved[]>;
  readonly line: Line;
  /** Lets go of the logbook; what is unsaved is given up. */
  readonly close: () => void;
}

/** What a keeper takes from outside; each has its usual value in the app. */
export interface KeeperOptions {
  readonly name?: string;
  readonly clock?: Clock;
  readonly newId?: () => string;
  readonly factory?: IDBFactory | null;
  readonly versions?: readonly SchemaVersion[];
  /** Longest that an action may stay without an answer before the connection counts as lost, in milliseconds. */
  readonly patience_ms?: number;
  /** How often unsaved changes are tried again, in milliseconds. */
  readonly retryEvery_ms?: number;
}

/** How often unsaved changes are tried again when nothing else is said. */
const RETRY_EVERY_MS = 5_000;

/** A keeper of the logbook of that name. Nothing is opened until it is first used. */
export function keepLogbook(options: KeeperOptions = {}): Keeper {
  const { name = OWN_LOGBOOK, clock = phoneClock, newId = () => crypto.randomUUID(), versions, patience_ms } = options;
  const factory = options.factory === undefined ? (globalThis.indexedDB ?? null) : options.factory;
  const connection = connect({
    name,
    newId,
    factory,
    ...(versions ? { versions } : {}),
    ...(patience_ms ? { patience_ms } : {}),
  });
  const unsaved = signal<readonly Unsaved[]>([]);
  const line = openLine(unsaved, options.retryEvery_ms ?? RETRY_EVERY_MS);
  return {
    connection,
    clock,
    newId,
    unsaved,
    line,
    close: () => {
      line.close();
      connection.close();
    },
  };
}
