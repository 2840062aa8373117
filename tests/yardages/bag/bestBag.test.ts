import { describe, expect, test } from 'vitest';
import type { BagCandidate } from '../../../src/yardages/bagCandidates.ts';
import { type BestBag, bestBag, NEAR } from '../../../src/yardages/bestBag.ts';
import { coverage, type LeaveTable } from '../../../src/yardages/coverage.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';
import { stocksOf, tableOf } from './leaving.ts';

function run(table: LeaveTable, clubs: readonly BagCandidate[], limit: number, enumerated?: number): BestBag {
  const search = bestBag(table, clubs, limit, enumerated);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

/** Every bag there is, by counting in binary: slow and plain. */
function brute(table: LeaveTable, clubs: readonly BagCandidate[], limit: number): { ids: string; leave_m: number }[] {
  const size = Math.min(limit, new Set(clubs.map(({ group }) => group)).size);
  const bags: { ids: string; leave_m: number }[] = [];
  for (let mask = 1; mask < 1 << clubs.length; mask++) {
    const bag = clubs.filter((_, i) => mask & (1 << i));
    if (bag.length !== size || new Set(bag.map(({ group }) => group)).size < size) continue;
    if (clubs.some((club) => club.locked && !bag.includes(club))) continue;
    const { leave_m } = coverage(
      table,
      bag.flatMap(({ cells }) => cells),
    );
    const ids = bag.map(({ id }) => id).sort();
    bags.push({ ids: ids.join(), leave_m });
  }
  return bags.sort((a, b) => a.leave_m - b.leave_m);
}

/** A random bag problem: 4 to 10 clubs of one to three swings, some of them one club at two lofts, some locked. */
function problem(seed: number): { table: LeaveTable; clubs: BagCandidate[]; limit: number } {
  const numbers = randomNumbers(`bag ${seed}`);
  const count = numbers.whole(4, 10);
  const table = tableOf(stocksOf(`bag stocks ${seed}`, count * 3), numbers.between(0.03, 0.08));
  const clubs = Array.from({ length: count }, (_, i): BagCandidate => {
    const cells = Array.from({ length: numbers.whole(1, 3) }, () => numbers.whole(0, count * 3 - 1));
    const bent = i > 0 && numbers.chance(0.2);
    return { id: `c${i}`, cells, locked: false, group: bent ? `g${i - 1}` : `g${i}` };
  });
  const limit = numbers.whole(2, count);
  const first = numbers.whole(0, count - 1);
  return {
    table,
    limit,
    clubs: clubs.map((club, i) => ({ ...club, locked: numbers.chance(0.5) ? i === first : false })),
  };
}

describe('the best bag', () => {
  test.each(['every bag', 'branch and bound'] as const)(
    'equals brute force on 200 random bags: %s',
    (how) => {
      for (let seed = 1; seed <= 200; seed++) {
        const { table, clubs, limit } = problem(seed);
        const expected = brute(table, clubs, limit);
        const found = run(table, clubs, limit, how === 'every bag' ? undefined : 0);
        expect(found.how).toBe(how);
        expect(found.proven).toBe(true);
        expect(found.bags).toBe(expected.length);
        expect(found.best.leave_m).toBeCloseTo(expected[0].leave_m, 10);
        const near = expected
          .filter(({ leave_m }) => leave_m <= expected[0].leave_m + NEAR - 1e-9)
          .map(({ ids }) => ids);
        const told = found.near.map(({ ids }) => ids.join());
        expect(found.nearCount).toBeGreaterThanOrEqual(near.length);
        for (const ids of near.slice(0, 50)) expect(told).toContain(ids);
        for (const { leave_m } of found.near) expect(leave_m).toBeLessThanOrEqual(expected[0].leave_m + NEAR + 1e-9);
      }
    },
    120_000,
  );

  test('does not depend on the order of the clubs', () => {
    const { table, clubs, limit } = problem(7);
    expect(run(table, clubs.toReversed(), limit)).toEqual(run(table, clubs, limit));
  });

  test('keeps locked clubs, and one club at one loft only', () => {
    const table = tableOf([60, 90, 92, 120, 150, 180]);
    const club = (id: string, cell: number, group = id, locked = false) => ({ id, cells: [cell], locked, group });
    const clubs = [
      club('a', 0),
      club('b', 1),
      club('b bent', 2, 'b'),
      club('c', 3),
      club('d', 4),
      club('e', 5, 'e', true),
    ];
    const found = run(table, clubs, 4);
    expect(found.bags).toBe(7);
    for (const { ids } of found.near) {
      expect(ids).toContain('e');
      expect(ids.includes('b') && ids.includes('b bent')).toBe(false);
    }
  });

  test('says how far it has come and can be left at any time', () => {
    const table = tableOf(stocksOf('long', 18));
    const clubs = stocksOf('long', 18).map((_, i) => ({ id: `c${i}`, cells: [i], locked: false, group: `c${i}` }));
    const search = bestBag(table, clubs, 9);
    const first = search.next();
    if (first.done) throw new Error('18 clubs take more than one slice');
    expect(first.value.bags).toBe(48620);
    expect(first.value.looked).toBeGreaterThan(0);
    const second = search.next();
    if (second.done) throw new Error('18 clubs take more than two slices');
    expect(second.value.looked).toBeGreaterThan(first.value.looked);
    expect(second.value.best_m).toBeLessThanOrEqual(first.value.best_m);
    expect(search.return({} as never).done).toBe(true);
  });

  test('holds all clubs when there are no more than places', () => {
    const clubs = [0, 1].map((i) => ({ id: `c${i}`, cells: [i], locked: false, group: `c${i}` }));
    expect(run(tableOf([80, 120]), clubs, 13).best.ids).toEqual(['c0', 'c1']);
  });

  test.each([
    [
      'a club twice',
      [
        ['a', 'a', false],
        ['a', 'b', false],
      ],
      /club a comes twice/,
    ],
    [
      'more locked than places',
      [
        ['a', 'a', true],
        ['b', 'b', true],
        ['c', 'c', true],
      ],
      /3 clubs are locked/,
    ],
    [
      'one club locked at two lofts',
      [
        ['a', 'g', true],
        ['b', 'g', true],
      ],
      /two lofts/,
    ],
    ['no clubs', [], /0 clubs/],
  ] as const)('%s is refused', (_, rows, reason) => {
    const clubs = rows.map(([id, group, locked]) => ({ id, cells: [0], locked, group }));
    expect(() => run(tableOf([100]), clubs, 2)).toThrow(reason);
  });
});
