import type { Keeper } from './keeper.ts';
import { type Gone, gone, type Outcome, written } from './outcome.ts';
import { write } from './write.ts';

/**
 * The golfer's own word that a task is done, or that it is not after all. A coach who took the book in
 * meanwhile keeps the word given then until the next book.
 */
export function markDone(keeper: Keeper, reviewId: string, isDone: boolean): Promise<Outcome<undefined, Gone>> {
  return write<undefined, Gone>(keeper, async ({ db, now }) => {
    if (!(await db.reviews.get(reviewId))) return gone;
    if (isDone) await db.done.put({ reviewId, at: now });
    else await db.done.delete(reviewId);
    return written(undefined);
  });
}
