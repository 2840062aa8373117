import * as z from 'zod/mini';
import { REFUSAL_LIMIT, type Reading, type Refusal, refused } from './refusal.ts';
import { schemaRefusals } from './schemaRefusals.ts';
import { elementOf } from './schemaTree.ts';

/** Those keys of a file under which a list of records stands. */
type ListKey<S extends z.ZodMiniObject> = keyof z.output<S> & string;

/**
 * Parses a file whose lists may be long: the file without them first, then record by record, and no further
 * than as many reasons as are told. A schema run over the whole would gather millions of them first.
 *
 * @param prefix the path at which the value stands in its file.
 */
export function parseLists<S extends z.ZodMiniObject>(
  schema: S,
  value: Readonly<Record<string, unknown>>,
  lists: readonly ListKey<S>[],
  prefix: readonly PropertyKey[],
): Reading<z.output<S>> {
  const full = lists.filter((list) => Array.isArray(value[list]));
  const head = z.safeParse(schema, { ...value, ...Object.fromEntries(full.map((list) => [list, []])) });
  const refusals: Refusal[] = head.success ? [] : schemaRefusals(schema, value, head.error.issues, prefix);
  const records: Record<string, unknown[]> = {};
  for (const list of full) {
    const element = elementOf(schema.shape[list]);
    if (!element) throw new RangeError(`${list} is no list of the file`);
    records[list] = [];
    for (const [index, each] of (value[list] as unknown[]).entries()) {
      if (refusals.length >= REFUSAL_LIMIT) break;
      const parsed = z.safeParse(element, each);
      if (parsed.success) records[list].push(parsed.data);
      else
        for (const refusal of schemaRefusals(element, each, parsed.error.issues, [...prefix, list, index]))
          refusals.push(refusal);
    }
  }
  if (!head.success || refusals.length > 0) return refused(refusals);
  return { kind: 'read', value: { ...head.data, ...records } };
}
