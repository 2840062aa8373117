import * as z from 'zod/mini';
import { type NotValid, type Refused, refuse } from './outcome.ts';

/**
 * The record as it may be stored, its texts cleaned, or the slot that holds what no record may: what
 * is stored must be readable from a backup again.
 */
export function valid<T extends object>(
  schema: z.ZodMiniType<T>,
  record: unknown,
): { readonly kind: 'valid'; readonly value: T } | Refused<NotValid> {
  const parsed = z.safeParse(schema, record);
  if (parsed.success) return { kind: 'valid', value: parsed.data };
  return refuse({ kind: 'not valid', path: parsed.error.issues[0]?.path.join('.') ?? '' });
}
