import type { Logbook } from '../golf/logbook.ts';
import type { Swing } from '../golf/swing.ts';
import { type Metres, metres } from '../units/metres.ts';
import type { Book, BookCell } from './book.ts';
import { composeBook } from './composeBook.ts';

/** Share of its ± that a number must lose to have firmed up. Own choice: a fifth can be seen on the card. */
const FIRMER_BY = 0.2;

/** A number that is surer than it was. */
export interface FirmedUp {
  readonly clubId: string;
  readonly specId: string;
  readonly swing: Swing;
  /** Balls that are new behind it. */
  readonly balls: number;
  /** Half of the 80 % interval before and now. */
  readonly before_m: Metres;
  readonly now_m: Metres;
}

const half = ({ lo80_m, hi80_m }: BookCell): number => (hi80_m - lo80_m) / 2;
const key = ({ clubId, specId, swing }: Pick<BookCell, 'clubId' | 'specId' | 'swing'>): string =>
  `${clubId} ${specId} ${swing}`;

/**
 * The numbers that firmed up between two books: new shots stand behind them and their 80 % interval is narrower by
 * a fifth or more. Those that gained the most come first. A neighbour that became surer without a ball of its own
 * is not counted: nothing was done for it.
 */
export function firmedUp(before: Book, now: Book): FirmedUp[] {
  const earlier = new Map(before.cells.map((cell) => [key(cell), cell]));
  return now.cells
    .flatMap((cell): FirmedUp[] => {
      const was = earlier.get(key(cell));
      if (!was || cell.shots <= was.shots || half(cell) > (1 - FIRMER_BY) * half(was)) return [];
      const { clubId, specId, swing } = cell;
      return [
        {
          clubId,
          specId,
          swing,
          balls: cell.shots - was.shots,
          before_m: metres(half(was)),
          now_m: metres(half(cell)),
        },
      ];
    })
    .sort((a, b) => a.now_m / a.before_m - b.now_m / b.before_m || (key(a) < key(b) ? -1 : 1));
}

/**
 * The numbers that firmed up on one day: the book as of now beside the book as of now without the rounds and
 * practice of that day, so that nothing but the day's balls tells them apart.
 *
 * @param day `YYYY-MM-DD`. @param asOf instant of both books.
 */
export function firmedOn(logbook: Logbook, day: string, asOf: string): FirmedUp[] {
  const rounds = logbook.rounds.filter(({ date }) => date !== day);
  const earlier = new Set(rounds.map(({ id }) => id));
  const shots = logbook.shots.filter(({ roundId }) => earlier.has(roundId));
  return firmedUp(composeBook({ ...logbook, rounds, shots }, asOf), composeBook(logbook, asOf));
}
