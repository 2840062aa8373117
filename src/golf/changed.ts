import * as z from 'zod/mini';
import { instantField, NEVER_CHANGED } from './instant.ts';

/** Who changed a record last and when: the two keys that a merge decides by. */
export const changedKeys = {
  changedAt: z._default(instantField, NEVER_CHANGED),
  device: z._default(z.string().check(z.maxLength(100), z.regex(/^[A-Za-z0-9_.:-]*$/)), ''),
};
