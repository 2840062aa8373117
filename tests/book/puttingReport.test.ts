import { describe, expect, test } from 'vitest';
import { puttingReport } from '../../src/book/puttingReport.ts';
import { holingOdds } from '../../src/yardages/putting.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, clubOf, logbookOf, roundOf } from './logbooks.ts';

const putter = clubOf('pt', 'putter', 3, {
  specPeriods: [
    { id: 'pt-a', from: '2026-03-01', loft_deg: 3 },
    { id: 'pt-b', from: '2026-05-10', loft_deg: 3, length_m: 0.86 },
  ],
});
const hole = (number: number, putts: object[], slots: object = {}) => ({ number, putts, ...slots });
const putt = (length_m: number | null, holed = false, clubId: string | null = 'pt') => ({ clubId, length_m, holed });

const logbook = logbookOf({
  clubs: [putter],
  rounds: [
    roundOf('a', '2026-05-02', {
      holes: [
        hole(1, [putt(6), putt(0.5), putt(0.3, true)]),
        hole(2, [putt(5), putt(0.7, true)]),
        hole(3, [putt(1.5, true)]),
        hole(4, [putt(null), putt(null, true)]),
        hole(5, [putt(8), putt(1)], { result: 'picked up' }),
      ],
    }),
    roundOf('b', '2026-05-20', {
      holes: [hole(1, [putt(7, false, null), putt(0.9, true, null)]), hole(2, [putt(1.2, true)])],
    }),
    roundOf('later', '2026-07-20', { holes: [hole(1, [putt(3, true)])] }),
    roundOf('green', '2026-05-21', { play: 'practice ground', holes: [hole(1, [putt(2, true)])] }),
  ],
});

describe('the putting sheet', () => {
  const { all, byPutter } = puttingReport(logbook, AS_OF);

  test('counts putts with a length, of rounds by then', () => {
    expect(all).toMatchObject({ holes: 7, putts: 11 });
    const near = all.made.find(({ from_m }) => from_m === 1);
    expect(near).toMatchObject({ to_m: 2, made: { rate: 1, of: 2 } });
    for (const { made, expected } of all.made) {
      expect(made.lo80).toBeLessThanOrEqual(made.rate);
      expect(made.hi80).toBeGreaterThanOrEqual(made.rate);
      expect(expected > 0 && expected <= 1).toBe(true);
    }
  });

  test('says what a first putt leaves and how often three are needed, on holes played out', () => {
    const row = all.first.find(({ from_m }) => from_m === 4.5);
    // First putts of 6, 5 and 7 m left .5, .7 and .9 m; one of the three needed three.
    expect(row?.holes).toBe(3);
    expect(row?.leave?.mean_m).toBeCloseTo(0.7, 12);
    expect(row?.leave?.of).toBe(3);
    expect(row?.threePutts.rate).toBeCloseTo(1 / 3, 12);
    expect(all.first.some(({ from_m }) => from_m === 7.5)).toBe(false);
    expect(all.first.find(({ from_m }) => from_m === 1)?.leave).toBeNull();
  });

  test('keeps the putter’s builds apart, and putts without a putter', () => {
    expect(byPutter.map(({ clubId, specId, putts }) => [clubId, specId, putts])).toEqual([
      ['pt', 'pt-a', 8],
      ['pt', 'pt-b', 1],
      [null, null, 2],
    ]);
  });

  test('of nobody is the prior', () => {
    const empty = puttingReport(logbookOf(), AS_OF);
    expect(empty.all).toMatchObject({ holes: 0, putts: 0, made: [], first: [] });
    expect(empty.byPutter).toEqual([]);
  });
});

test('the angle that putts were drawn with is found again', () => {
  const numbers = randomNumbers('putts');
  const holes = Array.from({ length: 18 }, (_, k) => k + 1);
  const rounds = Array.from({ length: 25 }, (_, r) =>
    roundOf(`r${r}`, '2026-05-02', {
      holes: holes.map((number) => {
        const length = numbers.between(0.6, 6);
        const holed = numbers.chance(holingOdds(length, 1.8));
        return hole(number, holed ? [putt(length, true)] : [putt(length), putt(null, true)]);
      }),
    }),
  );
  const { angle, putts } = puttingReport(logbookOf({ clubs: [putter], rounds }), AS_OF).all;
  expect(putts).toBe(450);
  expect(Math.abs(angle.sigma_deg - 1.8)).toBeLessThan(0.25);
  expect(angle.hi80_deg - angle.lo80_deg).toBeLessThan(0.5);
});
