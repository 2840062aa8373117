import { expect, test } from 'vitest';
import { layOutBook, numbersOf } from '../../src/screens/yardages/layOutBook.ts';
import { cellOf, smallBook, smallLogbook } from './smallBook.ts';

const cells = [
  cellOf('driver', 'drivera', 'full', 220),
  cellOf('spare', 'sparea', 'full', 180),
  cellOf('seven', 'sevena', 'full', 138),
  cellOf('seven', 'sevena', '9:00', 104),
  cellOf('gap', 'new', 'full', 98),
  cellOf('gap', 'new', '9:00', 70, 0),
  cellOf('gap', 'old', '9:00', 66),
  cellOf('gap', 'old', 'full', 93),
  cellOf('lob', 'loba', '10:30', 64, 3),
  cellOf('lob', 'loba', 'full', 75, 0),
];
const layout = layOutBook(smallLogbook(), smallBook(cells));

test('the card has every club of the bag but the putter, strongest loft first', () => {
  expect(layout.card.map(({ club }) => club.id)).toEqual(['driver', 'seven', 'gap', 'lob']);
  expect(numbersOf(layout.card).map((cell) => cell.stock_m)).toEqual([220, 138, 98]);
});

test('the matrix says what is not played, what has no number, and shows a shot hit all the same', () => {
  expect(layout.wedges.map(({ club }) => club.id)).toEqual(['gap', 'lob']);
  const [gap, lob] = layout.wedges.map(({ slots }) => slots.map((slot) => (slot.kind === 'number' ? 'n' : slot.kind)));
  expect(layout.swings).toEqual(['7:30', '9:00', '10:30', 'full']);
  expect(gap).toEqual(['no number', 'n', 'no number', 'n']);
  expect(lob).toEqual(['no number', 'no number', 'n', 'not played']);
});

test('the present build is on the card; other swings, a club at home and the old build stand aside, in that order', () => {
  expect(layout.wedges[0].spec.loft_deg).toBe(52);
  expect(layout.asides.map(({ cell, why }) => `${cell.clubId} ${cell.swing} ${why}`)).toEqual([
    'seven 9:00 swing',
    'spare full out of bag',
    'gap full before',
    'gap 9:00 before',
  ]);
});

test('no number with a shot behind it is ever lost', () => {
  const shown = new Set([...numbersOf([...layout.card, ...layout.wedges]), ...layout.asides.map(({ cell }) => cell)]);
  expect(cells.filter((cell) => cell.shots > 0 && !shown.has(cell))).toEqual([]);
});

test('before the club was bent the old build was the present one', () => {
  const early = layOutBook(smallLogbook(), smallBook(cells, '2026-05-09T12:00:00Z'));
  expect(numbersOf(early.card).map((cell) => cell.specId)).toEqual(['drivera', 'sevena', 'old']);
});
