import type { Transaction } from 'dexie';

/** One version of the stores: the keys and indexes that changed, and how the records before it are carried over. */
export interface SchemaVersion {
  readonly version: number;
  readonly stores: Readonly<Record<string, string | null>>;
  readonly upgrade?: (transaction: Transaction) => Promise<void>;
}

/**
 * Every version of the stores that a phone may still hold, oldest first. A version that has been
 * shipped is never edited: a change is a new entry, with a frozen dump of the one before in
 * tests/fixtures/.
 *
 * Version 1 keeps the shots of an open round one by one in `shots`, so that logging one writes one
 * small record, and those of every other round as one record of `closedShots`. Measured in Chromium,
 * 100,000 single records with three indexes take 18 to 25 s to write, as records of 80 shots 1 to 2 s,
 * and they are read at once rather than one by one. The price, a whole round rewritten when an old
 * shot is edited, is paid rarely. No store has an index: each is read whole or by its key.
 */
export const schemaVersions: readonly SchemaVersion[] = [
  {
    version: 1,
    stores: {
      player: 'id',
      clubs: 'id',
      rounds: 'id',
      shots: 'id',
      closedShots: 'roundId',
      reviews: 'id',
      done: 'reviewId',
      deleted: '[of+id]',
      bin: 'id',
      undo: 'at',
      settings: 'key',
      draft: 'key',
      openRound: 'key',
      device: 'key',
    },
  },
];
