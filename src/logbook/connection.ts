import { LogbookDatabase } from './database.ts';
import { installedVersion } from './installedVersion.ts';
import { type SchemaVersion, schemaVersions } from './migrations/schemaVersions.ts';
import { type StorageTrouble, type Stored, storageTrouble } from './storageTrouble.ts';

/** How long ordinary work may stay without an answer when nothing else is said. */
const PATIENCE_MS = 10_000;

/** How much longer than ordinary work opening may take: an upgrade rewrites whole stores. */
const OPENING_TIMES = 3;

/** Told when the logbook was opened (anew), or why it is not open. */
export type ConnectionListener = (opened: Stored<LogbookDatabase>) => void;

/** The way to one stored logbook, which opens it when needed and again when the browser lost it. */
export interface Connection {
  readonly name: string;
  /**
   * Does work on the open logbook. A lost connection is dropped, opened anew and the work done once
   * more, so the work must be such that doing it twice is as good as once. Never rejects. Work on a
   * whole logbook is given `times` the usual time to answer.
   */
  readonly withDatabase: <T>(work: (db: LogbookDatabase) => Promise<T>, times?: number) => Promise<Stored<T>>;
  /** Tells of the open logbook now and each time it is opened anew. The answer ends it. */
  readonly watch: (listener: ConnectionListener) => () => void;
  /** Says that a reading from this handle failed; a lost one is dropped and opened anew. */
  readonly report: (db: LogbookDatabase, error: unknown) => StorageTrouble;
  readonly close: () => void;
}

/** What a connection needs from outside. */
export interface ConnectionOptions {
  readonly name: string;
  readonly newId: () => string;
  /** The browser's store; null: there is none. */
  readonly factory: IDBFactory | null;
  readonly versions?: readonly SchemaVersion[];
  /** Longest that ordinary work may stay without an answer before the connection counts as lost, in ms. */
  readonly patience_ms?: number;
}

/** A connection to the logbook of that name. Nothing is opened until it is first used. */
export function connect(options: ConnectionOptions): Connection {
  const { name, newId, factory, versions = schemaVersions, patience_ms = PATIENCE_MS } = options;
  const newest = Math.max(...versions.map(({ version }) => version));
  const listeners = new Set<ConnectionListener>();
  let current: LogbookDatabase | null = null;
  let opening: Promise<Stored<LogbookDatabase>> | null = null;
  let blocked = false;

  const tell = (opened: Stored<LogbookDatabase>) => {
    for (const listener of listeners) listener(opened);
  };

  const drop = (db: LogbookDatabase) => {
    // Forgotten before it is closed: closing tells of itself at once.
    if (current === db) current = null;
    db.close();
  };

  const openAgainFor = (db: LogbookDatabase) => {
    drop(db);
    if (listeners.size > 0) void open();
  };

  function openNow(): Promise<Stored<LogbookDatabase>> {
    return new Promise((resolve) => {
      let answered = false;
      const answer = (opened: Stored<LogbookDatabase>) => {
        if (!answered) resolve(opened);
        else if (blocked || opened.kind === 'ok') {
          blocked = false;
          opening = null;
          tell(opened);
        }
        answered = true;
        clearTimeout(timer);
      };
      // A request to open that is never answered is a known fault of browsers; it must not hold up all that follows.
      const timer = setTimeout(() => answer({ kind: 'connection lost' }), OPENING_TIMES * patience_ms);
      openWith(answer).catch((error) => answer(storageTrouble(error, 'opening')));
    });
  }

  async function openWith(answer: (opened: Stored<LogbookDatabase>) => void): Promise<void> {
    if (!factory) return answer({ kind: 'no storage' });
    if ((await installedVersion(factory, name)) > newest) return answer({ kind: 'newer version' });
    const db = new LogbookDatabase(name, versions, factory, newId);
    db.on('versionchange', () => {
      openAgainFor(db);
      // Keeps Dexie's own listener from closing it once more and reopening it behind our back.
      return false;
    });
    db.on('close', () => {
      if (current === db) openAgainFor(db);
    });
    db.on('blocked', () => {
      blocked = true;
      answer({ kind: 'blocked upgrade' });
    });
    await db.open();
    if (current) return db.close();
    current = db;
    answer({ kind: 'ok', value: db });
  }

  function open(): Promise<Stored<LogbookDatabase>> {
    if (current) return Promise.resolve({ kind: 'ok', value: current });
    opening ??= openNow().then((opened) => {
      // A blocked upgrade goes on by itself when the other tab closes; asking again would only queue behind it.
      if (!blocked) opening = null;
      tell(opened);
      return opened;
    });
    return opening;
  }

  async function attempt<T>(work: (db: LogbookDatabase) => Promise<T>, times: number): Promise<Stored<T>> {
    const opened = await open();
    if (opened.kind !== 'ok') return opened;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const silence = new Promise<Stored<T>>((resolve) => {
      timer = setTimeout(() => resolve({ kind: 'connection lost' }), times * patience_ms);
    });
    try {
      const done = work(opened.value).then((value): Stored<T> => ({ kind: 'ok', value }));
      const outcome = await Promise.race([done, silence]);
      if (outcome.kind === 'connection lost') drop(opened.value);
      return outcome;
    } catch (error) {
      const trouble = storageTrouble(error, 'work');
      if (trouble.kind === 'connection lost') drop(opened.value);
      return trouble;
    } finally {
      clearTimeout(timer);
    }
  }

  return {
    name,
    withDatabase: async (work, times = 1) => {
      const first = await attempt(work, times);
      return first.kind === 'connection lost' ? attempt(work, times) : first;
    },
    watch: (listener) => {
      listeners.add(listener);
      const db = current;
      if (db) queueMicrotask(() => listeners.has(listener) && current === db && listener({ kind: 'ok', value: db }));
      else if (blocked)
        queueMicrotask(() => listeners.has(listener) && blocked && listener({ kind: 'blocked upgrade' }));
      else void open();
      return () => listeners.delete(listener);
    },
    report: (db, error) => {
      const trouble = storageTrouble(error, 'work');
      if (trouble.kind === 'connection lost' && current === db) openAgainFor(db);
      return trouble;
    },
    close: () => {
      if (current) drop(current);
    },
  };
}
