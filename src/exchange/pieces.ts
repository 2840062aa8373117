import { byText } from './canonicalJson.ts';
import { byStamp, later, type Stamp, type Stamped, stampOf } from './stamp.ts';

/** A part of a record that merges by itself: a hole of a round, a spec period of a club. */
export type Piece = Readonly<Record<string, unknown>>;

/** A piece without its stamp, and the stamp. */
interface Held {
  readonly piece: Piece;
  readonly stamp: Stamp;
}

/** How a kind of record is taken apart into pieces and put together again. */
export interface Parts<T> {
  readonly keyOf: (piece: Piece) => string | number;
  readonly piecesOf: (record: T) => readonly Piece[];
  readonly withPieces: (record: T, pieces: readonly Piece[]) => T;
  /** Order of the pieces in the merged record, before their stamp and key decide. */
  readonly order: (a: Piece, b: Piece) => number;
  /** Whether a record must keep a piece with its own stamp (a club has a spec period at all times). */
  readonly atLeastOne: boolean;
}

/** A record taken apart: itself without pieces, its stamp, and the pieces by key. */
export interface Apart<T> {
  readonly base: T;
  readonly stamp: Stamp;
  readonly pieces: ReadonlyMap<string | number, Held>;
}

/** The stamp that a piece carries itself, or else its record's; never later than the record's. */
function pieceStamp(piece: Piece, record: Stamp): Stamp {
  const { changedAt, device } = piece;
  const ms = typeof changedAt === 'string' ? Date.parse(changedAt) : Number.NaN;
  if (!Number.isFinite(ms)) return record;
  const own = { ms, device: typeof device === 'string' ? device : '' };
  return byStamp(own, record) < 0 ? own : record;
}

function withoutStamp(piece: Piece): Piece {
  const { changedAt, device, ...rest } = piece;
  return rest;
}

/** Takes a record apart. */
export function takeApart<T extends Stamped>(record: T, parts: Parts<T>): Apart<T> {
  const stamp = stampOf(record);
  let held = parts.piecesOf(record).map((piece) => ({
    piece: withoutStamp(piece),
    stamp: pieceStamp(piece, stamp),
  }));
  if (parts.atLeastOne && !held.some((each) => byStamp(each.stamp, stamp) === 0)) {
    held = held.map((each) => ({ ...each, stamp }));
  }
  return {
    base: parts.withPieces(record, []),
    stamp,
    pieces: new Map(held.map((each) => [parts.keyOf(each.piece), each])),
  };
}

/** Two states of one record as one: the later base, and of every piece the later. */
export function joinApart<T>(a: Apart<T>, b: Apart<T>): Apart<T> {
  const base = later(a.base, a.stamp, b.base, b.stamp);
  const pieces = new Map(a.pieces);
  for (const [key, theirs] of b.pieces) {
    const ours = pieces.get(key);
    if (!ours) pieces.set(key, theirs);
    else {
      const piece = later(ours.piece, ours.stamp, theirs.piece, theirs.stamp);
      pieces.set(key, piece === ours.piece ? ours : theirs);
    }
  }
  return { base, stamp: base === a.base ? a.stamp : b.stamp, pieces };
}

/**
 * The record put together again. A piece that is older than the record carries its own `changedAt`
 * and `device`, so that the next merge still knows how old it is. Pieces not changed after
 * `deletedAt` (ms) stay away with the record that was deleted then.
 */
export function putTogether<T>(apart: Apart<T>, parts: Parts<T>, deletedAt: number): T {
  const held = [...apart.pieces.entries()].filter(([, each]) => each.stamp.ms > deletedAt);
  held.sort(
    ([keyA, a], [keyB, b]) =>
      parts.order(a.piece, b.piece) || byStamp(a.stamp, b.stamp) || byText(String(keyA), String(keyB)),
  );
  const pieces = held.map(([, { piece, stamp }]) =>
    byStamp(stamp, apart.stamp) === 0
      ? piece
      : { ...piece, changedAt: new Date(stamp.ms).toISOString(), device: stamp.device },
  );
  return parts.withPieces(apart.base, pieces);
}
