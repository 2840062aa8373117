import type { ReadonlySignal } from '@preact/signals';
import type { Connection } from './connection.ts';
import { type Live, liveSignal } from './liveSignal.ts';
import {
  type StoredBlock,
  type StoredGroup,
  type StoredLook,
  type StoredMember,
  type StoredPage,
  type StoredReview,
  type StoredView,
  teamTables,
} from './teamStore.ts';

/** Everything about the team but the books themselves. */
export interface LiveTeam {
  readonly members: readonly StoredMember[];
  readonly pages: readonly StoredPage[];
  readonly looks: readonly StoredLook[];
  readonly reviews: readonly StoredReview[];
  readonly groups: readonly StoredGroup[];
  readonly views: readonly StoredView[];
  readonly blocks: readonly StoredBlock[];
}

const made = new WeakMap<Connection, ReadonlySignal<Live<LiveTeam>>>();

/** The team as it stands, one signal for each connection. The books' texts are not read: they are large. */
export function liveTeam(connection: Connection): ReadonlySignal<Live<LiveTeam>> {
  const live =
    made.get(connection) ??
    liveSignal(connection, async (db): Promise<LiveTeam> => {
      const { members, pages, looks, reviews, groups, views, blocks } = teamTables(db);
      const [m, p, l, r, g, v, b] = await Promise.all([
        members.toArray(),
        pages.toArray(),
        looks.toArray(),
        reviews.toArray(),
        groups.toArray(),
        views.toArray(),
        blocks.toArray(),
      ]);
      return { members: m, pages: p, looks: l, reviews: r, groups: g, views: v, blocks: b };
    });
  made.set(connection, live);
  return live;
}
