import * as z from 'zod/mini';
import { instantField, NEVER_CHANGED } from './instant.ts';
import { idField } from './text.ts';

/** What is left of a record that was deleted, so that an old file cannot bring it back. */
export const tombstoneSchema = z.looseObject({
  id: idField,
  of: z._default(z.enum(['club', 'round', 'shot', 'review']), 'shot'),
  at: z._default(instantField, NEVER_CHANGED),
  device: z._default(z.string().check(z.maxLength(100), z.regex(/^[A-Za-z0-9_.:-]*$/)), ''),
});
export type Tombstone = z.infer<typeof tombstoneSchema>;
