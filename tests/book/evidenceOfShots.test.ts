import { describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, BAG, cellIn, clubOf, logbookOf, ROUNDS, roundOf, shotOf, solidShots } from './logbooks.ts';

const shots = (list: Shot[], more: Partial<Logbook> = {}) => composeBook(logbookOf({ shots: list, ...more }), AS_OF);

describe('a claimed number', () => {
  const claiming = (claimed_m: number, list: Shot[] = []) =>
    cellIn(
      shots(list, { clubs: BAG.map((club) => (club.id === 'i7' ? clubOf('i7', 'iron', 34, { claimed_m }) : club)) }),
      'i7',
    ).stock_m;
  const typical = 135 * 0.9144;

  test('moves a golfer without shots nearly all the way: he is known by nothing else', () => {
    expect(claiming(150)).toBeGreaterThan(145);
    expect(claiming(150)).toBeLessThan(150);
    expect(claiming(typical)).toBeCloseTo(typical, 6);
  });

  test('gives way to shots', () => {
    const without = cellIn(shots(solidShots('i7', 132, 10)), 'i7').stock_m;
    expect(claiming(160, solidShots('i7', 132, 10)) - without).toBeGreaterThan(0);
    expect(claiming(160, solidShots('i7', 132, 10)) - without).toBeLessThan(3.5);
  });
});

describe('a wedge bent 2° weaker', () => {
  const bent = clubOf('gw', 'wedge', 52, {
    specPeriods: [
      { id: 'old', from: '2026-01-01', loft_deg: 50 },
      { id: 'new', from: '2026-06-01', loft_deg: 52 },
    ],
  });
  const clubs = BAG.map((club) => (club.id === 'gw' ? bent : club));
  const inPeriod = (list: Shot[], specId: string, rounds: readonly string[]) =>
    list.map((shot, k) => ({ ...shot, specId, roundId: rounds[k % rounds.length] }));
  const before = inPeriod(solidShots('gw', 96, 40), 'old', ['r1', 'r2']);

  test('many old shots: the new number is known, and shorter by what the loft says', () => {
    const book = shots(before, { clubs });
    const old = cellIn(book, 'gw', 'full', 'old');
    const now = cellIn(book, 'gw', 'full', 'new');
    expect(now.shots).toBe(0);
    expect(now.stock_m).toBeLessThan(old.stock_m - 2);
    expect(now.stock_m).toBeGreaterThan(old.stock_m - 8);
    const stranger = cellIn(shots([]), 'gw');
    expect(Math.log(now.hi80_m / now.lo80_m)).toBeLessThan(0.25 * Math.log(stranger.hi80_m / stranger.lo80_m));
    expect(now.borrowed).toBe('mostly borrowed from neighbours');
  });

  test('few new shots against many old ones: the new number follows the new shots', () => {
    // Bent, and 12 % shorter than before: far more than two degrees should do.
    const after = inPeriod(solidShots('gw', 85, 6, {}, 'after'), 'new', ['r3', 'r4']);
    const book = shots([...before, ...after], { clubs });
    const now = cellIn(book, 'gw', 'full', 'new');
    expect(now.shots).toBe(6);
    expect(Math.abs(now.stock_m - 85)).toBeLessThan(3);
    expect(cellIn(book, 'gw', 'full', 'old').shots).toBe(40);
    expect(Math.abs(cellIn(book, 'gw', 'full', 'old').stock_m - 96)).toBeLessThan(4);
  });

  test('a shot that names no period belongs to that of its day', () => {
    const undated = [
      ...solidShots('gw', 96, 4, { roundId: 'r1' }, 'u').slice(0, 2),
      ...solidShots('gw', 92, 4, { roundId: 'r4' }, 'v').slice(0, 3),
    ];
    const book = shots(undated, { clubs });
    expect(cellIn(book, 'gw', 'full', 'old').shots).toBe(2);
    expect(cellIn(book, 'gw', 'full', 'new').shots).toBe(3);
  });
});

