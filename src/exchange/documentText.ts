import { jsonFault } from './jsonFault.ts';
import { foundWords, pathText, REFUSAL_LIMIT, type Reading, type Refusal, refused, WHOLE_FILE } from './refusal.ts';

/** Largest Carrybook file of one golfer, in bytes of UTF-8. */
export const LOGBOOK_BYTES = 20_000_000;

/** Deepest nesting accepted in one golfer's file; the file itself is 1. The records need 7. */
export const DEPTH_LIMIT = 16;

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

/** Parses JSON; a text that is none is refused with the line and column. A byte order mark is passed over. */
export function parseDocument(text: string): Reading<unknown> {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  try {
    return { kind: 'read', value: JSON.parse(body) };
  } catch (error) {
    if (error instanceof SyntaxError) return refused([jsonFault(body)]);
    throw error;
  }
}

/**
 * What is wrong with the build of a parsed value whatever its schema: nested too deep, a key that
 * reaches a prototype, or a number that JSON can write and a computer cannot hold (1e999).
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
    if (Array.isArray(at)) {
      for (const [index, element] of at.entries()) {
        path.push(index);
        walk(element, depth + 1);
        path.pop();
      }
      return;
    }
    for (const key of Object.keys(at)) {
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
