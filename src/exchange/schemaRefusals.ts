import type * as z from 'zod/mini';
import { expectedWords } from './expectedWords.ts';
import { foundWords, pathText, REFUSAL_LIMIT, type Refusal } from './refusal.ts';
import { type Schema, schemaAt } from './schemaTree.ts';

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = value;
  for (const step of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<PropertyKey, unknown>)[step];
  }
  return at;
}

/**
 * The reasons of a failed schema in words, each with the place, the first {@link REFUSAL_LIMIT} of them.
 *
 * @param prefix the path at which the value stands in its file.
 */
export function schemaRefusals(
  schema: Schema,
  value: unknown,
  issues: readonly z.core.$ZodIssue[],
  prefix: readonly PropertyKey[],
): Refusal[] {
  return issues.slice(0, REFUSAL_LIMIT).map((issue) => {
    const at = schemaAt(schema, issue.path);
    return {
      path: pathText([...prefix, ...issue.path]),
      expected: at ? expectedWords(at) : issue.message,
      found: foundWords(valueAt(value, issue.path)),
    };
  });
}
