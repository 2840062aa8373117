import type { Book } from '../book/book.ts';
import { canonicalJson } from '../exchange/canonicalJson.ts';

/** Letters of the mark: 48 bits, enough that no two books of a golfer share one. Own choice. */
const LENGTH = 12;

/** Short mark of a book: the first twelve hexadecimal digits of the SHA-256 of its canonical JSON. */
export async function bookHash(book: Book): Promise<string> {
  const bytes = new TextEncoder().encode(canonicalJson(book));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .slice(0, LENGTH);
}
