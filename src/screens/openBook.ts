import { effect, signal } from '@preact/signals';
import type { Book } from '../book/book.ts';
import { compute } from '../worker/compute.ts';
import { type OpenLogbook, openLogbook } from './openLogbook.ts';

/** The book of the open logbook, or how far it has got. */
export type OpenBook =
  | { readonly kind: 'none' }
  | { readonly kind: 'reckoning' }
  | { readonly kind: 'ready'; readonly book: Book }
  | { readonly kind: 'failed'; readonly why: string };

/** What the worker made of the open logbook. A newer logbook overtakes an older one still being reckoned. */
export const openBook = signal<OpenBook>({ kind: 'none' });

/** Reckons the book of the open logbook anew, in the worker. */
export async function reckonBook(open: OpenLogbook): Promise<void> {
  openBook.value = { kind: 'reckoning' };
  let outcome: OpenBook;
  try {
    outcome = { kind: 'ready', book: await compute('composeBook', open.logbook, open.asOf) };
  } catch (error) {
    outcome = { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
  if (openLogbook.peek() === open) openBook.value = outcome;
}

/** Keeps the book in step with the logbook. Called once, by the page. */
export function followLogbook(): void {
  effect(() => {
    const open = openLogbook.value;
    if (open) void reckonBook(open);
    else openBook.value = { kind: 'none' };
  });
}
