import { composeBook } from '../book/composeBook.ts';
import type { TeamNumber, TeamPage } from '../book/teamPage.ts';
import { teamPageOf } from '../book/teamPage.ts';
import type { BookSummary } from '../exchange/bookSummary.ts';
import { bookSummarySchema, readSummary, summaryText } from '../exchange/bookSummary.ts';
import { type CarrybookFile, logbookOf } from '../exchange/carrybookFile.ts';
import { keptMember, type TakenMember } from '../exchange/takeInMember.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Review } from '../golf/review.ts';
import { isWithin, type SeasonSpan, withoutSeasons } from '../golf/seasonSpan.ts';
import { type TaskProgress, taskProgress } from '../golf/taskProgress.ts';
import { metres } from '../units/metres.ts';

/** A golfer's book as the team's store keeps it: a file this app wrote, or a summary. */
export interface KeptBook {
  readonly text: string;
  readonly summary: string;
}

function kept(text: string): CarrybookFile {
  return JSON.parse(text) as CarrybookFile;
}

function pageOfSummary(summary: BookSummary): TeamPage {
  const numbers = summary.clubs.flatMap(({ id, cells }) =>
    cells.map(
      ({ swing, stock_m, half80_m, shots, lastOn }): TeamNumber => ({
        clubId: id,
        swing,
        stock_m,
        lo80_m: metres(Math.max(0, stock_m - half80_m)),
        hi80_m: metres(stock_m + half80_m),
        next80_m: null,
        shots,
        lastOn,
      }),
    ),
  );
  const days = numbers.flatMap(({ lastOn }) => (lastOn === null ? [] : [lastOn])).sort();
  return {
    asOf: summary.asOf,
    clubs: summary.clubs.map(({ id, kind, name, loft_deg }) => ({ clubId: id, kind, name, loft_deg })),
    numbers,
    gaps: [],
    lastOn: days.at(-1) ?? null,
    shots: numbers.reduce((sum, { shots }) => sum + shots, 0),
    scoring: null,
  };
}

/**
 * A golfer's page of the team's table, from the shots where they were handed over, else from the summary.
 *
 * @throws RangeError when the book holds neither.
 */
export function teamPage({ text, summary }: KeptBook, asOf: string): TeamPage {
  if (text !== '') {
    const logbook = logbookOf(kept(text));
    return teamPageOf(logbook, composeBook(logbook, asOf));
  }
  const reading = readSummary(summary);
  if (reading.kind === 'refused') throw new RangeError(`no summary: ${reading.refusals[0]?.path}`);
  return pageOfSummary(reading.value);
}

/** A golfer's page from the rounds of one stretch of days alone, as of its end: one season beside another. */
export function seasonPage(text: string, span: SeasonSpan): TeamPage {
  const logbook = logbookOf(kept(text));
  const rounds = logbook.rounds.filter(({ date }) => isWithin(date, span));
  const ids = new Set(rounds.map(({ id }) => id));
  const season = { ...logbook, rounds, shots: logbook.shots.filter(({ roundId }) => ids.has(roundId)) };
  return teamPageOf(season, composeBook(season, `${span.to}T23:59:59.999Z`));
}

/** The summary of a golfer's book as it is handed over, as text. */
export function summaryOf(logbook: Logbook, asOf: string, nickname: string): string {
  const page = teamPageOf(logbook, composeBook(logbook, asOf));
  const summary = bookSummarySchema.parse({
    player: { id: logbook.player.id, name: nickname, units: logbook.player.units },
    asOf,
    clubs: page.clubs.map(({ clubId, kind, name, loft_deg }) => ({
      id: clubId,
      kind,
      name,
      loft_deg,
      cells: page.numbers
        .filter((number) => number.clubId === clubId)
        .map(({ swing, stock_m, lo80_m, hi80_m, shots, lastOn }) => ({
          swing,
          stock_m: Math.round(stock_m * 10) / 10,
          half80_m: Math.round((hi80_m - lo80_m) * 5) / 10,
          shots,
          lastOn,
        })),
    })),
  });
  return summaryText(summary);
}

/** How far the tasks of some reviews have come in a golfer's book, in their order. */
export function teamProgress(text: string, reviews: readonly Review[], asOf: string): TaskProgress[] {
  const logbook = logbookOf(kept(text));
  return reviews.map((review) => taskProgress(review, logbook, asOf));
}

/** A golfer's book less some seasons. */
export function purgedMember(text: string, spans: readonly SeasonSpan[]): TakenMember {
  const file = kept(text);
  const none = { new: 0, changed: 0, same: 0, removed: 0 };
  return keptMember(withoutSeasons(logbookOf(file), spans), file.exportedAt, {
    clubs: none,
    rounds: none,
    shots: none,
    reviews: none,
  });
}
