import type { Club, SpecPeriod } from '../golf/club.ts';
import type { Hole } from '../golf/hole.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Done } from '../golf/review.ts';
import type { Round } from '../golf/round.ts';
import type { Tombstone } from '../golf/tombstone.ts';
import { byText, canonicalJson } from './canonicalJson.ts';
import { type Apart, joinApart, type Parts, putTogether, takeApart } from './pieces.ts';
import { later, type Stamped, stampOf } from './stamp.ts';

type Kind = Tombstone['of'];
type Kept = Stamped & { readonly id: string };

const clubParts: Parts<Club> = {
  keyOf: (spec) => String(spec.id),
  piecesOf: (club) => club.specPeriods,
  withPieces: (club, pieces) => ({ ...club, specPeriods: pieces as SpecPeriod[] }),
  order: (a, b) => byText(String(a.from), String(b.from)),
  atLeastOne: true,
};

const roundParts: Parts<Round> = {
  keyOf: (hole) => Number(hole.number),
  piecesOf: (round) => round.holes,
  withPieces: (round, pieces) => ({ ...round, holes: pieces as Hole[] }),
  order: (a, b) => Number(a.number) - Number(b.number),
  atLeastOne: false,
};

/** For records that merge as a whole. */
function whole<T>(): Parts<T> {
  return {
    keyOf: () => '',
    piecesOf: () => [],
    withPieces: (record) => record,
    order: () => 0,
    atLeastOne: false,
  };
}

const tombstoneKey = (of: Kind, id: string): string => `${of} ${id}`;

function mergeTombstones(a: Logbook, b: Logbook): Map<string, Tombstone> {
  const merged = new Map<string, Tombstone>();
  for (const dead of [...a.deleted, ...b.deleted]) {
    const key = tombstoneKey(dead.of, dead.id);
    const other = merged.get(key);
    const stamp = (each: Tombstone): ReturnType<typeof stampOf> => stampOf({ changedAt: each.at, device: each.device });
    merged.set(key, other ? later(other, stamp(other), dead, stamp(dead)) : dead);
  }
  return new Map([...merged].sort(([keyA], [keyB]) => byText(keyA, keyB)));
}

function mergeRecords<T extends Kept>(
  of: Kind,
  records: readonly T[],
  parts: Parts<T>,
  deleted: ReadonlyMap<string, Tombstone>,
): T[] {
  const merged = new Map<string, Apart<T>>();
  for (const record of records) {
    const apart = takeApart(record, parts);
    const other = merged.get(record.id);
    merged.set(record.id, other ? joinApart(other, apart) : apart);
  }
  const kept: T[] = [];
  for (const [id, apart] of merged) {
    const dead = deleted.get(tombstoneKey(of, id));
    const deletedAt = dead ? Date.parse(dead.at) : Number.NEGATIVE_INFINITY;
    if (apart.stamp.ms > deletedAt) kept.push(putTogether(apart, parts, deletedAt));
  }
  return kept.sort((one, two) => byText(one.id, two.id));
}

function mergeDone(a: Logbook, b: Logbook): Done[] {
  const merged = new Map<string, Done>();
  const stamp = (done: Done): ReturnType<typeof stampOf> => ({
    ms: done.at === null ? Number.NEGATIVE_INFINITY : Date.parse(done.at),
    device: '',
  });
  for (const done of [...a.done, ...b.done]) {
    const other = merged.get(done.reviewId);
    merged.set(done.reviewId, other ? later(other, stamp(other), done, stamp(done)) : done);
  }
  return [...merged.values()].sort((one, two) => byText(one.reviewId, two.reviewId));
}

/** Keys of a logbook that this version knows. */
const knownKeys: ReadonlySet<string> = new Set<keyof Logbook>([
  'player',
  'clubs',
  'rounds',
  'shots',
  'reviews',
  'done',
  'deleted',
]);

/** Keys of the logbook itself that this version does not know: all kept, the larger JSON of two. */
function mergeUnknown(a: Logbook, b: Logbook): object {
  const merged: { [key: string]: unknown } = {};
  for (const [key, value] of [...Object.entries(a), ...Object.entries(b)]) {
    if (knownKeys.has(key)) continue;
    const other = merged[key];
    if (other === undefined || byText(canonicalJson(other), canonicalJson(value)) < 0) merged[key] = value;
  }
  return merged;
}

/**
 * Two logbooks of one golfer as one: every record that either has, by id.
 *
 * Of two states of one record the later change stays; on a tie the larger device name, then the larger
 * JSON. Holes merge one by one by number and spec periods by id: each is as old as its round or club
 * was when it was written, and one that is older than its merged record carries its own `changedAt` and
 * `device`. A deleted record stays deleted unless it was changed strictly later; its tombstone is kept
 * either way. So the result is the same for any order of imports and merging twice changes nothing.
 * Records come sorted by id. Whether both logbooks belong to one golfer is for the caller to ask: the
 * player changed later stays.
 * Both must be as read by `readCarrybookFile`.
 */
export function mergeLogbooks(a: Logbook, b: Logbook): Logbook {
  const deleted = mergeTombstones(a, b);
  return {
    ...mergeUnknown(a, b),
    player: later(a.player, stampOf(a.player), b.player, stampOf(b.player)),
    clubs: mergeRecords('club', [...a.clubs, ...b.clubs], clubParts, deleted),
    rounds: mergeRecords('round', [...a.rounds, ...b.rounds], roundParts, deleted),
    shots: mergeRecords('shot', [...a.shots, ...b.shots], whole(), deleted),
    reviews: mergeRecords('review', [...a.reviews, ...b.reviews], whole(), deleted),
    done: mergeDone(a, b),
    deleted: [...deleted.values()],
  };
}

/**
 * A logbook with its own rules applied: deleted records left out, records sorted by id. What a merge
 * with itself gives, so that a file read for a report and one imported show the same.
 */
export function settledLogbook(logbook: Logbook): Logbook {
  return mergeLogbooks(logbook, { ...logbook, clubs: [], rounds: [], shots: [], reviews: [], done: [], deleted: [] });
}
