import type { Keeper } from '../actions/keeper.ts';
import type { Round } from '../golf/round.ts';
import { readLogbook } from '../logbook/readLogbook.ts';
import { compute } from '../worker/compute.ts';
import { bookHash } from './bookHash.ts';
import { words } from './words.ts';

/** The frozen book for a round by the Rules, or why there is none, in words. */
export type Freezing =
  | { readonly kind: 'frozen'; readonly frozenBook: NonNullable<Round['frozenBook']> }
  | { readonly kind: 'not frozen'; readonly why: string };

/** How much longer than a shot a whole logbook may take to be read before the connection counts as lost. */
const PATIENCE_TIMES = 6;

/** Freezes the book as it stands now, before a round by the Rules starts: its moment and its short mark. */
export async function freezeBook(keeper: Keeper): Promise<Freezing> {
  const at = new Date(keeper.clock.now()).toISOString();
  const read = await keeper.connection.withDatabase(readLogbook, PATIENCE_TIMES);
  if (read.kind !== 'ok') return { kind: 'not frozen', why: words.storage.why(read) };
  try {
    const book = await compute('composeBook', read.value, at);
    return { kind: 'frozen', frozenBook: { at, hash: await bookHash(book) } };
  } catch (error) {
    return { kind: 'not frozen', why: error instanceof Error ? error.message : String(error) };
  }
}
