import * as z from 'zod/mini';
import { changedKeys } from './changed.ts';
import { conditionsSchema } from './conditions.ts';
import { holeNumberField, holeSchema } from './hole.ts';
import { dateField, instantField } from './instant.ts';
import { idField, nameField } from './text.ts';

/** How a round is played: for a score by the Rules, casually, or as practice-ground work. */
export const playField = z.enum(['rules', 'casual', 'practice ground']);
export type Play = z.infer<typeof playField>;

/** The golfer's own balls, or the practice ground's. */
export const ballField = z.enum(['own', 'range']);
export type Ball = z.infer<typeof ballField>;

/** The book as it stood when a round by the Rules began: when, its short hash, and its content. */
export const frozenBookSchema = z.looseObject({
  at: instantField,
  hash: z.string().check(z.maxLength(128)),
});

/** One round or one visit to the practice ground. */
export const roundSchema = z.looseObject({
  id: idField,
  date: dateField,
  startedAt: z._default(z.nullable(instantField), null),
  closedAt: z._default(z.nullable(instantField), null),
  course: z._default(nameField, ''),
  tees: z._default(nameField, ''),
  startHole: z._default(holeNumberField, 1),
  play: z._default(playField, 'rules'),
  closed: z._default(z.boolean(), true),
  bag: z._default(z.array(idField).check(z.maxLength(60)), []),
  ball: z._default(ballField, 'own'),
  distanceDevices: z._default(z.boolean(), true),
  frozenBook: z._default(z.nullable(frozenBookSchema), null),
  conditions: conditionsSchema,
  holes: z._default(z.array(holeSchema).check(z.maxLength(54)), []),
  ...changedKeys,
});
export type Round = z.infer<typeof roundSchema>;
