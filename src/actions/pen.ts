import { changedRecord } from '../exchange/changedRecord.ts';
import { type Device, type LogbookDatabase, newDevice } from '../logbook/database.ts';
import type { Image, UndoEntry, UndoWhat } from '../logbook/undoEntry.ts';

/** The last moment that fits the four-digit year of a stamp. */
const LAST_MS = Date.parse('9999-12-31T23:59:59.999Z');

/** Actions that can be taken back, at most; older ones are forgotten. */
const UNDO_LIMIT = 50;

/** A record that says who changed it last and when. */
type Changed = { readonly changedAt: string; readonly device: string };

/** What one action writes with: the open logbook, the moment, and the stamp it leaves. */
export interface Pen {
  readonly db: LogbookDatabase;
  /** The moment by the phone's clock, which may have been set back. */
  readonly now: string;
  /** The stamp of this action: later than every stamp of this device before it. */
  readonly at: string;
  /** A stamp of this action that is also later than the moments given. */
  readonly stampAfter: (...moments: readonly string[]) => string;
  /** The record as changed by this action, later than the moments given: those of the states it replaces. */
  readonly stamped: <T extends Changed>(record: T, ...moments: readonly string[]) => T;
  readonly deviceId: string;
  /** Remembers how to take this action back. */
  readonly remember: (what: UndoWhat, images: readonly Image[]) => Promise<void>;
}

function instant(ms: number): string {
  return new Date(Math.min(ms, LAST_MS)).toISOString();
}

/**
 * Takes up the pen for one action, within its transaction. The stamp is the later of now and one
 * millisecond after the last of this device, so that a clock set back does not make a later change
 * look older. Stamps of other devices count only for the record they stand on: one phone with a wrong
 * clock does not drag the others along.
 */
export async function takeUpPen(db: LogbookDatabase, now_ms: number, newId: string): Promise<Pen> {
  const device: Device = (await db.device.get('device')) ?? newDevice(newId);
  const at_ms = Math.max(now_ms, Date.parse(device.lastStamp) + 1);
  const at = instant(at_ms);
  await db.device.put({ ...device, lastStamp: at });
  const stampAfter = (...moments: readonly string[]) => {
    return instant(Math.max(at_ms, ...moments.map((moment) => Date.parse(moment) + 1)));
  };
  return {
    db,
    now: instant(now_ms),
    at,
    stampAfter,
    stamped: (record, ...moments) => changedRecord(record, stampAfter(...moments), device.id),
    deviceId: device.id,
    remember: async (what, images) => {
      const entry: UndoEntry = { at, what, images };
      await db.undo.put(entry);
      const kept = await db.undo.toCollection().primaryKeys();
      await db.undo.bulkDelete(kept.slice(0, Math.max(0, kept.length - UNDO_LIMIT)));
    },
  };
}
