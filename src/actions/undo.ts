import { clubEvents } from '../golf/clubInPlay.ts';
import type { Round } from '../golf/round.ts';
import type { PlayEvent } from '../golf/rulesOfPlay.ts';
import { sameFreeze } from '../golf/shownLogbook.ts';
import { ONLY } from '../logbook/database.ts';
import { findShot } from '../logbook/shotStore.ts';
import type { Image, UndoEntry, UndoWhat } from '../logbook/undoEntry.ts';
import { binRound, binShot, bringBackRound, bringBackShot, leaveTombstone, liftTombstone } from './binShot.ts';
import { type ByTheRules, heldBack, openRoundOf } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import type { UnsavedWhat } from './line.ts';
import { type Outcome, refuse, type Written, written } from './outcome.ts';
import type { Pen } from './pen.ts';
import type { RoundOpen } from './startRound.ts';
import { write } from './write.ts';

/** Why nothing was taken back: there is nothing, the record was changed elsewhere since, or the Rules hold it. */
export type UndoRefusal =
  | { readonly kind: 'nothing to undo' }
  | { readonly kind: 'changed since' }
  | RoundOpen
  | ByTheRules;

const WHAT: Readonly<Record<UnsavedWhat, UndoWhat>> = {
  log: 'log shot',
  edit: 'edit shot',
  move: 'move shot',
  delete: 'delete shot',
  hole: 'set hole',
};

/**
 * Takes back the last action that can be taken back. A change that is still unsaved is the last: it is
 * given up. What was changed elsewhere since is left alone. The stack outlives a reload. While a round
 * by the Rules is open nothing is taken back that its frozen book rests on.
 */
export function undo(keeper: Keeper): Promise<Outcome<UndoEntry, UndoRefusal>> {
  return keeper.line.after(async (): Promise<Outcome<UndoEntry, UndoRefusal>> => {
    const given = keeper.line.giveUpLast();
    if (given) return { kind: 'saved', value: { at: given.id, what: WHAT[given.what], images: [] } };
    // Which action is meant is settled first: the writing may run twice, and must not take back two.
    const last = await keeper.connection.withDatabase((db) => db.undo.toCollection().last());
    if (last.kind !== 'ok') return { kind: 'unsaved', why: last };
    const entry = last.value;
    if (!entry) return refuse({ kind: 'nothing to undo' });
    return write<UndoEntry, UndoRefusal>(keeper, (pen) => takeBack(pen, entry));
  });
}

/** What taking the entry back is in the eyes of the Rules, while the round is open. */
async function eventsOf(pen: Pen, open: Round, entry: UndoEntry): Promise<PlayEvent[]> {
  const events: PlayEvent[] = [];
  for (const image of entry.images) {
    if (image.of === 'club') {
      const now = (await pen.db.clubs.get(image.id)) ?? null;
      events.push(...clubEvents(open.bag, now, image.before));
    } else if (image.of === 'round') {
      const isOfOpen = image.id === open.id && (image.before === null || sameFreeze(image.before, open));
      events.push({ kind: 'undo', of: isOfOpen ? 'open round' : 'evidence' });
      if (image.id === open.id && image.before?.distanceDevices && !open.distanceDevices) events.push({ kind: 'mark' });
    } else events.push({ kind: 'undo', of: image.roundId === open.id ? 'open round' : 'evidence' });
  }
  return events;
}

async function takeBack(pen: Pen, entry: UndoEntry): Promise<Written<UndoEntry, UndoRefusal>> {
  if (!(await pen.db.undo.get(entry.at))) return written(entry);
  const round = await openRoundOf(pen.db);
  const open = round?.id ?? null;
  const reopens = entry.images.find((image) => image.of === 'round' && image.before?.closed === false);
  if (reopens && open !== null && open !== reopens.id) return refuse({ kind: 'round open', roundId: open });
  const held = round ? await heldBack(pen.db, ...(await eventsOf(pen, round, entry))) : null;
  if (held) return held;
  await pen.db.undo.delete(entry.at);
  for (const image of entry.images) {
    if ((await stampNow(pen, image)) !== image.after) return refuse({ kind: 'changed since' });
  }
  for (const image of entry.images) {
    await putBack(pen, image);
    if (image.before) await restamp(pen, image, image.before.changedAt);
  }
  return written(entry);
}

/** The record is as the action before left it, under a later stamp: that action must know it again. */
async function restamp(pen: Pen, image: Image, was: string): Promise<void> {
  const now = await stampNow(pen, image);
  const same = (other: Image) => other.of === image.of && other.id === image.id && other.after === was;
  const entries = (await pen.db.undo.toArray()).filter((entry) => entry.images.some(same));
  await pen.db.undo.bulkPut(
    entries.map((entry) => ({
      ...entry,
      images: entry.images.map((other) => (same(other) ? { ...other, after: now } : other)),
    })),
  );
}

async function stampNow(pen: Pen, image: Image): Promise<string | null> {
  const { db } = pen;
  if (image.of === 'shot') return (await findShot(db, image))?.changedAt ?? null;
  const record = image.of === 'round' ? await db.rounds.get(image.id) : await db.clubs.get(image.id);
  return record?.changedAt ?? null;
}

async function putBack(pen: Pen, image: Image): Promise<void> {
  if (image.of === 'shot') await putShotBack(pen, image);
  else if (image.of === 'round') await putRoundBack(pen, image);
  else await putClubBack(pen, image);
}

async function putShotBack(pen: Pen, image: Image & { of: 'shot' }): Promise<void> {
  if (image.before) {
    await bringBackShot(pen, image.before, ...(image.after ? [image.after] : []));
    return;
  }
  const shot = await findShot(pen.db, image);
  if (shot) await binShot(pen, shot);
}

async function putRoundBack(pen: Pen, image: Image & { of: 'round' }): Promise<void> {
  const { db } = pen;
  if (!image.before) {
    const round = await db.rounds.get(image.id);
    if (round) await binRound(pen, round);
    return;
  }
  const back = await bringBackRound(pen, image.before, ...(image.after ? [image.after] : []));
  if (!back.closed) await db.openRound.put({ key: ONLY, roundId: back.id });
  else if ((await db.openRound.get(ONLY))?.roundId === back.id) await db.openRound.delete(ONLY);
}

async function putClubBack(pen: Pen, image: Image & { of: 'club' }): Promise<void> {
  const { db } = pen;
  if (image.before) {
    const lifted = await liftTombstone(pen, 'club', image.id);
    const moments = image.after ? [image.after, ...lifted] : lifted;
    await db.clubs.put(pen.stamped(image.before, image.before.changedAt, ...moments));
    return;
  }
  const club = await db.clubs.get(image.id);
  await db.clubs.delete(image.id);
  if (club) await leaveTombstone(pen, 'club', club);
}
