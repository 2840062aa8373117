import { writeReviewFile } from '../exchange/reviewFile.ts';
import { NEVER_CHANGED } from '../golf/instant.ts';
import type { Proposal } from '../golf/proposal.ts';
import { type Review, reviewSchema } from '../golf/review.ts';
import type { Swing } from '../golf/swing.ts';
import { readPlayer } from '../logbook/readLogbook.ts';
import { type StoredReview, teamTables } from '../logbook/teamStore.ts';
import type { Keeper } from './keeper.ts';
import { type Gone, gone, type NotValid, type Outcome, refuse, written } from './outcome.ts';
import { valid } from './valid.ts';
import { write } from './write.ts';

/** What a coach writes: a note, a task, or both. */
export interface ReviewDraft {
  readonly note: string;
  readonly task: { readonly balls: number; readonly due: string | null } | null;
  readonly swing: Swing | null;
  readonly roundId: string | null;
  /** A paper shot sheet for the golfer to take over. */
  readonly proposal?: Proposal;
}

/** Whom it is for, and which club of theirs it is about; null: no one club. */
export interface ReviewTarget {
  readonly playerId: string;
  readonly clubId: string | null;
}

/**
 * Writes one review for each golfer named, all of them or none. A review is never edited afterwards: a
 * second thought is a second review, so that nothing a golfer has read is changed under them.
 */
export function reviewPlayers(
  team: Keeper,
  draft: ReviewDraft,
  targets: readonly ReviewTarget[],
): Promise<Outcome<readonly StoredReview[], NotValid>> {
  const ids = targets.map(() => team.newId());
  return write<readonly StoredReview[], NotValid>(team, async (pen) => {
    if (draft.note.trim() === '' && draft.task === null && !draft.proposal)
      return refuse({ kind: 'not valid', path: 'note' });
    const coach = await readPlayer(pen.db);
    const stored: StoredReview[] = [];
    for (const [i, { playerId, clubId }] of targets.entries()) {
      const checked = valid<Review>(reviewSchema, {
        id: ids[i],
        by: coach.name,
        at: pen.now,
        about: { clubId, swing: draft.swing, roundId: draft.roundId },
        note: draft.note.trim(),
        task: draft.task,
        ...(draft.proposal ? { proposal: draft.proposal } : {}),
      });
      if (checked.kind === 'refused') return checked;
      stored.push({ id: ids[i], playerId, review: pen.stamped(checked.value, NEVER_CHANGED), handedAt: null });
    }
    await teamTables(pen.db).reviews.bulkPut(stored);
    return written(stored);
  });
}

/** Takes back a review that was not handed over yet. One that was stays with the golfer. */
export function withdrawReview(team: Keeper, id: string): Promise<Outcome<undefined, Gone>> {
  return write<undefined, Gone>(team, async ({ db }) => {
    const { reviews } = teamTables(db);
    if (!(await reviews.get(id))) return gone;
    await reviews.delete(id);
    return written(undefined);
  });
}

/** The review file of a golfer with all that was written for them here; the empty name of the file says nothing of whose it is. */
export async function reviewFileFor(team: Keeper, playerId: string): Promise<Outcome<string>> {
  const read = await team.connection.withDatabase((db) =>
    teamTables(db)
      .reviews.filter((stored) => stored.playerId === playerId)
      .toArray(),
  );
  if (read.kind !== 'ok') return { kind: 'unsaved', why: read };
  const reviews = read.value.map(({ review }) => review);
  return { kind: 'saved', value: writeReviewFile({ format: 'carrybook-review', version: 1, playerId, reviews }) };
}

/** Notes that a golfer's reviews were handed over. */
export function noteHanded(team: Keeper, playerId: string): Promise<Outcome> {
  return write(team, async ({ db, now }) => {
    await teamTables(db)
      .reviews.filter((stored) => stored.playerId === playerId)
      .modify({ handedAt: now });
    return written(undefined);
  });
}
