import { byText } from './canonicalJson.ts';

/** One field that leaves the phone: where it stands, how often it says anything, and one thing it says. */
export interface LeavingField {
  /** The place with lists left open: `shots[].carry.m`. */
  readonly path: string;
  readonly count: number;
  readonly example: string;
}

/** Longest example shown, in UTF-16 units. */
const EXAMPLE_LIMIT = 40;

function exampleOf(value: unknown): string {
  const text = String(value);
  return text.length > EXAMPLE_LIMIT ? `${text.slice(0, EXAMPLE_LIMIT)}…` : text;
}

/**
 * Every field of a file that says something, in the order of its path: what leaves the phone, to be read
 * before it does. Empty texts, nulls and empty lists say nothing and are not listed.
 *
 * @param file the very value that will be written, not a description of it.
 */
export function sharePreview(file: object): LeavingField[] {
  const fields = new Map<string, { count: number; example: string }>();
  const walk = (value: unknown, path: string): void => {
    if (value === null || value === undefined || value === '') return;
    if (Array.isArray(value)) {
      for (const each of value) walk(each, `${path}[]`);
      return;
    }
    if (typeof value === 'object') {
      for (const [key, inner] of Object.entries(value)) walk(inner, path === '' ? key : `${path}.${key}`);
      return;
    }
    const seen = fields.get(path);
    if (seen) seen.count += 1;
    else fields.set(path, { count: 1, example: exampleOf(value) });
  };
  walk(file, '');
  return [...fields].map(([path, field]) => ({ path, ...field })).sort((a, b) => byText(a.path, b.path));
}
