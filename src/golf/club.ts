import * as z from 'zod/mini';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import { quantityField } from '../units/quantityField.ts';
import { changedKeys } from './changed.ts';
import { dateField } from './instant.ts';
import { swingField } from './swing.ts';
import { idField, nameField, noteField } from './text.ts';

/** The kinds of club a bag may hold. */
export const clubKinds = ['driver', 'fairway wood', 'hybrid', 'driving iron', 'iron', 'wedge', 'putter'] as const;

export const clubKindField = z.enum(clubKinds);
/** What kind of club it is. */
export type ClubKind = z.infer<typeof clubKindField>;

/**
 * A span of time in which a club was built one way. Bending it 2°, a new shaft or a new head starts
 * a new period; the shots before keep the old one.
 */
export const specPeriodSchema = z.looseObject({
  id: idField,
  from: z._default(dateField, '1970-01-01'),
  loft_deg: quantityField<Degrees>(0, 90),
  lie_deg: z._default(z.nullable(quantityField<Degrees>(40, 90)), null),
  length_m: z._default(z.nullable(quantityField<Metres>(0.3, 1.6)), null),
  bounce_deg: z._default(z.nullable(quantityField<Degrees>(-5, 30)), null),
  shaft: z._default(nameField, ''),
  head: z._default(nameField, ''),
  note: z._default(noteField, ''),
});
export type SpecPeriod = z.infer<typeof specPeriodSchema>;

/** One club: its kind, its name as the golfer says it, and how it was built and when. */
export const clubSchema = z.looseObject({
  id: idField,
  kind: clubKindField,
  name: z._default(nameField, ''),
  inBag: z._default(z.boolean(), true),
  /** The golfer's own word for its full carry; one weak piece of evidence. */
  claimed_m: z._default(z.nullable(quantityField<Metres>(1, 500)), null),
  /** Swing lengths this golfer does not play with it. */
  notPlayed: z._default(z.array(swingField).check(z.maxLength(30)), []),
  /** Launch height against the usual for the loft; null: as usual. */
  launch: z._default(z.nullable(z.enum(['low', 'mid', 'high'])), null),
  specPeriods: z.array(specPeriodSchema).check(z.minLength(1), z.maxLength(100)),
  ...changedKeys,
});
export type Club = z.infer<typeof clubSchema>;

/**
 * How the club was built on a date: the last period that began on or before it, or the first of all
 * when the date is older than the record. Of two that began on one day the later in the list counts.
 *
 * @param date `YYYY-MM-DD` or an instant.
 * @throws RangeError when the club has no period at all (its schema forbids it).
 */
export function specOn(club: Club, date: string): SpecPeriod {
  const day = date.slice(0, 10);
  let first: SpecPeriod | undefined;
  let found: SpecPeriod | undefined;
  for (const period of club.specPeriods) {
    if (!first || period.from < first.from) first = period;
    if (period.from <= day && (!found || period.from >= found.from)) found = period;
  }
  const spec = found ?? first;
  if (!spec) throw new RangeError(`club ${club.id} has no spec period`);
  return spec;
}
