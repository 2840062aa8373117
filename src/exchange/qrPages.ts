/** Bytes of text on one code: a code of this size is read off a phone's screen at arm's length. Common practice, no source. */
export const QR_BYTES = 600;

/** Most codes of one text; beyond, a file is the better way. Own choice. */
export const MOST_QR_PAGES = 16;

const HEAD = /^CB1:([0-9a-z]{1,7}):(\d{1,2})\/(\d{1,2}):/;

/** A mark of a text, so that codes of two texts are not put together: FNV-1a, 32 bits. Source: Fowler, Noll and Vo, from memory. */
function markOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  }
  return hash.toString(36);
}

function bytesOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/**
 * A text split over codes, each saying which of how many it is and of which text: `CB1:1x2y3z:2/5:…`.
 * Null when it would need more than {@link MOST_QR_PAGES} codes.
 */
export function qrPages(text: string): string[] | null {
  const pieces: string[] = [''];
  let bytes = 0;
  for (const letter of text) {
    bytes += bytesOf(letter);
    if (bytes > QR_BYTES) {
      pieces.push('');
      bytes = bytesOf(letter);
    }
    pieces[pieces.length - 1] += letter;
  }
  if (pieces.length > MOST_QR_PAGES) return null;
  const mark = markOf(text);
  return pieces.map((piece, i) => `CB1:${mark}:${i + 1}/${pieces.length}:${piece}`);
}

/** What codes that were read so far come to. */
export type JoinedPages =
  | { readonly kind: 'whole'; readonly text: string }
  | { readonly kind: 'part'; readonly read: readonly number[]; readonly of: number }
  /** The codes are none of this app's, or of two texts, or not as they were shown. */
  | { readonly kind: 'not ours' };

/** Puts codes together again, in whatever order and however often each was read. */
export function joinPages(pages: readonly string[]): JoinedPages {
  const found = new Map<number, string>();
  let mark: string | null = null;
  let of = 0;
  for (const page of pages) {
    const head = HEAD.exec(page);
    if (!head) return { kind: 'not ours' };
    const [whole, itsMark, number, count] = head;
    if (mark !== null && (mark !== itsMark || of !== Number(count))) return { kind: 'not ours' };
    mark = itsMark;
    of = Number(count);
    if (Number(number) < 1 || Number(number) > of) return { kind: 'not ours' };
    found.set(Number(number), page.slice(whole.length));
  }
  if (mark === null) return { kind: 'not ours' };
  const read = [...found.keys()].sort((a, b) => a - b);
  if (read.length < of) return { kind: 'part', read, of };
  const text = read.map((number) => found.get(number)).join('');
  return markOf(text) === mark ? { kind: 'whole', text } : { kind: 'not ours' };
}
