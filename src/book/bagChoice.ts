import { BAG_LIMIT } from '../golf/bagGate.ts';
import { specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { BagCandidate } from '../yardages/bagCandidates.ts';
import { type Bag, type BagProgress, type BestBag, bestBag, NEAR } from '../yardages/bestBag.ts';
import { coverage, coverageDifference, type LeaveTable, leaveTable } from '../yardages/coverage.ts';
import { approachesFaced } from './approachesFaced.ts';
import type { FittedBook } from './fitBook.ts';
import { type ImaginedClub, imaginedBook } from './imaginedBook.ts';

/** What to choose the bag from. */
export interface BagQuestion {
  readonly imagined: readonly ImaginedClub[];
  /** Ids of clubs (imagined ones too) that stay in. Drivers stay in any case: approaches say nothing of them. */
  readonly locked: readonly string[];
  /** Tees whose distances count; null: all rounds. */
  readonly tees: string | null;
}

/** Whether one bag leaves less than another, in the words that the numbers bear. */
export interface BagDifference {
  /** Expected leave saved on every approach, m, and the posterior standard deviation of that. */
  readonly gain_m: number;
  readonly deviation_m: number;
  readonly verdict: 'better' | 'worse' | 'no real difference';
}

export interface BagAnswer extends BestBag {
  /** The bag as it is; null when it holds more than fourteen clubs. */
  readonly present: Bag | null;
  /** The best against the bag as it is. */
  readonly againstPresent: BagDifference | null;
  /** Clubs of the best bag without which it is as good within .1 yd of expected leave. */
  readonly spare: readonly string[];
}

/** The clubs to choose from with the table that they are judged by. */
export interface BagGround {
  readonly fitted: FittedBook;
  readonly table: LeaveTable;
  readonly candidates: readonly BagCandidate[];
  /** Places beside the putter. */
  readonly limit: number;
  /** Ids of the clubs in the bag now. */
  readonly present: readonly string[];
}

/** No call on a difference that is smaller than its own standard deviation, or than .1 yd. */
export function differenceOf({ gain_m, deviation_m }: { gain_m: number; deviation_m: number }): BagDifference {
  const verdict =
    Math.abs(gain_m) <= Math.max(deviation_m, NEAR) ? 'no real difference' : gain_m > 0 ? 'better' : 'worse';
  return { gain_m, deviation_m, verdict };
}

/**
 * Lays out all owned clubs, in the bag or not, and the imagined ones, with every swing the golfer plays
 * with them. One putter takes a place of the fourteen if the golfer owns one.
 *
 * @throws RangeError when a locked club is not among them or the tees are unknown.
 */
export function bagGround(logbook: Logbook, book: FittedBook, question: BagQuestion): BagGround {
  const owned = logbook.clubs.filter(({ kind }) => kind !== 'putter');
  const unused = owned.flatMap((club): ImaginedClub[] => {
    const spec = specOn(club, book.asOf);
    const known = book.cells.some(
      ({ clubId, specId, swing }) => clubId === club.id && specId === spec.id && swing === 'full',
    );
    if (known || club.kind === 'putter') return [];
    return [{ id: club.id, kind: club.kind, loft_deg: spec.loft_deg, bentFrom: null, insteadOf: null }];
  });
  const fitted = imaginedBook(book, [...unused, ...question.imagined]);
  const faced = approachesFaced(logbook, book).find(({ tees }) => tees === question.tees);
  if (!faced) throw new RangeError(`no approaches from the tees ${question.tees}`);
  const cellsOf = (id: string, specId: string | null) =>
    fitted.cells.flatMap((cell, i) => {
      const asBuilt = cell.specId === specId || i >= book.cells.length;
      return cell.clubId === id && cell.played && asBuilt ? [i] : [];
    });
  const locked = new Set(question.locked);
  const candidates: BagCandidate[] = [
    ...owned.map((club) => ({
      id: club.id,
      cells: cellsOf(club.id, specOn(club, book.asOf).id),
      locked: locked.has(club.id) || (club.kind === 'driver' && club.inBag),
      group: club.id,
    })),
    ...question.imagined.map(({ id, insteadOf }) => ({
      id,
      cells: cellsOf(id, null),
      locked: locked.has(id),
      group: insteadOf ?? id,
    })),
  ].filter(({ cells }) => cells.length > 0);
  for (const id of locked) {
    if (!candidates.some((candidate) => candidate.id === id)) throw new RangeError(`locked club ${id} is not there`);
  }
  const putters = logbook.clubs.some(({ kind }) => kind === 'putter') ? 1 : 0;
  return {
    fitted,
    table: leaveTable(faced.approaches, fitted.forecasts, fitted.theta),
    candidates,
    limit: BAG_LIMIT - putters,
    present: owned.filter(({ inBag }) => inBag).map(({ id }) => id),
  };
}

/** Cells of the clubs named. */
export function cellsOfClubs(candidates: readonly BagCandidate[], ids: readonly string[]): number[] {
  return candidates.flatMap(({ id, cells }) => (ids.includes(id) ? cells : []));
}

/**
 * The best fourteen out of owned and imagined clubs, against the bag as it is. A generator that yields
 * its progress: see {@link bestBag}.
 *
 * @throws RangeError as {@link bagGround}.
 */
export function* bagChoice(
  logbook: Logbook,
  book: FittedBook,
  question: BagQuestion,
): Generator<BagProgress, BagAnswer, void> {
  const ground = bagGround(logbook, book, question);
  const { fitted, table, candidates, limit } = ground;
  const found = yield* bestBag(table, candidates, limit);
  const best = cellsOfClubs(candidates, found.best.ids);
  const spare = found.best.ids.filter((id) => {
    const without = cellsOfClubs(
      candidates,
      found.best.ids.filter((other) => other !== id),
    );
    return without.length > 0 && coverage(table, without).leave_m <= found.best.leave_m + NEAR;
  });
  const present = cellsOfClubs(candidates, ground.present);
  if (present.length === 0 || ground.present.length > limit) {
    return { ...found, present: null, againstPresent: null, spare };
  }
  return {
    ...found,
    present: { ids: [...ground.present].sort(), leave_m: coverage(table, present).leave_m },
    againstPresent: differenceOf(coverageDifference(table, fitted.model.covariance, present, best)),
    spare,
  };
}

/** Runs a search to its end at once. */
export function finished<Answer>(search: Generator<unknown, Answer, void>): Answer {
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
