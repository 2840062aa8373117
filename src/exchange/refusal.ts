import { cleanText } from '../golf/text.ts';

/** One reason why a file cannot be read: where, what would have been right there, and what stands there. */
export interface Refusal {
  /** The place in the file, such as `shots[3].carry.m`, `line 4, column 12` or `the file`. */
  readonly path: string;
  readonly expected: string;
  readonly found: string;
}

/** What came of reading outside text: the value, or every reason against it in the order of the file. */
export type Reading<T> =
  | { readonly kind: 'read'; readonly value: T }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** Most reasons reported for one file; the first ones in the file come first. */
export const REFUSAL_LIMIT = 20;

/** The path of the whole file. */
export const WHOLE_FILE = 'the file';

/** Longest piece of a file that a refusal quotes, in UTF-16 units. */
const QUOTE_LIMIT = 60;

/** A refused reading, cut to the first {@link REFUSAL_LIMIT} reasons. */
export function refused(refusals: readonly Refusal[]): { readonly kind: 'refused'; readonly refusals: Refusal[] } {
  return { kind: 'refused', refusals: refusals.slice(0, REFUSAL_LIMIT) };
}

/** One readable sentence: `shots[3].carry.m: expected a number from 0 to 600, found the text "140"`. */
export function refusalSentence(refusal: Refusal): string {
  return `${refusal.path}: expected ${refusal.expected}, found ${refusal.found}`;
}

/** A piece of a file made safe to show: cleaned, on one line, and cut when long. */
export function quoted(text: string): string {
  const line = cleanText(text.slice(0, QUOTE_LIMIT + 1)).replace(/[\t\n]/g, ' ');
  return line.length > QUOTE_LIMIT ? `${cleanText(line.slice(0, QUOTE_LIMIT))}…` : line;
}

/** A path as people read it: `shots[3].carry.m`. An empty one is {@link WHOLE_FILE}. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`;
    else text += `${text === '' ? '' : '.'}${quoted(String(step))}`;
  }
  return text === '' ? WHOLE_FILE : text;
}

/** A value of a file in words: `the text "140"`, `nothing`, `a list`. */
export function foundWords(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return `the text "${quoted(value)}"`;
  if (typeof value === 'number') return Number.isFinite(value) ? `${value}` : 'a number too large to hold';
  if (typeof value === 'boolean') return `${value}`;
  return Array.isArray(value) ? `a list of ${value.length}` : 'an object';
}
