import * as z from 'zod/mini';
import type { Metres } from '../units/metres.ts';
import { quantityField } from '../units/quantityField.ts';
import { holeNumberField } from './hole.ts';
import { dateField } from './instant.ts';
import { lieField } from './lie.ts';
import type { Review } from './review.ts';
import { strikeField } from './shot.ts';
import { swingField } from './swing.ts';
import { idField, nameField } from './text.ts';

/** Most shots on one paper sheet. */
export const PROPOSAL_SHOTS = 150;

const proposedShotSchema = z.object({
  hole: holeNumberField,
  clubId: idField,
  swing: swingField,
  lie: z.nullable(lieField),
  strike: z.nullable(strikeField),
  carry_m: z.nullable(quantityField<Metres>(0, 600)),
});
export type ProposedShot = z.infer<typeof proposedShotSchema>;

/** A paper shot sheet that a coach typed in: nothing of it counts until the golfer takes it over. */
export const proposalSchema = z.object({
  date: dateField,
  course: nameField,
  shots: z.array(proposedShotSchema).check(z.minLength(1), z.maxLength(PROPOSAL_SHOTS)),
});
export type Proposal = z.infer<typeof proposalSchema>;

/** The paper sheet that a review brings; null: it brings none that can be read. */
export function proposalOf(review: Review): Proposal | null {
  const read = z.safeParse(proposalSchema, review.proposal);
  return read.success ? read.data : null;
}

/** The ids of the round and shots that a proposal becomes: always the same, so that taking it over twice adds nothing. */
export function proposedRoundId(reviewId: string): string {
  return `${reviewId.slice(0, 80)}.sheet`;
}
