import { canonicalJson } from '../exchange/canonicalJson.ts';
import type { Refusal } from '../exchange/refusal.ts';
import { readReviewFile } from '../exchange/reviewFile.ts';
import { later, stampOf } from '../exchange/stamp.ts';
import type { Review } from '../golf/review.ts';
import { readPlayer } from '../logbook/readLogbook.ts';
import { heldBack } from './heldBack.ts';
import type { Keeper } from './keeper.ts';
import { type Outcome, refuse, written } from './outcome.ts';
import { write } from './write.ts';

/** Why a review file was not taken; nothing was written. */
export type TakeReviewRefusal =
  | { readonly kind: 'unreadable'; readonly refusals: readonly Refusal[] }
  /** It was written for somebody else. */
  | { readonly kind: 'another player' }
  | { readonly kind: 'round by the Rules' };

/** What a review file brought. */
export interface TakenReview {
  readonly new: number;
  readonly same: number;
  /** Reviews that came in two wordings: both are kept, each under an id of its own. */
  readonly beside: number;
}

/** What a review says, its stamps aside. */
function wording({ by, at, about, note, task, proposal }: Review): string {
  return canonicalJson({ by, at, about, note, task, proposal });
}

/** The id that the second wording of a review is kept under: the same whenever it comes again. */
function besideId(review: Review): string {
  return `${review.id.slice(0, 70)}.${Date.parse(review.changedAt).toString(36)}.${review.device.slice(0, 8)}`;
}

/**
 * Takes a coach's review file into the golfer's own logbook. Nothing that is here is overwritten: a review
 * of an id that is here with another wording is kept beside it. What the golfer marked done stays done.
 * Taking a file twice changes nothing.
 */
export function takeReview(keeper: Keeper, text: string): Promise<Outcome<TakenReview, TakeReviewRefusal>> {
  const reading = readReviewFile(text);
  return write<TakenReview, TakeReviewRefusal>(keeper, async ({ db }) => {
    if (reading.kind === 'refused') return refuse({ kind: 'unreadable', refusals: reading.refusals });
    if (await heldBack(db, { kind: 'import' })) return refuse({ kind: 'round by the Rules' });
    const player = await readPlayer(db);
    if (player.id !== reading.value.playerId) return refuse({ kind: 'another player' });
    const taken = { new: 0, same: 0, beside: 0 };
    for (const review of reading.value.reviews) {
      const dead = await db.deleted.get(['review', review.id]);
      const here = await db.reviews.get(review.id);
      if (!here) {
        const isDead = dead !== undefined && Date.parse(dead.at) >= Date.parse(review.changedAt);
        if (!isDead) await db.reviews.put(review);
        taken[isDead ? 'same' : 'new'] += 1;
        continue;
      }
      if (wording(here) === wording(review)) {
        taken.same += 1;
        continue;
      }
      // The later wording keeps the id whichever came first, so that any order of files ends the same.
      const first = later(here, stampOf(here), review, stampOf(review));
      const second = first === here ? review : here;
      const beside = { ...second, id: besideId(second) };
      const isKnown = first === here && (await db.reviews.get(beside.id)) !== undefined;
      await db.reviews.bulkPut([first, beside]);
      taken[isKnown ? 'same' : 'beside'] += 1;
    }
    return written(taken);
  });
}
