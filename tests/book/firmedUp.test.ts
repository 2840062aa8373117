import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import type { BookCell } from '../../src/book/book.ts';
import { firmedOn, firmedUp } from '../../src/book/firmedUp.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { shotSchema } from '../../src/golf/shot.ts';
import { metres } from '../../src/units/metres.ts';
import { cellOf, smallBook, smallLogbook } from '../screens/smallBook.ts';

const within = (cell: BookCell, half: number): BookCell => ({
  ...cell,
  lo80_m: metres(cell.stock_m - half),
  hi80_m: metres(cell.stock_m + half),
});

test('a number firms up by own balls and a fifth of its ±, the one that gained most first', () => {
  const before = smallBook([
    within(cellOf('a', 'a', '9:00', 60, 2), 5),
    within(cellOf('b', 'b', '9:00', 70, 2), 5),
    within(cellOf('c', 'c', '9:00', 80, 2), 5),
    within(cellOf('d', 'd', '9:00', 90, 2), 5),
  ]);
  const now = smallBook([
    within(cellOf('a', 'a', '9:00', 60, 12), 4),
    within(cellOf('b', 'b', '9:00', 70, 12), 2),
    // Surer through its neighbours only, and surer by too little.
    within(cellOf('c', 'c', '9:00', 80, 2), 3),
    within(cellOf('d', 'd', '9:00', 90, 3), 4.1),
  ]);
  expect(firmedUp(before, now).map(({ clubId, balls }) => [clubId, balls])).toEqual([
    ['b', 10],
    ['a', 10],
  ]);
  expect(firmedUp(now, now)).toEqual([]);
});

test('ten balls with a wedge firm its number up on the day they are hit, and not on another', () => {
  const round = z.parse(roundSchema, { id: 'r', date: '2026-05-31', play: 'practice ground' });
  const shots = Array.from({ length: 10 }, (_, i) =>
    z.parse(shotSchema, {
      id: `s${i}`,
      roundId: 'r',
      hole: 1,
      number: i + 1,
      clubId: 'lob',
      swing: '9:00',
      lie: 'fairway',
      flag_m: 60,
      carry: { m: 58 + (i % 5), by: 'laser' },
    }),
  );
  const logbook = { ...smallLogbook(), rounds: [round], shots };
  const [first] = firmedOn(logbook, '2026-05-31', '2026-06-01T12:00:00Z');
  expect(first).toMatchObject({ clubId: 'lob', swing: '9:00', balls: 10 });
  expect(first.now_m).toBeLessThan(0.8 * first.before_m);
  expect(firmedOn(logbook, '2026-05-30', '2026-06-01T12:00:00Z')).toEqual([]);
});
