import { type ClubKind, specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import { type ScoringAverages, scoringAverages } from '../golf/scoringAverages.ts';
import type { Swing } from '../golf/swing.ts';
import type { Degrees } from '../units/degrees.ts';
import type { Metres } from '../units/metres.ts';
import type { Book, GapVerdict } from './book.ts';

/** A club of the bag as a coach sees it. */
export interface TeamClub {
  readonly clubId: string;
  readonly kind: ClubKind;
  readonly name: string;
  readonly loft_deg: Degrees;
}

/** A number as a coach sees it: the stock carry and its 80 % interval, own shots, and the day of the last one. */
export interface TeamNumber {
  readonly clubId: string;
  readonly swing: Swing;
  readonly stock_m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  /** 8 of the next 10 balls carry between the two, mishits included; null: not handed over. */
  readonly next80_m: readonly [Metres, Metres] | null;
  readonly shots: number;
  readonly lastOn: string | null;
}

/** A gap worth a coach's word. */
export interface TeamGap {
  readonly longer: string;
  readonly shorter: string;
  readonly gap_m: Metres;
  readonly verdict: GapVerdict;
  /** Probability of what the verdict says: that they are the same distance, or a wide gap. */
  readonly probability: number;
}

/** One golfer's page in the team's table: small, so that forty of them are at hand at once. */
export interface TeamPage {
  readonly asOf: string;
  readonly clubs: readonly TeamClub[];
  readonly numbers: readonly TeamNumber[];
  readonly gaps: readonly TeamGap[];
  /** Day of the last round or practice with a shot in it. */
  readonly lastOn: string | null;
  readonly shots: number;
  readonly scoring: ScoringAverages | null;
}

/** Days that the scoring averages look back over: a school year. Own choice. */
const SCORING_DAYS = 365;

/** The day so many days before a day. */
function daysBefore(day: string, days: number): string {
  return new Date(Date.parse(day) - days * 86_400_000).toISOString().slice(0, 10);
}

/**
 * What of a golfer's book a coach's table shows: the numbers of the clubs in the bag as built now, wide
 * gaps and overlaps, when something was logged last, and scoring averages of the last 365 days.
 *
 * Assumes that the book was reckoned from this logbook.
 */
export function teamPageOf(logbook: Logbook, book: Book): TeamPage {
  const clubs = logbook.clubs.filter((club) => club.inBag && club.kind !== 'putter');
  const specs = new Map(clubs.map((club) => [club.id, specOn(club, book.asOf)]));
  const notPlayed = new Map(clubs.map((club) => [club.id, new Set(club.notPlayed)]));
  const rounds = new Map(logbook.rounds.map((round) => [round.id, round.date]));
  let lastOn: string | null = null;
  for (const { roundId } of logbook.shots) {
    const date = rounds.get(roundId);
    if (date !== undefined && (lastOn === null || date > lastOn)) lastOn = date;
  }
  const today = book.asOf.slice(0, 10);
  return {
    asOf: book.asOf,
    clubs: clubs.map(({ id, kind, name }) => {
      const spec = specs.get(id);
      if (!spec) throw new RangeError(`club ${id} has no spec period`);
      return { clubId: id, kind, name, loft_deg: spec.loft_deg };
    }),
    numbers: book.cells
      .filter(
        (cell) =>
          specs.get(cell.clubId)?.id === cell.specId &&
          (cell.shots > 0 || !notPlayed.get(cell.clubId)?.has(cell.swing)),
      )
      .map(
        ({ clubId, swing, stock_m, lo80_m, hi80_m, next_m, shots, lastAt }): TeamNumber => ({
          clubId,
          swing,
          stock_m,
          lo80_m,
          hi80_m,
          next80_m: [next_m[1], next_m[17]],
          shots,
          lastOn: lastAt?.slice(0, 10) ?? null,
        }),
      ),
    gaps: book.gaps
      .filter(({ verdict }) => verdict === 'overlap' || verdict === 'wide gap' || verdict === 'possibly wide')
      .map(({ longer, shorter, gap_m, verdict, pSame, pWide }) => ({
        longer,
        shorter,
        gap_m,
        verdict,
        probability: verdict === 'overlap' ? pSame : pWide,
      })),
    lastOn,
    shots: logbook.shots.length,
    scoring: scoringAverages(logbook, daysBefore(today, SCORING_DAYS), today),
  };
}
