import * as z from 'zod/mini';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import { quantityField } from '../units/quantityField.ts';
import { idField } from './text.ts';

/** Highest hole number a round may name: three loops of eighteen. */
export const HOLE_LIMIT = 54;

export const holeNumberField = z.int().check(z.gte(1), z.lte(HOLE_LIMIT));

/** One putt: the putter, how long it was, and whether it went in. */
export const puttSchema = z.looseObject({
  clubId: z._default(z.nullable(idField), null),
  length_m: z._default(z.nullable(quantityField<Metres>(0, 150)), null),
  holed: z._default(z.boolean(), false),
});
export type Putt = z.infer<typeof puttSchema>;

/** One hole of a round: what it is, and what was scored and putted on it. */
export const holeSchema = z.looseObject({
  number: holeNumberField,
  par: z._default(z.nullable(z.int().check(z.gte(2), z.lte(7))), null),
  length_m: z._default(z.nullable(quantityField<Metres>(10, 1200)), null),
  bearing_deg: z._default(z.nullable(quantityField<Degrees>(0, 360)), null),
  strokes: z._default(z.nullable(z.int().check(z.gte(1), z.lte(99))), null),
  penalties: z._default(z.int().check(z.gte(0), z.lte(50)), 0),
  result: z._default(z.enum(['played', 'picked up', 'conceded']), 'played'),
  putts: z._default(z.array(puttSchema).check(z.maxLength(50)), []),
});
export type Hole = z.infer<typeof holeSchema>;
