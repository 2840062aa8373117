import { elementOf, type Schema, shapeOf } from './schemaTree.ts';

type Keyed = Record<string, unknown>;

function isKeyed(value: unknown): value is Keyed {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * The same value with every object's keys in one order: those of the schema first, in its order, then
 * the unknown ones sorted. Two values that say the same then give the same JSON.
 */
export function canonicalValue(value: unknown, schema?: Schema): unknown {
  if (Array.isArray(value)) {
    const element = schema && elementOf(schema);
    return value.map((each) => canonicalValue(each, element));
  }
  if (!isKeyed(value)) return value;
  const shape = (schema && shapeOf(schema)) ?? {};
  const ordered: Keyed = {};
  for (const [key, inner] of Object.entries(shape)) {
    if (value[key] !== undefined) ordered[key] = canonicalValue(value[key], inner);
  }
  const unknown = Object.keys(value).filter((key) => !Object.hasOwn(shape, key) && value[key] !== undefined);
  for (const key of unknown.sort()) ordered[key] = canonicalValue(value[key]);
  return ordered;
}

/** JSON of a value with keys in one order, see {@link canonicalValue}. */
export function canonicalJson(value: unknown, schema?: Schema): string {
  return JSON.stringify(canonicalValue(value, schema));
}

/** Orders texts by their UTF-16 units, the same in every place and language. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
