import * as z from 'zod/mini';
import { changedKeys } from './changed.ts';
import { dateField, instantField } from './instant.ts';
import { swingField } from './swing.ts';
import { idField, nameField, noteField } from './text.ts';

/** A coach's note on a club, a cell or a round, with a practice task or none. */
export const reviewSchema = z.looseObject({
  id: idField,
  by: z._default(nameField, ''),
  at: z._default(z.nullable(instantField), null),
  about: z._default(
    z.looseObject({
      clubId: z._default(z.nullable(idField), null),
      swing: z._default(z.nullable(swingField), null),
      roundId: z._default(z.nullable(idField), null),
    }),
    { clubId: null, swing: null, roundId: null },
  ),
  note: z._default(noteField, ''),
  task: z._default(
    z.nullable(
      z.looseObject({
        balls: z._default(z.int().check(z.gte(0), z.lte(10_000)), 0),
        due: z._default(z.nullable(dateField), null),
      }),
    ),
    null,
  ),
  ...changedKeys,
});
export type Review = z.infer<typeof reviewSchema>;

/** The player's word that a review's task is done. */
export const doneSchema = z.looseObject({ reviewId: idField, at: z._default(z.nullable(instantField), null) });
export type Done = z.infer<typeof doneSchema>;
