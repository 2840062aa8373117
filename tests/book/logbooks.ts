import * as z from 'zod/mini';
import type { Book, BookCell } from '../../src/book/book.ts';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { type Round, roundSchema } from '../../src/golf/round.ts';
import { type Shot, shotSchema } from '../../src/golf/shot.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';

export const AS_OF = '2026-06-30T20:00:00Z';

export function clubOf(id: string, kind: Club['kind'], loft_deg: number, slots: object = {}): Club {
  return z.parse(clubSchema, { id, kind, specPeriods: [{ id: `${id}a`, loft_deg }], ...slots });
}

export function roundOf(id: string, date: string, slots: object = {}): Round {
  return z.parse(roundSchema, { id, date, ...slots });
}

/** An invented shot; on hole 1 of round r1 with the seven iron unless the slots say otherwise. */
export function shotOf(id: string, slots: object = {}): Shot {
  return z.parse(shotSchema, { id, roundId: 'r1', hole: 1, clubId: 'i7', lie: 'fairway', ...slots });
}

/** A shot that carried so far, typed in with its error. */
export function carried(id: string, m: number, slots: object = {}): Shot {
  return shotOf(id, { carry: { m, by: 'typed', error_m: 2 }, ...slots });
}

/** An invented bag of nine clubs and a putter. */
export const BAG: readonly Club[] = [
  clubOf('dr', 'driver', 10.5),
  clubOf('w3', 'fairway wood', 15),
  clubOf('h4', 'hybrid', 22),
  clubOf('i5', 'iron', 27),
  clubOf('i7', 'iron', 34),
  clubOf('i9', 'iron', 42),
  clubOf('pw', 'wedge', 46),
  clubOf('gw', 'wedge', 52),
  clubOf('sw', 'wedge', 56),
  clubOf('pt', 'putter', 3),
];

export const ROUNDS: readonly Round[] = [
  roundOf('r1', '2026-05-02'),
  roundOf('r2', '2026-05-16'),
  roundOf('r3', '2026-06-06'),
  roundOf('r4', '2026-06-20'),
];

export function logbookOf(records: Partial<Logbook> = {}): Logbook {
  return {
    player: z.parse(playerSchema, { id: 'p', name: 'Wren' }),
    clubs: BAG,
    rounds: ROUNDS,
    shots: [],
    reviews: [],
    done: [],
    deleted: [],
    ...records,
  };
}

/** `count` solid shots with one club round a true carry, 4 % scatter, spread over the four rounds. */
export function solidShots(clubId: string, stock_m: number, count: number, slots: object = {}, seed = clubId): Shot[] {
  const numbers = randomNumbers(`solid ${seed}`);
  return Array.from({ length: count }, (_, k) =>
    carried(`${seed}-${String(k).padStart(4, '0')}`, stock_m * Math.exp(numbers.normal(0, 0.04)), {
      clubId,
      roundId: `r${1 + (k % 4)}`,
      strike: 'solid',
      ...slots,
    }),
  );
}

/** The number of a club, as built now, at a swing. */
export function cellIn(book: Book, clubId: string, swing = 'full', specId = `${clubId}a`): BookCell {
  const cell = book.cells.find((one) => one.clubId === clubId && one.specId === specId && one.swing === swing);
  if (!cell) throw new RangeError(`the book has no ${clubId} ${specId} ${swing}`);
  return cell;
}
