import type { Table } from 'dexie';
import type { TeamPage } from '../book/teamPage.ts';
import type { LookedAtNumber } from '../book/teamTable.ts';
import type { Review } from '../golf/review.ts';
import type { SeasonSpan } from '../golf/seasonSpan.ts';
import type { LogbookDatabase } from './database.ts';
import type { SchemaVersion } from './migrations/schemaVersions.ts';

/** Name of the team's books in the browser's store: a database of its own, apart from the golfer's logbook. */
export const TEAM_STORE = 'carrybook-team';

/** One golfer whose book is on this device: small, so that all of them are read at once. */
export interface StoredMember {
  readonly playerId: string;
  /** Whether shots were handed over or only numbers. */
  readonly from: 'shots' | 'summary';
  readonly name: string;
  /** Latest moment at which one of this golfer's files was written. */
  readonly asOf: string;
  readonly rounds: number;
  readonly shots: number;
  readonly firstOn: string | null;
  readonly lastOn: string | null;
  /** Reviews that the golfer marked done. */
  readonly done: readonly string[];
  /** SHA-256 of what is stored: the same book, the same hash. */
  readonly hash: string;
  readonly takenAt: string;
}

/** A golfer's book as text: a Carrybook file, and a summary, each empty when there is none. */
export interface StoredText {
  readonly playerId: string;
  readonly text: string;
  readonly summary: string;
}

/** A page of the table reckoned from a book of that hash. */
export interface StoredPage {
  readonly key: string;
  readonly playerId: string;
  readonly page: TeamPage;
}

/** What the numbers were when the coach last reviewed a golfer. */
export interface StoredLook {
  readonly playerId: string;
  readonly at: string;
  readonly numbers: readonly LookedAtNumber[];
}

/** A note or task written here for a golfer. */
export interface StoredReview {
  readonly id: string;
  readonly playerId: string;
  readonly review: Review;
  /** When it was last handed back; null: not yet. */
  readonly handedAt: string | null;
}

/** Golfers under one name: varsity, second team. */
export interface StoredGroup {
  readonly id: string;
  readonly name: string;
  readonly playerIds: readonly string[];
}

/** A way of looking at the table under a name; `view` is read by the screen that wrote it. */
export interface StoredView {
  readonly id: string;
  readonly name: string;
  readonly view: Readonly<Record<string, string>>;
}

/**
 * What old files may not bring back, by hash and without a name: a golfer who was deleted, or a season of
 * one. The salt is random and stays on this device.
 */
export type StoredBlock =
  | { readonly key: 'salt'; readonly kind: 'salt'; readonly salt: string }
  | { readonly key: string; readonly kind: 'player' }
  | { readonly key: string; readonly kind: 'season'; readonly player: string; readonly span: SeasonSpan };

/** Every version of the team's stores that a device may still hold, oldest first; one that was shipped is never edited. */
export const teamVersions: readonly SchemaVersion[] = [
  {
    version: 1,
    stores: {
      player: 'id',
      device: 'key',
      members: 'playerId',
      texts: 'playerId',
      pages: 'key',
      looks: 'playerId',
      reviews: 'id',
      groups: 'id',
      views: 'id',
      blocks: 'key',
    },
  },
];

/** The stores of the team's books, typed. */
export function teamTables(db: LogbookDatabase) {
  return {
    members: db.table('members') as Table<StoredMember, string>,
    texts: db.table('texts') as Table<StoredText, string>,
    pages: db.table('pages') as Table<StoredPage, string>,
    looks: db.table('looks') as Table<StoredLook, string>,
    reviews: db.table('reviews') as Table<StoredReview, string>,
    groups: db.table('groups') as Table<StoredGroup, string>,
    views: db.table('views') as Table<StoredView, string>,
    blocks: db.table('blocks') as Table<StoredBlock, string>,
  };
}
