import { Dexie, type Table } from 'dexie';
import * as z from 'zod/mini';
import type { Club } from '../golf/club.ts';
import { NEVER_CHANGED } from '../golf/instant.ts';
import { type Player, playerSchema } from '../golf/player.ts';
import type { Done, Review } from '../golf/review.ts';
import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';
import type { Tombstone } from '../golf/tombstone.ts';
import type { Draft } from './draft.ts';
import type { SchemaVersion } from './migrations/schemaVersions.ts';
import type { Settings } from './settings.ts';
import type { UndoEntry } from './undoEntry.ts';

/** The shots of one round that is not open, as one record. */
export interface ClosedShots {
  readonly roundId: string;
  readonly shots: readonly Shot[];
}

/** A deleted shot, or a deleted round with its shots, kept for thirty days. */
export type Binned =
  | { readonly of: 'shot'; readonly id: string; readonly deletedAt: string; readonly shot: Shot }
  | {
      readonly of: 'round';
      readonly id: string;
      readonly deletedAt: string;
      readonly round: Round;
      readonly shots: readonly Shot[];
    };

/** This phone: its random id, and the latest moment it has stamped a record with. */
export interface Device {
  readonly key: 'device';
  readonly id: string;
  readonly lastStamp: string;
}

/** What a file held beside the records this version knows; exported again as it came. */
export interface FileRest {
  readonly key: 'file rest';
  readonly rest: Readonly<Record<string, unknown>>;
}

/** What the one record of a store is kept under, where a store has only one. */
export const ONLY = 'only';

/** The stored logbook of one golfer. Opened by the connection, and written to by actions/ alone. */
export class LogbookDatabase extends Dexie {
  declare readonly player: Table<Player, string>;
  declare readonly clubs: Table<Club, string>;
  declare readonly rounds: Table<Round, string>;
  declare readonly shots: Table<Shot, string>;
  declare readonly closedShots: Table<ClosedShots, string>;
  declare readonly reviews: Table<Review, string>;
  declare readonly done: Table<Done, string>;
  declare readonly deleted: Table<Tombstone, [string, string]>;
  declare readonly bin: Table<Binned, string>;
  declare readonly undo: Table<UndoEntry, string>;
  declare readonly settings: Table<(Partial<Settings> & { readonly key: typeof ONLY }) | FileRest, string>;
  declare readonly draft: Table<Draft & { readonly key: typeof ONLY }, string>;
  declare readonly openRound: Table<{ readonly key: typeof ONLY; readonly roundId: string }, string>;
  declare readonly device: Table<Device, string>;

  constructor(name: string, versions: readonly SchemaVersion[], factory: IDBFactory, newId: () => string) {
    super(name, {
      indexedDB: factory,
      IDBKeyRange: globalThis.IDBKeyRange,
      autoOpen: false,
      // The browser's default answers before the record has reached the disk: a flat battery would lose it.
      chromeTransactionDurability: 'strict',
      // Dexie's cache shows a record before its transaction completed; saved must mean saved.
      cache: 'disabled',
    });
    for (const { version, stores, upgrade } of versions) {
      const declared = this.version(version).stores({ ...stores });
      if (upgrade) declared.upgrade(upgrade);
    }
    this.on('populate', (transaction) => {
      transaction.table('player').add(newPlayer(newId()));
      transaction.table('device').add(newDevice(newId()));
    });
  }
}

/** A golfer of whom nothing is known yet. */
export function newPlayer(id: string): Player {
  return z.parse(playerSchema, { id });
}

/** A phone that has stamped nothing yet. */
export function newDevice(id: string): Device {
  return { key: 'device', id, lastStamp: NEVER_CHANGED };
}
