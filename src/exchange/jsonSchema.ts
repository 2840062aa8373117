import * as z from 'zod/mini';
import { carrybookFileSchema } from './carrybookFile.ts';

/**
 * The JSON Schema (draft 2020-12) of one golfer's Carrybook file, version 1, as other programs may
 * write it: keys with a default may be absent. What a schema cannot say (ids that repeat or lead
 * nowhere, the limits of size) is checked by the reader alone.
 */
export function carrybookJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(carrybookFileSchema, { io: 'input', target: 'draft-2020-12' });
  return { ...schema, title: 'Carrybook file, version 1' };
}

/** The text of the committed schema file. */
export function carrybookJsonSchemaText(): string {
  return `${JSON.stringify(carrybookJsonSchema(), null, 2)}\n`;
}
