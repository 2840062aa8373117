import { type ReadonlySignal, signal } from '@preact/signals';
import { liveQuery } from 'dexie';
import type { Connection } from './connection.ts';
import type { LogbookDatabase } from './database.ts';
import { type StorageTrouble, storageTrouble } from './storageTrouble.ts';

/** Something read from the logbook that stays up to date. */
export type Live<T> =
  | { readonly kind: 'loading' }
  | { readonly kind: 'ready'; readonly value: T }
  | { readonly kind: 'failed'; readonly why: StorageTrouble };

/** Readings that fail one after the other before the trouble is shown. */
const FAILURES_SHOWN = 2;

/**
 * A signal of what a query reads, read anew whenever a write (of this tab or another) touched what it
 * read before, and whenever the logbook was opened anew. It reads only while somebody watches it.
 */
export function liveSignal<T>(
  connection: Connection,
  query: (db: LogbookDatabase) => Promise<T>,
): ReadonlySignal<Live<T>> {
  let stop = () => {};
  const live = signal<Live<T>>(
    { kind: 'loading' },
    {
      watched: () => {
        stop = follow(connection, query, (next) => {
          live.value = next;
        });
      },
      unwatched: () => stop(),
    },
  );
  return live;
}

function follow<T>(
  connection: Connection,
  query: (db: LogbookDatabase) => Promise<T>,
  tell: (live: Live<T>) => void,
): () => void {
  let failures = 0;
  let unsubscribe = () => {};
  const unwatch = connection.watch((opened) => {
    unsubscribe();
    if (opened.kind !== 'ok') {
      tell({ kind: 'failed', why: opened });
      return;
    }
    // Must be an async function: Dexie then keeps track of what is read after the first await.
    const subscription = liveQuery(async () => query(opened.value)).subscribe({
      next: (value) => {
        failures = 0;
        tell({ kind: 'ready', value });
      },
      error: (error: unknown) => {
        failures += 1;
        const again = failures < FAILURES_SHOWN;
        const why = again ? connection.report(opened.value, error) : storageTrouble(error, 'work');
        if (!again || why.kind !== 'connection lost') tell({ kind: 'failed', why });
      },
    });
    unsubscribe = () => subscription.unsubscribe();
  });
  return () => {
    unwatch();
    unsubscribe();
  };
}
