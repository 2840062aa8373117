import { utf8Bytes } from './documentText.ts';
import { pathText, type Refusal } from './refusal.ts';
import { elementOf, type Schema, shapeOf } from './schemaTree.ts';

/** Most keys that one record may carry beyond the ones this version knows. */
export const UNKNOWN_KEYS_LIMIT = 64;

/** Most JSON under such keys of one record, in bytes. */
export const UNKNOWN_BYTES_LIMIT = 20_000;

/** Most JSON kept with the frozen book of a round, in bytes: a whole book may stand there. */
export const FROZEN_BOOK_BYTES_LIMIT = 500_000;

interface Unknown {
  keys: number;
  bytes: number;
}

function isKeyed(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Bytes of a value as JSON; once they are more than `most`, any number above it. */
function jsonBytes(value: unknown, most: number): number {
  if (typeof value === 'string') return value.length > most ? value.length : utf8Bytes(JSON.stringify(value));
  if (typeof value !== 'object' || value === null) return utf8Bytes(JSON.stringify(value) ?? '');
  let bytes = 2;
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length && bytes <= most; i++)
      bytes += jsonBytes(value[i], most - bytes) + (i > 0 ? 1 : 0);
    return bytes;
  }
  for (const [i, key] of Object.keys(value).entries()) {
    if (bytes > most) break;
    bytes += jsonBytes(key, most) + jsonBytes((value as Record<string, unknown>)[key], most - bytes) + (i > 0 ? 2 : 1);
  }
  return bytes;
}

function addUnknown(value: unknown, schema: Schema, skip: string | undefined, sum: Unknown, most: number): void {
  if (typeof value !== 'object' || sum.bytes > most) return;
  if (Array.isArray(value)) {
    const element = elementOf(schema);
    if (element) for (const each of value) addUnknown(each, element, undefined, sum, most);
    return;
  }
  const shape = shapeOf(schema);
  if (!isKeyed(value) || !shape) return;
  for (const key of Object.keys(value)) {
    if (key === skip) continue;
    const inner = Object.hasOwn(shape, key) ? shape[key] : undefined;
    if (inner) addUnknown(value[key], inner, undefined, sum, most);
    else {
      sum.keys += 1;
      sum.bytes += utf8Bytes(key) + jsonBytes(value[key], most);
    }
  }
}

/**
 * Refusal of a record that carries too much under keys this version does not know; undefined when it
 * does not. Such keys are kept so that the format can grow by adding, within a measure.
 *
 * @param skip a key of the record whose content is not counted.
 */
export function unknownRefusal(
  value: unknown,
  schema: Schema,
  path: readonly PropertyKey[],
  skip?: string,
  bytesLimit: number = UNKNOWN_BYTES_LIMIT,
): Refusal | undefined {
  const sum: Unknown = { keys: 0, bytes: 0 };
  addUnknown(value, schema, skip, sum, bytesLimit);
  if (sum.keys <= UNKNOWN_KEYS_LIMIT && sum.bytes <= bytesLimit) return undefined;
  return {
    path: pathText(path),
    expected: `at most ${UNKNOWN_KEYS_LIMIT} unknown keys with ${bytesLimit} bytes in all`,
    found: `${sum.keys} with ${sum.bytes > bytesLimit ? 'more' : `${sum.bytes} bytes`}`,
  };
}
