import { describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, BAG, carried, cellIn, clubOf, logbookOf, ROUNDS, roundOf, solidShots } from './logbooks.ts';

const bookOf = (records: Partial<Logbook>, asOf = AS_OF) => composeBook(logbookOf(records), asOf);
const shots = (list: Shot[], more: Partial<Logbook> = {}) => bookOf({ shots: list, ...more });

/** An invented season: five clubs, solid and otherwise, in the four rounds. */
const season = [
  ...solidShots('dr', 205, 14, { lie: 'tee' }),
  ...solidShots('i5', 152, 6),
  ...solidShots('i7', 132, 12, { strike: null }),
  ...solidShots('pw', 104, 9),
  ...solidShots('pw', 91, 6, { swing: '10:30' }, 'pw1030'),
  ...solidShots('sw', 52, 8, { swing: '9:00' }, 'sw9'),
  ...solidShots('i7', 116, 3, { strike: 'thin' }, 'i7thin'),
];

function shuffled<T>(list: readonly T[], seed: string): T[] {
  const numbers = randomNumbers(seed);
  return list
    .map((item) => ({ item, at: numbers.uniform() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

describe('no shots', () => {
  const book = shots([]);

  test('every club and wedge swing answered, in bag order, and called what it is', () => {
    expect(book.cells.map(({ clubId, swing }) => `${clubId} ${swing}`)).toEqual([
      ...['dr', 'w3', 'h4', 'i5', 'i7', 'i9'].map((id) => `${id} full`),
      ...['pw', 'gw', 'sw'].flatMap((id) => ['full', '10:30', '9:00', '7:30'].map((swing) => `${id} ${swing}`)),
    ]);
    for (const cell of book.cells) {
      expect(cell).toMatchObject({ borrowed: 'typical golfer, not you', own: 0, shots: 0, solid: 0, lastAt: null });
    }
  });

  test('the seven iron is the typical one', () => {
    expect(cellIn(book, 'i7').stock_m).toBeCloseTo(135 * 0.9144, 6);
    expect(cellIn(book, 'i7').hi80_m / cellIn(book, 'i7').stock_m).toBeGreaterThan(1.35);
  });
});

test('the order of the records in the file changes nothing', () => {
  const one = bookOf({ shots: season });
  for (const seed of ['a', 'b', 'c']) {
    const other = bookOf({
      shots: shuffled(season, seed),
      rounds: shuffled(ROUNDS, seed),
      clubs: shuffled(BAG, seed),
    });
    expect(other).toEqual(one);
  }
});

test('a book made before another is the same made after it', () => {
  const windy = ROUNDS.map((round) => ({ ...round, conditions: { ...round.conditions, temperature_C: 4 as never } }));
  const first = bookOf({ shots: season, rounds: windy });
  bookOf({ shots: season.map((shot) => ({ ...shot, rise_m: 9 as never })) });
  expect(bookOf({ shots: season, rounds: windy })).toEqual(first);
});

describe('a season', () => {
  const book = shots(season);

  test('numbers come near what was drawn', () => {
    for (const [club, swing, stock] of [
      ['dr', 'full', 205],
      ['i5', 'full', 152],
      ['i7', 'full', 132],
      ['pw', 'full', 104],
      ['pw', '10:30', 91],
      ['sw', '9:00', 52],
    ] as const) {
      const cell = cellIn(book, club, swing);
      expect(Math.abs(cell.stock_m / stock - 1), club).toBeLessThan(0.035);
      expect(cell.lo80_m).toBeLessThan(cell.stock_m);
      expect(cell.hi80_m).toBeGreaterThan(cell.stock_m);
    }
  });

  test('each cell counts and names its own shots, and the last of them', () => {
    const cell = cellIn(book, 'i7');
    expect(cell.shots).toBe(15);
    // Of twelve unlabelled solid shots the one that came up shortest is taken for a mishit, as are the thin ones.
    expect(cell.solid).toBe(11);
    expect(cell.lastAt).toBe('2026-06-20');
    expect([...cell.shotIds].sort()).toEqual(
      season
        .filter((shot) => shot.clubId === 'i7' && shot.swing === 'full')
        .map(({ id }) => id)
        .sort(),
    );
    expect(book.cells.reduce((sum, one) => sum + one.shots, 0)).toBe(season.length);
  });

  test('much hit is yours, never hit is borrowed', () => {
    expect(cellIn(book, 'pw', '7:30').borrowed).toBe('mostly borrowed from neighbours');
    expect(cellIn(book, 'i9').own).toBe(0);
    const often = shots(solidShots('i7', 132, 60));
    expect(cellIn(often, 'i7').borrowed).toBe('yours');
    expect(cellIn(often, 'i9').borrowed).toBe('mostly borrowed from neighbours');
  });

  test('the 19 quantiles of the next ball grow, and their middle lies below the stock carry', () => {
    for (const cell of book.cells) {
      expect(cell.next_m.length).toBe(19);
      cell.next_m.forEach((m, i) => {
        if (i > 0) expect(m).toBeGreaterThan(cell.next_m[i - 1]);
      });
      expect(cell.next_m[9]).toBeLessThan(cell.stock_m);
    }
  });

  test('more loft never carries further, a shorter swing never further than a longer one', () => {
    const odd = shots([...season, ...solidShots('i9', 150, 20), ...solidShots('sw', 95, 12, { swing: '7:30' }, 'odd')]);
    const full = odd.cells.filter(({ swing }) => swing === 'full');
    full.forEach((cell, i) => {
      if (i > 0) expect(cell.stock_m).toBeLessThanOrEqual(full[i - 1].stock_m + 1e-9);
    });
    for (const club of ['pw', 'gw', 'sw']) {
      const swings = ['full', '10:30', '9:00', '7:30'].map((swing) => cellIn(odd, club, swing).stock_m);
      swings.forEach((m, i) => {
        if (i > 0) expect(m).toBeLessThanOrEqual(swings[i - 1] + 1e-9);
      });
    }
  });
});

describe('as of a day', () => {
  const timed = season.map((shot) => {
    const date = ROUNDS.find(({ id }) => id === shot.roundId)?.date;
    return { ...shot, at: `${date}T10:00:00Z` };
  });
  const then = '2026-05-20T00:00:00Z';

  test('a book of a past day is the same as if nothing had come after', () => {
    const all = bookOf({ shots: timed }, then);
    const onlyThen = bookOf({ shots: timed.filter(({ roundId }) => roundId === 'r1' || roundId === 'r2') }, then);
    expect(all.cells).toEqual(onlyThen.cells);
    expect(all.gaps).toEqual(onlyThen.gaps);
    expect(new Set(all.leftOut.map(({ why }) => why))).toEqual(new Set(['hit after the day of this book']));
    expect(all.leftOut.length).toBe(timed.filter(({ roundId }) => roundId === 'r3' || roundId === 'r4').length);
  });

  test('in the middle of a round too, with scores on its holes', () => {
    // Hole 1 is all logged; on 2 and 3 of the second round, played later, strokes went unlogged.
    const holes = (late: number) =>
      [1, 2, 3].map((number) => ({ number, par: 4, strokes: number === 1 ? 5 : late, putts: [{}, {}] }));
    const rounds = ROUNDS.map(({ id, date }) => roundOf(id, date, { holes: holes(id === 'r2' ? 14 : 5) }));
    const onHoles = timed.map((shot, k) => ({ ...shot, hole: 1 + (k % 3), at: shot.at.replace('10:', `1${k % 3}:`) }));
    const moment = '2026-05-16T10:30:00Z';
    const all = bookOf({ shots: onHoles, rounds }, moment);
    const onlyThen = bookOf({ shots: onHoles.filter(({ at }) => at <= moment), rounds }, moment);
    expect(all.cells).toEqual(onlyThen.cells);
  });

  test('what is no instant is refused', () => {
    expect(() => bookOf({}, 'yesterday')).toThrow(/yesterday is no instant/);
  });
});

describe('gaps', () => {
  test('are between neighbours that are played full, in order of carry', () => {
    const clubs = [
      ...BAG.map((club) => (club.id === 'h4' ? clubOf('h4', 'hybrid', 22, { notPlayed: ['full'] }) : club)),
      clubOf('old', 'iron', 30, { inBag: false }),
    ];
    const { gaps } = shots([...season, ...solidShots('old', 145, 5)], { clubs });
    expect(gaps.map(({ longer, shorter }) => `${longer}-${shorter}`)).toEqual([
      'dr-w3',
      'w3-i5',
      'i5-i7',
      'i7-i9',
      'i9-pw',
      'pw-gw',
      'gw-sw',
    ]);
  });

  test('what the clubs share makes a gap surer than two carries apart', () => {
    const book = shots(season);
    for (const gap of book.gaps) {
      const sd = (id: string) => {
        const cell = cellIn(book, id);
        return (cell.stock_m * Math.log(cell.hi80_m / cell.lo80_m)) / 2;
      };
      expect((gap.hi80_m - gap.lo80_m) / 2).toBeLessThan(Math.hypot(sd(gap.longer), sd(gap.shorter)));
      expect(gap.gap_m).toBeCloseTo(cellIn(book, gap.longer).stock_m - cellIn(book, gap.shorter).stock_m, 9);
    }
  });

  test('two clubs that do the same work overlap, two far apart leave a wide gap', () => {
    const { gaps } = shots([
      ...solidShots('w3', 185, 40),
      ...solidShots('h4', 184, 40),
      ...solidShots('i5', 150, 40),
      ...solidShots('i7', 135, 40),
    ]);
    const verdict = (longer: string) => gaps.find((gap) => gap.longer === longer)?.verdict;
    expect(verdict('w3')).toBe('overlap');
    expect(verdict('h4')).toBe('wide gap');
  });
});

test('one shot: a number with a wide interval, the golfer’s level with it', () => {
  const book = shots([carried('only', 150)]);
  expect(cellIn(book, 'i7').stock_m).toBeGreaterThan(143);
  expect(cellIn(book, 'dr').stock_m).toBeGreaterThan(cellIn(shots([]), 'dr').stock_m + 20);
  expect(cellIn(book, 'i7').borrowed).not.toBe('typical golfer, not you');
});
