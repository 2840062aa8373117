import * as z from 'zod/mini';
import type { Metres } from '../units/metres.ts';
import type { MetresPerSecond } from '../units/metresPerSecond.ts';
import { quantityField } from '../units/quantityField.ts';
import { changedKeys } from './changed.ts';
import { holeNumberField } from './hole.ts';
import { instantField } from './instant.ts';
import { lieField, restLieField } from './lie.ts';
import { markSchema } from './mark.ts';
import { swingField } from './swing.ts';
import { idField, noteField } from './text.ts';

/** Where on the face or ground the club met the ball, as the golfer felt it. */
export const strikeField = z.enum(['solid', 'thin', 'fat', 'heel', 'toe']);
export type Strike = z.infer<typeof strikeField>;

/** What the shot was for. Only `normal` feeds the book. */
export const intentField = z.enum(['normal', 'knockdown', 'recovery', 'chip']);
export type Intent = z.infer<typeof intentField>;

/** How a distance was come by: see the error table in yardages/. */
export const knownByField = z.enum(['laser', 'gnss', 'paced', 'typed', 'judged', 'total']);
export type KnownBy = z.infer<typeof knownByField>;

/** What became of the ball. */
export const outcomeField = z.enum([
  'in play',
  'holed',
  'penalty area',
  'out of bounds',
  'lost',
  'provisional unused',
  'conceded',
]);
export type Outcome = z.infer<typeof outcomeField>;

/** What was special about the lie or stance. */
export const tagField = z.enum(['flier', 'wet', 'uphill stance', 'downhill stance', 'ball above', 'ball below']);
export type Tag = z.infer<typeof tagField>;

/** A distance, how it was come by, and its standard error when known better than the usual for that way. */
export const measureSchema = z.looseObject({
  m: quantityField<Metres>(0, 600),
  by: z._default(knownByField, 'typed'),
  error_m: z._default(z.nullable(quantityField<Metres>(0, 200)), null),
});
export type Measure = z.infer<typeof measureSchema>;

const offset = quantityField<Metres>(-400, 400);

/** Wind on the shot: from the clock position `from_clock` (12 into, 3 from the right, 6 down). */
export const shotWindSchema = z.looseObject({
  from_clock: z.number().check(z.gte(0), z.lte(12)),
  mps: quantityField<MetresPerSecond>(0, 60),
  reference_m: z._default(quantityField<Metres>(0.1, 100), 2 as never),
  how: z._default(z.enum(['felt', 'forecast', 'measured']), 'felt'),
});

/**
 * One stroke, as logged. A slot left open is null; a shot with no measure counts as played and feeds
 * no number. `aim` is where the golfer meant it relative to the flag (+ long, + right); `offline_m`
 * is about the aim (+ right). `rise_m` is the height of the landing point above the ball.
 */
export const shotSchema = z.looseObject({
  id: idField,
  roundId: idField,
  hole: holeNumberField,
  /** Orders the shots within a hole; fractions slip one in between. */
  number: z._default(z.number().check(z.gte(0), z.lte(999)), 1),
  at: z._default(z.nullable(instantField), null),
  clubId: z.nullable(idField),
  specId: z._default(z.nullable(idField), null),
  swing: z._default(swingField, 'full'),
  lie: z._default(z.nullable(lieField), null),
  tags: z._default(z.array(tagField).check(z.maxLength(6)), []),
  strike: z._default(z.nullable(strikeField), null),
  intent: z._default(intentField, 'normal'),
  flag_m: z._default(z.nullable(quantityField<Metres>(0, 600)), null),
  aim: z._default(z.looseObject({ long_m: z._default(offset, 0 as never), right_m: z._default(offset, 0 as never) }), {
    long_m: 0,
    right_m: 0,
  } as never),
  carry: z._default(z.nullable(measureSchema), null),
  /** The ball carried at least this far ("cleared the bunker at …"). */
  carryAtLeast_m: z._default(z.nullable(quantityField<Metres>(0, 600)), null),
  /** The ball carried at most this far ("short of it"). */
  carryAtMost_m: z._default(z.nullable(quantityField<Metres>(0, 600)), null),
  total: z._default(z.nullable(measureSchema), null),
  offline_m: z._default(z.nullable(offset), null),
  restLie: z._default(z.nullable(restLieField), null),
  outcome: z._default(outcomeField, 'in play'),
  penalty: z._default(z.int().check(z.gte(0), z.lte(10)), 0),
  fromDrop: z._default(z.boolean(), false),
  /** null: unknown; `calm`: there was none. */
  wind: z._default(z.nullable(z.union([z.literal('calm'), shotWindSchema])), null),
  rise_m: z._default(z.nullable(offset), null),
  note: z._default(noteField, ''),
  marks: z._default(
    z.looseObject({
      ball: z._default(z.nullable(markSchema), null),
      pitch: z._default(z.nullable(markSchema), null),
      rest: z._default(z.nullable(markSchema), null),
    }),
    { ball: null, pitch: null, rest: null },
  ),
  ...changedKeys,
});
export type Shot = z.infer<typeof shotSchema>;
