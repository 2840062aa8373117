import { expect, test } from 'vitest';
import type { BookGap } from '../../src/book/book.ts';
import { gapsOf, nearestNumbers } from '../../src/screens/yardages/nearestNumbers.ts';
import { metres } from '../../src/units/metres.ts';
import { cellOf, smallBook } from './smallBook.ts';

const [long, middle, same, short] = [
  cellOf('a', 'a1', 'full', 110),
  cellOf('b', 'b1', '10:30', 95),
  cellOf('c', 'c1', 'full', 95),
  cellOf('d', 'd1', '9:00', 80),
];

test('the next number up and the next down, whatever the order of the list', () => {
  expect(nearestNumbers([short, long, middle], middle)).toEqual({ above: long, below: short });
  expect(nearestNumbers([long, same, middle, short], middle)).toEqual({ above: same, below: short });
});

test('at either end of the book there is only one neighbour', () => {
  expect(nearestNumbers([long, middle, short], long)).toEqual({ below: middle });
  expect(nearestNumbers([long, middle, short], short)).toEqual({ above: middle });
  expect(nearestNumbers([long], long)).toEqual({});
});

test('gaps belong to full swings: to the longer club first, then to the shorter', () => {
  const gap = (longer: string, shorter: string): BookGap => ({
    longer,
    shorter,
    gap_m: metres(12),
    lo80_m: metres(8),
    hi80_m: metres(16),
    pSame: 0.1,
    pWide: 0.2,
    verdict: 'gap',
  });
  const book = { ...smallBook([long, same, middle]), gaps: [gap('c', 'x'), gap('a', 'c'), gap('y', 'a')] };
  expect(gapsOf(book, same).map(({ longer, shorter }) => longer + shorter)).toEqual(['ac', 'cx']);
  expect(gapsOf(book, cellOf('a', 'a1', '9:00', 85))).toEqual([]);
});
