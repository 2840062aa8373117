import { jsonFault, placeIn } from './jsonFault.ts';
import { foundWords, pathText, REFUSAL_LIMIT, type Reading, type Refusal, refused, WHOLE_FILE } from './refusal.ts';

/** Largest Carrybook file of one golfer, in bytes of UTF-8. */
export const LOGBOOK_BYTES = 20_000_000;

/** Deepest nesting accepted in one golfer's file; the file itself is 1. The records need 7. */
export const DEPTH_LIMIT = 16;

/** Longest list directly in a file: its shots. */
export const RECORDS_LIMIT = 200_000;

/** Longest list inside a record. The records need 60; a frozen book holds a few thousand. */
const PARTS_LIMIT = 20_000;

/** Most keys of one object. The records need 30, and may carry 64 more that this version does not know. */
const KEYS_LIMIT = 2000;

/** What a text is not even parsed with, since parsing alone would take long: so deep, or so long a list. */
const PARSED_DEPTH_LIMIT = 100_000;
const PARSED_LIST_LIMIT = 1_000_000;

/** Keys that reach an object's prototype when copied without care. */
const forbiddenKeys = new Set(['__proto__', 'constructor', 'prototype']);

/** Bytes that a text takes in UTF-8. A lone surrogate counts 3, as its replacement does. */
export function utf8Bytes(text: string): number {
  let bytes = text.length;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit < 0x80) continue;
    const pair = unit >= 0xd800 && unit < 0xdc00 && (text.charCodeAt(i + 1) & 0xfc00) === 0xdc00;
    if (unit < 0x800) bytes += 1;
    else bytes += 2;
    if (pair) i += 1;
  }
  return bytes;
}

/** Refusal of a text above a size, in bytes; undefined when it fits. */
export function sizeRefusal(bytes: number, most: number, path: string): Refusal | undefined {
  if (bytes <= most) return undefined;
  return { path, expected: `at most ${most / 1e6} MB`, found: `${(bytes / 1e6).toFixed(1)} MB` };
}

/** UTF-16 units that build a JSON text. Source: RFC 8259, section 2. */
const QUOTE = 0x22;
const COMMA = 0x2c;
const OPEN_LIST = 0x5b;
const BACKSLASH = 0x5c;
const CLOSE_LIST = 0x5d;
const OPEN_OBJECT = 0x7b;
const CLOSE_OBJECT = 0x7d;

/** Levels whose commas are counted; a bomb further in is found by its depth. */
const COUNTED_LEVELS = 64;

/** What would take long to parse, found by counting brackets and commas outside texts; undefined when nothing would. */
function bombRefusal(text: string): Refusal | undefined {
  const refusal = (at: number, most: string, found: string): Refusal => ({
    path: placeIn(text, at),
    expected: `at most ${most}`,
    found,
  });
  const commas = new Int32Array(COUNTED_LEVELS);
  const limits = new Int32Array(COUNTED_LEVELS);
  let depth = 0;
  let isInText = false;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (isInText) {
      if (unit === BACKSLASH) i += 1;
      else if (unit === QUOTE) isInText = false;
    } else if (unit === QUOTE) isInText = true;
    else if (unit === COMMA) {
      if (depth === 0 || depth >= COUNTED_LEVELS) continue;
      commas[depth] += 1;
      if (commas[depth] < limits[depth]) continue;
      return limits[depth] === KEYS_LIMIT
        ? refusal(i, `${KEYS_LIMIT} keys of one object`, 'more')
        : refusal(i, `${RECORDS_LIMIT} in a list`, 'more');
    } else if (unit === OPEN_LIST || unit === OPEN_OBJECT) {
      depth += 1;
      if (depth > PARSED_DEPTH_LIMIT) return refusal(i, `${DEPTH_LIMIT} levels`, 'a deeper one');
      if (depth >= COUNTED_LEVELS) continue;
      commas[depth] = 0;
      limits[depth] = unit === OPEN_LIST ? PARSED_LIST_LIMIT : KEYS_LIMIT;
    } else if (unit === CLOSE_LIST || unit === CLOSE_OBJECT) depth = Math.max(0, depth - 1);
  }
  return undefined;
}

