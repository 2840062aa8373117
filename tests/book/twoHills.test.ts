import { expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../src/units/yards.ts';
import { cellIn, clubOf, logbookOf, roundOf, shotOf } from './logbooks.ts';

// One invented golfer in some 1,200 who mishit 45 %, label nothing and guess: his drive cleared 254 yd once
// and was judged at 205 yd once, a mishit. The true stock carry is 265 yd. A search that begins at full
// sharpness settles on the lower hill, 46 yd short, and drags the woods with it.
const clubs = [
  clubOf('dr', 'driver', 10),
  clubOf('w3', 'fairway wood', 14.5),
  clubOf('w5', 'fairway wood', 18.5),
  clubOf('di', 'driving iron', 21.5),
  clubOf('i5', 'iron', 26.5),
  clubOf('i6', 'iron', 29.5),
  clubOf('i7', 'iron', 33),
  clubOf('i8', 'iron', 37),
  clubOf('i9', 'iron', 41),
  clubOf('pw', 'wedge', 46),
  clubOf('sw', 'wedge', 54),
  clubOf('lw', 'wedge', 58),
];

const spring = 'r1';
const autumn = 'r2';
const rows: [round: string, club: string, swing: string, lie: string, yd: number, by: string][] = [
  [spring, 'i6', 'full', 'fairway', 170, 'judged'],
  [spring, 'i8', 'full', 'tee', 165, 'judged'],
  [spring, 'i7', 'full', 'light rough', 135, 'judged'],
  [spring, 'pw', '7:30', 'fairway', 35, 'judged'],
  [spring, 'pw', '9:00', 'fairway', 85, 'paced'],
  [spring, 'pw', '9:00', 'bare', 80, 'paced'],
  [spring, 'sw', '9:00', 'fairway', 68, 'paced'],
  [spring, 'pw', '10:30', 'fairway', 64, 'paced'],
  [spring, 'lw', '7:30', 'fairway', 45, 'judged'],
  [autumn, 'dr', 'full', 'tee', 205, 'judged'],
  [autumn, 'i8', 'full', 'fairway bunker', 145, 'judged'],
  [autumn, 'i9', 'full', 'fairway', 120, 'judged'],
  [autumn, 'pw', '7:30', 'fairway bunker', 60, 'judged'],
  [autumn, 'sw', '7:30', 'fairway', 46, 'paced'],
];

test('a drive that cleared 254 yd is not 219 yd long because another was judged at 205', () => {
  const shots = rows.map(([roundId, clubId, swing, lie, yd, by], k) =>
    shotOf(`s${String(k).padStart(2, '0')}`, {
      roundId,
      clubId,
      swing,
      lie,
      carry: { m: metresFromYards(yards(yd)), by },
    }),
  );
  shots.push(shotOf('t', { roundId: autumn, clubId: 'dr', lie: 'tee', carryAtLeast_m: metresFromYards(yards(254)) }));
  const rounds = [roundOf(spring, '2026-03-01'), roundOf(autumn, '2026-09-10')];
  const book = composeBook(logbookOf({ clubs, rounds, shots }), '2026-09-18T18:00:00Z');
  expect(Math.abs(yardsFromMetres(cellIn(book, 'dr').stock_m) - 265)).toBeLessThan(12);
  expect(Math.abs(yardsFromMetres(cellIn(book, 'w3').stock_m) - 239)).toBeLessThan(16);
});
