import type { Logbook } from './logbook.ts';

/** A stretch of days, both ends included, as `YYYY-MM-DD`. */
export interface SeasonSpan {
  readonly from: string;
  readonly to: string;
}

/** Whether a day lies in a stretch. */
export function isWithin(day: string, { from, to }: SeasonSpan): boolean {
  return day >= from && day <= to;
}

/**
 * A logbook without the rounds of some stretches of days and without their shots. Clubs, reviews and what
 * is left of deleted records stay. Taking stretches out before or after a merge comes to the same.
 */
export function withoutSeasons(logbook: Logbook, spans: readonly SeasonSpan[]): Logbook {
  if (spans.length === 0) return logbook;
  const isOut = (day: string) => spans.some((span) => isWithin(day, span));
  const gone = new Set(logbook.rounds.filter((round) => isOut(round.date)).map((round) => round.id));
  // A shot whose round was deleted is dated by its own instant.
  const rounds = new Set(logbook.rounds.map((round) => round.id));
  return {
    ...logbook,
    rounds: logbook.rounds.filter((round) => !gone.has(round.id)),
    shots: logbook.shots.filter(
      ({ roundId, at }) => !gone.has(roundId) && (rounds.has(roundId) || at === null || !isOut(at.slice(0, 10))),
    ),
  };
}