/** Parses JSON; a text that is none is refused with the line and column. A byte order mark is passed over. */
export function parseDocument(text: string): Reading<unknown> {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const bomb = bombRefusal(body);
  if (bomb) return refused([bomb]);
  try {
    return { kind: 'read', value: JSON.parse(body) };
  } catch (error) {
    if (error instanceof SyntaxError) return refused([jsonFault(body)]);
    throw error;
  }
}

/**
 * What is wrong with the build of a parsed value whatever its schema: nested too deep, a list or an object
 * too long, a key that reaches a prototype, or a number that JSON can write and a computer cannot hold (1e999).
 *
 * @param prefix the path at which the value stands in its file.
 */
export function structureRefusals(value: unknown, prefix: readonly PropertyKey[] = []): Refusal[] {
  const refusals: Refusal[] = [];
  const path: PropertyKey[] = [...prefix];
  const walk = (at: unknown, depth: number): void => {
    if (refusals.length >= REFUSAL_LIMIT) return;
    if (typeof at === 'number' && !Number.isFinite(at)) {
      refusals.push({ path: pathText(path), expected: 'a finite number', found: foundWords(at) });
    }
    if (typeof at !== 'object' || at === null) return;
    if (depth > DEPTH_LIMIT) {
      refusals.push({ path: pathText(path), expected: `at most ${DEPTH_LIMIT} levels`, found: 'a deeper one' });
      return;
    }
    const keys = Array.isArray(at) ? [] : Object.keys(at);
    const length = Array.isArray(at) ? at.length : keys.length;
    const most = Array.isArray(at) ? (depth <= 2 ? RECORDS_LIMIT : PARTS_LIMIT) : KEYS_LIMIT;
    if (length > most) {
      const what = Array.isArray(at) ? (depth === 2 ? String(path.at(-1)) : 'in a list') : 'keys';
      refusals.push({ path: pathText(path), expected: `at most ${most} ${what}`, found: `${length}` });
      return;
    }
    if (Array.isArray(at)) {
      for (let index = 0; index < length && refusals.length < REFUSAL_LIMIT; index++) {
        path.push(index);
        walk(at[index], depth + 1);
        path.pop();
      }
      return;
    }
    for (const key of keys) {
      path.push(key);
      if (forbiddenKeys.has(key)) {
        refusals.push({ path: pathText(path), expected: 'no key of this name', found: `the key "${key}"` });
      } else walk((at as Record<string, unknown>)[key], depth + 1);
      path.pop();
    }
  };
  walk(value, 1);
  return refusals;
}

/** The value as an object with keys, or a refusal that names what it is. */
export function objectReading(value: unknown, path: readonly PropertyKey[] = []): Reading<Record<string, unknown>> {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    return { kind: 'read', value: value as Record<string, unknown> };
  }
  const place = path.length === 0 ? WHOLE_FILE : pathText(path);
  return refused([{ path: place, expected: 'an object', found: foundWords(value) }]);
}

/**
 * What is wrong with the format word and the version of a file; undefined when this program reads it.
 * An absent version counts as 1.
 */
export function headRefusal(
  head: Record<string, unknown>,
  format: string,
  prefix: readonly PropertyKey[] = [],
): Refusal | undefined {
  if (head.format !== format) {
    return { path: pathText([...prefix, 'format']), expected: `the text "${format}"`, found: foundWords(head.format) };
  }
  const version = head.version ?? 1;
  if (typeof version === 'number' && Number.isInteger(version) && version > 1) {
    return {
      path: pathText([...prefix, 'version']),
      expected: 'version 1, the newest that this Carrybook reads (a newer Carrybook is needed)',
      found: `version ${version}`,
    };
  }
  if (version === 1) return undefined;
  return { path: pathText([...prefix, 'version']), expected: 'version 1', found: foundWords(version) };
}
