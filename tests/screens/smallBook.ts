import * as z from 'zod/mini';
import type { Book, BookCell } from '../../src/book/book.ts';
import { clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { metres } from '../../src/units/metres.ts';

/** A number of a book for tests of layout: only its place, carry and own shots matter. */
export function cellOf(clubId: string, specId: string, swing: string, stock: number, shots = 5): BookCell {
  return {
    clubId,
    specId,
    swing,
    shots,
    solid: shots,
    stock_m: metres(stock),
    lo80_m: metres(stock - 3),
    hi80_m: metres(stock + 3),
    next_m: Array.from({ length: 19 }, (_, i) => metres(stock - 9 + i)),
    own: 0.8,
    borrowed: 'yours',
    lastAt: null,
    shotIds: [],
  };
}

/** An invented bag: clubs out of loft order, one bent, one not played full, one left at home, and a putter. */
export function smallLogbook(): Logbook {
  const club = (id: string, kind: string, loft: number, more: object = {}) =>
    z.parse(clubSchema, { id, kind, name: id, specPeriods: [{ id: `${id}a`, loft_deg: loft }], ...more });
  return {
    player: z.parse(playerSchema, { id: 'p', name: 'Wren' }),
    clubs: [
      club('putter', 'putter', 3),
      club('lob', 'wedge', 58, { notPlayed: ['full', '10:30'] }),
      club('seven', 'iron', 34),
      club('gap', 'wedge', 0, {
        specPeriods: [
          { id: 'old', from: '2026-03-01', loft_deg: 54 },
          { id: 'new', from: '2026-05-10', loft_deg: 52 },
        ],
      }),
      club('driver', 'driver', 10.5),
      club('spare', 'hybrid', 22, { inBag: false }),
    ],
    rounds: [],
    shots: [],
    reviews: [],
    done: [],
    deleted: [],
  };
}

/** A book of that bag. */
export function smallBook(cells: readonly BookCell[], asOf = '2026-06-01T12:00:00Z'): Book {
  return { asOf, cells, gaps: [], leftOut: [] };
}
