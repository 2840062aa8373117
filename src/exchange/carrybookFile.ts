import * as z from 'zod/mini';
import { clubSchema } from '../golf/club.ts';
import { instantField, NEVER_CHANGED } from '../golf/instant.ts';
import type { Logbook } from '../golf/logbook.ts';
import { playerSchema } from '../golf/player.ts';
import { doneSchema, reviewSchema } from '../golf/review.ts';
import { roundSchema } from '../golf/round.ts';
import { shotSchema } from '../golf/shot.ts';
import { tombstoneSchema } from '../golf/tombstone.ts';
import { byText, canonicalJson } from './canonicalJson.ts';
import {
  headRefusal,
  LOGBOOK_BYTES,
  objectReading,
  parseDocument,
  sizeRefusal,
  structureRefusals,
  utf8Bytes,
} from './documentText.ts';
import { parseLists } from './parseLists.ts';
import { referenceRefusals, repeatRefusals } from './references.ts';
import { pathText, REFUSAL_LIMIT, type Reading, type Refusal, refused, WHOLE_FILE } from './refusal.ts';
import { elementOf } from './schemaTree.ts';
import { FROZEN_BOOK_BYTES_LIMIT, unknownRefusal } from './unknownKeys.ts';

/** Most shots in one golfer's file. */
export const SHOTS_LIMIT = 200_000;

/** The Carrybook file, version 1: one golfer's logbook as it is written, keys in the order of the file. */
export const carrybookFileSchema = z.looseObject({
  format: z.literal('carrybook'),
  version: z._default(z.literal(1), 1),
  exportedAt: z.optional(instantField),
  scope: z._default(z.enum(['backup', 'share']), 'backup'),
  player: playerSchema,
  clubs: z._default(z.array(clubSchema), []),
  rounds: z._default(z.array(roundSchema), []),
  shots: z._default(z.array(shotSchema), []),
  reviews: z._default(z.array(reviewSchema), []),
  done: z._default(z.array(doneSchema), []),
  deleted: z._default(z.array(tombstoneSchema), []),
});

/** What a file was made for. A `share` has left something out and is never restored as a logbook. */
export type Scope = 'backup' | 'share';

/**
 * One golfer's file as read: the logbook, when it was written and what for. Keys unknown to this
 * version are kept on every record and on the file.
 */
export interface CarrybookFile extends Logbook {
  readonly format: 'carrybook';
  readonly version: 1;
  readonly exportedAt: string;
  readonly scope: Scope;
}

/** Lists of a file, in its order. */
const lists = ['clubs', 'rounds', 'shots', 'reviews', 'done', 'deleted'] as const;

/**
 * The latest moment that a logbook speaks of; stands in for `exportedAt` where a file has none. The
 * date of a round counts to the end of its day (UTC). An empty logbook is as old as can be.
 */
export function latestInstant(logbook: Logbook): string {
  let latest = NEVER_CHANGED;
  const see = (instant: string | null): void => {
    if (instant !== null && Date.parse(instant) > Date.parse(latest)) latest = instant;
  };
  for (const record of [logbook.player, ...logbook.clubs, ...logbook.rounds, ...logbook.shots, ...logbook.reviews]) {
    see(record.changedAt);
  }
  for (const round of logbook.rounds) {
    see(`${round.date}T23:59:59.999Z`);
    see(round.startedAt);
    see(round.closedAt);
  }
  for (const record of [...logbook.shots, ...logbook.reviews, ...logbook.done, ...logbook.deleted]) see(record.at);
  return latest;
}

function unknownRefusals(file: Record<string, unknown>, prefix: readonly PropertyKey[]): Refusal[] {
  const found: Refusal[] = [];
  const add = (refusal: Refusal | undefined): void => {
    if (refusal) found.push(refusal);
  };
  const { shape } = carrybookFileSchema;
  const known = Object.fromEntries(Object.entries(file).filter(([key]) => key !== 'player' && !isList(key)));
  add(unknownRefusal(known, carrybookFileSchema, prefix));
  add(unknownRefusal(file.player, shape.player, [...prefix, 'player']));
  for (const list of lists) {
    const element = elementOf(shape[list]);
    if (!element) throw new RangeError(`${list} is no list of the file`);
    for (const [index, record] of (file[list] as unknown[]).entries()) {
      if (found.length >= REFUSAL_LIMIT) return found;
      const path = [...prefix, list, index];
      if (list !== 'rounds') add(unknownRefusal(record, element, path));
      else {
        const frozen = (record as { frozenBook: unknown }).frozenBook;
        add(unknownRefusal(record, element, path, 'frozenBook'));
        add(
          unknownRefusal({ frozenBook: frozen }, element, [...path, 'frozenBook'], undefined, FROZEN_BOOK_BYTES_LIMIT),
        );
      }
    }
  }
  return found;
}

function isList(key: string): boolean {
  return (lists as readonly string[]).includes(key);
}

