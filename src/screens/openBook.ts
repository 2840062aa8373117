import { effect, signal } from '@preact/signals';
import type { Book } from '../book/book.ts';
import { compute } from '../worker/compute.ts';
import { type OpenLogbook, openLogbook } from './openLogbook.ts';

/** A book that is there. */
export interface ReadyBook {
  readonly kind: 'ready';
  readonly book: Book;
  /** What it was reckoned from. */
  readonly of: OpenLogbook;
  /** Of a frozen card: whether it is to the digit the book that was frozen. */
  readonly isAsFrozen: boolean;
}

/** The book of the open logbook, or how far it has got. */
export type OpenBook =
  | { readonly kind: 'none' }
  | { readonly kind: 'reckoning' }
  | ReadyBook
  | { readonly kind: 'failed'; readonly why: string };

/** What the worker made of the open logbook. While a newer one is reckoned the last one of the same golfer stays. */
export const openBook = signal<OpenBook>({ kind: 'none' });

async function reckoned(of: OpenLogbook): Promise<OpenBook> {
  try {
    const book = await compute('composeBook', of.logbook, of.asOf);
    const hash = of.frozen?.hash ?? null;
    if (hash === null) return { kind: 'ready', book, of, isAsFrozen: true };
    // Fetched only for a frozen card, to keep the first load small.
    const { bookHash } = await import('./bookHash.ts');
    return { kind: 'ready', book, of, isAsFrozen: (await bookHash(book)) === hash };
  } catch (error) {
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
}

/** Whether the last book may stand until the newer one is there: same golfer, same source, same freeze. */
function mayStand(last: OpenBook, next: OpenLogbook): boolean {
  return (
    last.kind === 'ready' &&
    last.of.from === next.from &&
    last.of.logbook.player.id === next.logbook.player.id &&
    last.of.frozen?.roundId === next.frozen?.roundId
  );
}

let isReckoning = false;

/** Reckons the book of the open logbook in the worker, and again while a newer logbook came in meanwhile. */
export async function reckonBook(): Promise<void> {
  const wanted = openLogbook.peek();
  if (wanted && !mayStand(openBook.peek(), wanted)) openBook.value = { kind: 'reckoning' };
  if (isReckoning) return;
  isReckoning = true;
  for (let of = wanted; of; ) {
    const outcome = await reckoned(of);
    const newest: OpenLogbook | null = openLogbook.peek();
    if (newest === of) {
      openBook.value = outcome;
      break;
    }
    of = newest;
  }
  isReckoning = false;
}

/** Keeps the book in step with the logbook. Called once, by the page. */
export function followLogbook(): void {
  effect(() => {
    if (openLogbook.value) void reckonBook();
    else openBook.value = { kind: 'none' };
  });
}
