import { describe, expect, test } from 'vitest';
import type { Book, BookCell } from '../../src/book/book.ts';
import { reportJson } from '../../src/book/reportJson.ts';
import { reportText } from '../../src/book/reportText.ts';
import { logbookOf, readCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { metres } from '../../src/units/metres.ts';
import { METRES_PER_YARD, yardsFromMetres } from '../../src/units/yards.ts';
import { readValue } from '../exchange/reading.ts';
import { smallFile } from '../fixtures/smallFile.ts';

const logbook = logbookOf(readValue(readCarrybookFile(JSON.stringify(smallFile()))));
const yards = { unit: 'yards', of: yardsFromMetres };
const yd = (value: number) => metres(value * METRES_PER_YARD);

function cell(clubId: string, specId: string, swing: string, stock: number, rest: Partial<BookCell> = {}): BookCell {
  return {
    clubId,
    specId,
    swing,
    shots: 4,
    solid: 3,
    stock_m: yd(stock),
    lo80_m: yd(stock - 3),
    hi80_m: yd(stock + 5),
    next_m: Array.from({ length: 19 }, (_, n) => yd(stock - 20 + 2 * n)),
    own: 0.6,
    borrowed: 'partly borrowed',
    lastAt: '2026-05-02T09:12:00Z',
    shotIds: ['s1'],
    ...rest,
  };
}

// An invented book: the figures are chosen, so that the tables can be checked by eye.
const book: Book = {
  asOf: '2026-06-01T18:00:00Z',
  cells: [
    cell('w52', 'w52a', 'full', 110),
    cell('w52', 'w52a', '9:00', 84, { shots: 0, solid: 0, borrowed: 'mostly borrowed from neighbours', lastAt: null }),
    cell('c7', 'c7b', 'full', 152, { shots: 12, solid: 9, borrowed: 'yours' }),
    cell('c7', 'c7a', 'full', 150),
    cell('c7', 'c7b', '10:30', 140),
  ],
  gaps: [
    {
      longer: 'c7',
      shorter: 'w52',
      gap_m: yd(42),
      lo80_m: yd(38),
      hi80_m: yd(46),
      pSame: 0.004,
      pWide: 0.99,
      verdict: 'wide gap',
    },
  ],
  leftOut: [
    { shotId: 's3', why: 'no club noted' },
    { shotId: 's4', why: 'no distance noted' },
    { shotId: 's5', why: 'no distance noted' },
  ],
};

describe('the report for people', () => {
  const text = reportText(logbook, book, yards);
  const rowsUnder = (title: string): string[] => text.slice(text.indexOf(title)).split('\n').slice(1);

  test('begins with whose it is, as of when, and the unit', () => {
    expect(text.split('\n')[0]).toBe('Wren: book as of 2026-06-01T18:00:00Z, in yards');
  });

  test('has the card in loft order, as the clubs are built now', () => {
    const rows = rowsUnder('Card');
    expect(rows[1]).toMatch(/^ {2}7 iron +33° +152 +± 4 +134 to 166 +12 +9 +yours$/);
    expect(rows[2]).toMatch(/^ {2}52° +52° +110 +± 4 +92 to 124 +4 +3 +partly borrowed$/);
    expect(rows[3]).toBe('');
  });

  test('has the wedge matrix by swing length, shorter first, with borrowed cells marked', () => {
    const rows = rowsUnder('Wedges');
    expect(rows[0]).toMatch(/^ {2}club +9:00 +full$/);
    expect(rows[1]).toMatch(/^ {2}52° +~84 ± 4 \(0\) +110 ± 4 \(4\)$/);
  });

  test('has spec periods gone by and partial swings of other clubs apart', () => {
    const rows = rowsUnder('Other numbers');
    expect(rows[1]).toMatch(/^ {2}7 iron +full +34° +150 /);
    expect(rows[2]).toMatch(/^ {2}7 iron +10:30 +33° +140 /);
  });

  test('has a club that is out of the bag apart too', () => {
    const clubs = logbook.clubs.map((club) => (club.id === 'c7' ? { ...club, inBag: false } : club));
    const out = reportText({ ...logbook, clubs }, book, yards).split('\n');
    const titles = ['Card', 'Wedges', 'Other', 'Gaps'].map((title) => out.findIndex((line) => line.startsWith(title)));
    const places = out.flatMap((line, at) => (line.startsWith('  7 iron ') && !line.includes('–') ? [at] : []));
    expect(places).toHaveLength(3);
    for (const at of places) expect(at > titles[2] && at < titles[3]).toBe(true);
  });

  test('has gaps in words, and the reasons of what was left out with their counts', () => {
    expect(rowsUnder('Gaps')[1]).toMatch(/^ {2}7 iron – 52° +42 +38 to 46 +wide gap +0 %$/);
    expect(rowsUnder('Left out').slice(0, 2)).toEqual(['  2  shots  no distance noted', '  1  shot   no club noted']);
  });

  test('says lengths in metres to a golfer who thinks in metres', () => {
    const inMetres = reportText(logbook, book, { unit: 'metres', of: (length) => length });
    expect(inMetres).toMatch(/in metres\n/);
    expect(inMetres).toMatch(/7 iron +33° +139 +± 4 +123 to 152 /);
  });

  test('of an empty book says so', () => {
    const empty = reportText(logbook, { asOf: book.asOf, cells: [], gaps: [], leftOut: [] }, yards);
    expect(empty.split('\n').slice(2)).toEqual([
      'Card: stock carry of solid strikes, full swing, in loft order',
      '  no club in the bag has a number',
      '',
    ]);
  });
});

test('the report for programs has every number of the book under the keys of its format', () => {
  const report = reportJson(book.asOf, [{ playerId: 'p1', book }]);
  expect(Object.keys(report)).toEqual(['format', 'version', 'asOf', 'players']);
  expect(Object.keys(report.players[0])).toEqual(['player', 'cells', 'gaps', 'leftOut']);
  const { shotIds, ...wedge } = book.cells[0];
  expect(report.players[0].cells[0]).toEqual(wedge);
  expect(shotIds).toEqual(['s1']);
  const { pWide, ...gap } = book.gaps[0];
  expect(report.players[0].gaps).toEqual([gap]);
  expect(pWide).toBe(0.99);
  expect(report.players[0].leftOut).toEqual(book.leftOut);
});

test('a swing that is not played has no number, unless a shot was hit with it', () => {
  const clubs = logbook.clubs.map((club) =>
    club.id === 'w52' ? { ...club, notPlayed: ['9:00', 'full'] } : { ...club, notPlayed: ['full'] },
  );
  const text = reportText({ ...logbook, clubs }, book, yards);
  const [, wedges] = text.split('Wedges: stock carry');
  expect(wedges.split('Other numbers')[0]).toMatch(/not played +110 ± 4 \(4\)/);
  expect(text).not.toContain('~84');
  const unhit = { ...book, cells: [cell('c7', 'c7b', 'full', 152, { shots: 0, solid: 0 })] };
  const card = reportText({ ...logbook, clubs }, unhit, yards);
  expect(card).toMatch(/33° +– +– +– +0 +0 +not played/);
  expect(card).not.toContain('152');
});
