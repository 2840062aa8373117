import type { Logbook } from './logbook.ts';
import type { Review } from './review.ts';

/** How far a practice task has come. */
export interface TaskProgress {
  /** Balls asked for; 0 when no number was named. */
  readonly balls: number;
  /** Shots logged since with that club and swing, on the course and on the practice ground. */
  readonly hit: number;
  /** When the golfer said it was done; null: not yet said. */
  readonly doneAt: string | null;
  readonly isDone: boolean;
  /** Days past the due day; 0 or less: in time; null: no due day. */
  readonly daysLate: number | null;
}

const MS_PER_DAY = 86_400_000;

/**
 * How far the task of a review has come, counted from the shots logged after it was written: those with
 * the club and swing that it is about, normal swings only. A review about a whole club counts every swing,
 * one about a round or about nothing counts every shot. The golfer's own word stands beside the count and
 * is never replaced by it.
 *
 * @param asOf instant at which it is asked; later shots do not count.
 */
export function taskProgress(
  review: Review,
  logbook: Pick<Logbook, 'shots' | 'rounds' | 'done'>,
  asOf: string,
): TaskProgress {
  const { clubId, swing } = review.about;
  const dates = new Map(logbook.rounds.map((round) => [round.id, round.date]));
  const since = review.at ?? review.changedAt;
  const isLater = (at: string | null, roundId: string): boolean => {
    if (at !== null) return Date.parse(at) > Date.parse(since) && Date.parse(at) <= Date.parse(asOf);
    const date = dates.get(roundId);
    // A shot without an instant counts from the day after: of the same day nobody knows.
    return date !== undefined && date > since.slice(0, 10) && date <= asOf.slice(0, 10);
  };
  const hit = logbook.shots.filter(
    (shot) =>
      shot.intent === 'normal' &&
      (clubId === null || shot.clubId === clubId) &&
      (swing === null || shot.swing === swing) &&
      isLater(shot.at, shot.roundId),
  ).length;
  const done = logbook.done.find(({ reviewId }) => reviewId === review.id);
  const due = review.task?.due ?? null;
  return {
    balls: review.task?.balls ?? 0,
    hit,
    doneAt: done?.at ?? null,
    isDone: done !== undefined,
    daysLate: due === null ? null : Math.floor((Date.parse(asOf.slice(0, 10)) - Date.parse(due)) / MS_PER_DAY),
  };
}