/**
 * Reads one golfer's file that is parsed already, for instance inside a team file. The first step that
 * finds anything wrong gives its reasons: build of the file, format and version, number of shots,
 * records one by one, unknown keys, ids that repeat, ids that lead nowhere.
 *
 * @param prefix the path at which the value stands in its file.
 */
export function readCarrybookValue(value: unknown, prefix: readonly PropertyKey[] = []): Reading<CarrybookFile> {
  const structure = structureRefusals(value, prefix);
  if (structure.length > 0) return refused(structure);
  const head = objectReading(value, prefix);
  if (head.kind === 'refused') return head;
  const wrongHead = headRefusal(head.value, 'carrybook', prefix);
  if (wrongHead) return refused([wrongHead]);
  const { shots } = head.value;
  if (Array.isArray(shots) && shots.length > SHOTS_LIMIT) {
    const path = pathText([...prefix, 'shots']);
    return refused([{ path, expected: `at most ${SHOTS_LIMIT} shots`, found: `${shots.length}` }]);
  }
  const parsed = parseLists(carrybookFileSchema, head.value, lists, prefix);
  if (parsed.kind === 'refused') return parsed;
  const { value: read } = parsed;
  const file: CarrybookFile = { ...read, exportedAt: read.exportedAt ?? latestInstant(read) };
  const unknown = unknownRefusals(read, prefix);
  if (unknown.length > 0) return refused(unknown);
  const repeats = repeatRefusals(file, prefix);
  if (repeats.length > 0) return refused(repeats);
  const dangling = referenceRefusals(file, prefix);
  return dangling.length > 0 ? refused(dangling) : { kind: 'read', value: file };
}

/**
 * Reads one golfer's Carrybook file. Nothing of a refused file is used. Keys that are absent take their
 * default; an absent `exportedAt` is the latest moment the file speaks of, see {@link latestInstant}.
 */
export function readCarrybookFile(text: string): Reading<CarrybookFile> {
  const tooBig = sizeRefusal(utf8Bytes(text), LOGBOOK_BYTES, WHOLE_FILE);
  if (tooBig) return refused([tooBig]);
  const parsed = parseDocument(text);
  return parsed.kind === 'refused' ? parsed : readCarrybookValue(parsed.value);
}

const sortKeys: Readonly<Record<(typeof lists)[number], (record: never) => string>> = {
  clubs: (club: { id: string }) => club.id,
  rounds: (round: { id: string }) => round.id,
  shots: (shot: { id: string }) => shot.id,
  reviews: (review: { id: string }) => review.id,
  done: (done: { reviewId: string }) => done.reviewId,
  deleted: (dead: { of: string; id: string }) => `${dead.of} ${dead.id}`,
};

function inOrder(file: CarrybookFile): CarrybookFile {
  const sorted: Record<string, unknown> = { ...file };
  for (const list of lists) {
    const keyOf = sortKeys[list] as (record: unknown) => string;
    sorted[list] = [...file[list]].sort((a, b) => byText(keyOf(a), keyOf(b)));
  }
  sorted.rounds = (sorted.rounds as typeof file.rounds).map((round) => ({
    ...round,
    holes: round.holes.toSorted((a, b) => a.number - b.number),
  }));
  return sorted as unknown as CarrybookFile;
}

/**
 * Writes one golfer's file: records sorted by id and holes by number, every key in the order of the
 * schema and unknown keys sorted after them, one record a line. The same logbook always gives the same
 * text but for `exportedAt`.
 */
export function writeCarrybookFile(file: CarrybookFile): string {
  const ordered = inOrder(file) as unknown as Record<string, unknown>;
  const { shape } = carrybookFileSchema;
  const known = Object.keys(shape);
  const unknown = Object.keys(ordered).filter((key) => !Object.hasOwn(shape, key));
  const lines = [...known, ...unknown.sort()].map((key) => {
    const value = ordered[key];
    const name = JSON.stringify(key);
    if (!isList(key)) {
      // A key that this version does not know may be called as something that every object has.
      const schema = Object.hasOwn(shape, key) ? shape[key as keyof typeof shape] : undefined;
      return `${name}: ${canonicalJson(value, schema)}`;
    }
    const element = elementOf(shape[key as (typeof lists)[number]]);
    const records = (value as unknown[]).map((record) => canonicalJson(record, element));
    return `${name}: [${records.length === 0 ? '' : `\n${records.join(',\n')}\n`}]`;
  });
  return `{\n${lines.join(',\n')}\n}\n`;
}

/** The file of a logbook as of now. */
export function carrybookFileOf(logbook: Logbook, exportedAt: string, scope: Scope): CarrybookFile {
  return { ...logbook, format: 'carrybook', version: 1, exportedAt, scope };
}

/** The logbook of a file: its records, and keys of the file that this version does not know. */
export function logbookOf(file: CarrybookFile): Logbook {
  const { format: _format, version: _version, exportedAt: _exportedAt, scope: _scope, ...logbook } = file;
  return logbook;
}