describe('the practice ground', () => {
  const range = [roundOf('p1', '2026-06-10', { play: 'practice ground', ball: 'range' })];
  const rounds = [...ROUNDS, ...range];

  test('range balls 5 % short hardly move a number that has course shots', () => {
    const course = solidShots('i7', 132, 12);
    const practised = solidShots('i7', 132 * 0.95, 40, { roundId: 'p1' }, 'range');
    const without = cellIn(shots(course), 'i7').stock_m;
    const within = cellIn(shots([...course, ...practised], { rounds }), 'i7').stock_m;
    expect(Math.abs(within / without - 1)).toBeLessThan(0.012);
  });

  test('alone they tell less than as many from the course', () => {
    const width = (cell: { lo80_m: number; hi80_m: number }) => Math.log(cell.hi80_m / cell.lo80_m);
    const course = cellIn(shots(solidShots('i7', 132, 40, { roundId: 'r3' })), 'i7');
    const ranged = cellIn(shots(solidShots('i7', 132, 40, { roundId: 'p1' }), { rounds }), 'i7');
    expect(width(ranged)).toBeGreaterThan(1.4 * width(course));
    // Range balls are taken to fly 3 % shorter, so the course number is put higher.
    expect(ranged.stock_m / course.stock_m).toBeGreaterThan(1.01);
  });
});

describe('what is heard of a shot', () => {
  const base = solidShots('i7', 132, 8);
  const number = (...more: Shot[]) => cellIn(shots([...base, ...more]), 'i7').stock_m;
  const start = number();

  test('"cleared" raises the number, "short of" lowers it', () => {
    const cleared = shotOf('x', { clubId: 'i7', carryAtLeast_m: 140 });
    const shortOf = shotOf('y', { clubId: 'i7', carryAtMost_m: 122, strike: 'solid' });
    expect(number(cleared)).toBeGreaterThan(start + 0.2);
    expect(number(shortOf)).toBeLessThan(start - 0.2);
  });

  test('totals only: carries are reckoned from them, less the run', () => {
    const totals = Array.from({ length: 10 }, (_, k) =>
      shotOf(`t${k}`, {
        clubId: 'dr',
        lie: 'tee',
        roundId: `r${1 + (k % 4)}`,
        total: { m: 228 + (k % 5), by: 'typed' },
      }),
    );
    const cell = cellIn(shots(totals), 'dr');
    expect(cell.shots).toBe(10);
    expect(cell.stock_m).toBeGreaterThan(195);
    expect(cell.stock_m).toBeLessThan(222);
    const iron = Array.from({ length: 10 }, (_, k) =>
      shotOf(`t${k}`, { clubId: 'i9', roundId: `r${1 + (k % 4)}`, total: { m: 118 + (k % 5), by: 'typed' } }),
    );
    const nine = cellIn(shots(iron), 'i9').stock_m;
    expect(nine).toBeGreaterThan(110);
    expect(nine).toBeLessThan(120);
  });

  test('labels that are wrong one time in two cost little', () => {
    const numbers = randomNumbers('labels');
    const wrong = solidShots('i7', 132, 30).map((shot) => ({
      ...shot,
      strike: numbers.chance(0.5) ? ('thin' as const) : ('solid' as const),
    }));
    expect(Math.abs(cellIn(shots(wrong), 'i7').stock_m / 132 - 1)).toBeLessThan(0.035);
  });

  test('from the rough it is longer than it seems, with a flier shorter', () => {
    const from = (lie: string, tags: string[] = []) =>
      cellIn(shots(solidShots('i7', 126, 10, { lie, tags })), 'i7').stock_m;
    expect(from('light rough')).toBeGreaterThan(from('fairway') + 2);
    expect(from('heavy rough')).toBeGreaterThan(from('light rough') + 2);
    expect(from('fairway', ['flier'])).toBeLessThan(from('fairway') - 2);
  });
});
