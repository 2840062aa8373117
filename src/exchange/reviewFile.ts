import * as z from 'zod/mini';
import { type Review, reviewSchema } from '../golf/review.ts';
import { idField } from '../golf/text.ts';
import { byText, canonicalJson } from './canonicalJson.ts';
import {
  headRefusal,
  LOGBOOK_BYTES,
  objectReading,
  parseDocument,
  sizeRefusal,
  structureRefusals,
  utf8Bytes,
} from './documentText.ts';
import { parseLists } from './parseLists.ts';
import { type Reading, refused, WHOLE_FILE } from './refusal.ts';
import { unknownRefusal } from './unknownKeys.ts';

/** The review file, version 1: what a coach hands back to one player. */
export const reviewFileSchema = z.looseObject({
  format: z.literal('carrybook-review'),
  version: z._default(z.literal(1), 1),
  playerId: idField,
  reviews: z._default(z.array(reviewSchema), []),
});

/** A coach's reviews for one player. */
export interface ReviewFile {
  readonly format: 'carrybook-review';
  readonly version: 1;
  readonly playerId: string;
  readonly reviews: readonly Review[];
}

/** Reads a review file that is parsed already. Whether its player is the one of this logbook is for the caller to ask. */
export function readReviewValue(value: unknown): Reading<ReviewFile> {
  const structure = structureRefusals(value);
  if (structure.length > 0) return refused(structure);
  const head = objectReading(value);
  if (head.kind === 'refused') return head;
  const wrongHead = headRefusal(head.value, 'carrybook-review');
  if (wrongHead) return refused([wrongHead]);
  const parsed = parseLists(reviewFileSchema, head.value, ['reviews'], []);
  if (parsed.kind === 'refused') return parsed;
  const { reviews } = parsed.value;
  const places = new Map<string, number>();
  for (const [index, review] of reviews.entries()) {
    const unknown = unknownRefusal(review, reviewSchema, ['reviews', index]);
    if (unknown) return refused([unknown]);
    const first = places.get(review.id);
    if (first !== undefined) {
      const found = `${review.id}, which reviews[${first}] has already`;
      return refused([{ path: `reviews[${index}].id`, expected: 'an id of its own', found }]);
    }
    places.set(review.id, index);
  }
  const others = unknownRefusal({ ...parsed.value, reviews: [] }, reviewFileSchema, []);
  return others ? refused([others]) : parsed;
}

/** Reads a review file. */
export function readReviewFile(text: string): Reading<ReviewFile> {
  const tooBig = sizeRefusal(utf8Bytes(text), LOGBOOK_BYTES, WHOLE_FILE);
  if (tooBig) return refused([tooBig]);
  const parsed = parseDocument(text);
  return parsed.kind === 'refused' ? parsed : readReviewValue(parsed.value);
}

/** Writes a review file: reviews sorted by id, keys in the order of the schema. */
export function writeReviewFile(file: ReviewFile): string {
  const reviews = [...file.reviews].sort((a, b) => byText(a.id, b.id));
  return `${canonicalJson({ ...file, reviews }, reviewFileSchema)}\n`;
}
