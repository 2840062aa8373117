import { expect, test } from 'vitest';
import type { Book, BookCell } from '../../src/book/book.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { metres } from '../../src/units/metres.ts';
import { makeGolfer } from './golfer.ts';
import { scoreWorld } from './score.ts';
import type { TrueCell } from './trueCells.ts';
import { base } from './worlds.ts';

const GOLFERS = 12;

/** An engine that knows the truth, and may be made to spoil it. */
function oracle(spoil: (cell: BookCell, truth: TrueCell, i: number) => BookCell | null = (cell) => cell) {
  return (logbook: Logbook, asOf: string): Book => {
    const golfer = makeGolfer(base, Number(logbook.player.id.replace('golfer-', '')));
    expect(golfer.asOf).toBe(asOf);
    const cells = [...golfer.cells.values()].flatMap((truth, i) => {
      const at = (p: number) => metres(truth.nextBalls_m[Math.floor(p * truth.nextBalls_m.length)]);
      const cell: BookCell = {
        clubId: truth.club.id,
        specId: truth.specId,
        swing: truth.swing,
        shots: truth.measured_m.length,
        solid: 0,
        stock_m: metres(truth.stock_m),
        lo80_m: metres(truth.stock_m - 2),
        hi80_m: metres(truth.stock_m + 2),
        next_m: Array.from({ length: 19 }, (_, k) => at((k + 1) / 20)),
        own: 1,
        borrowed: 'yours',
        lastAt: null,
        shotIds: [],
      };
      return spoil(cell, truth, i) ?? [];
    });
    return { asOf, cells, gaps: [], leftOut: [] };
  };
}

test('an engine that knows the truth has no error, and its next ball is as often inside as it says', () => {
  const score = scoreWorld(base, GOLFERS, oracle());
  expect(score.all.rmse_yd).toBe(0);
  expect(score.all.ratio).toBe(0);
  expect(score.all.coverage).toBe(1);
  expect(Math.abs(score.all.nextBall - 0.8)).toBeLessThan(0.005);
  expect(score.orderViolations).toBe(0);
  expect(score.unanswered).toBe(0);
  expect(score.all.raw_yd).toBeGreaterThan(4);
  const counted = score.byShots.reduce((sum, { summary }) => sum + summary.cells, 0);
  expect(counted).toBe(score.cells.length);
  expect(score.all.cells).toBe(score.cells.filter((cell) => cell.shots > 0).length);
});

test('a constant error shows as it is', () => {
  const far = scoreWorld(
    base,
    GOLFERS,
    oracle((cell) => ({
      ...cell,
      stock_m: metres(cell.stock_m + 9.144),
      hi80_m: metres(cell.hi80_m + 9.144),
      lo80_m: metres(cell.lo80_m + 9.144),
      next_m: cell.next_m.map((m) => metres(m * 3)),
    })),
  );
  expect(far.all.rmse_yd).toBeCloseTo(10, 9);
  expect(far.all.bias).toBeGreaterThan(0.05);
  expect(far.all.coverage).toBe(0);
  expect(far.all.width_yd).toBeCloseTo(4 / 0.9144, 9);
  expect(far.all.nextBall).toBeLessThan(0.01);
  expect(far.partial.cells).toBeGreaterThan(50);
});

test('a cell left out, without all its quantiles, not finite or upside down counts as unanswered', () => {
  const spoilt = (spoil: (cell: BookCell) => BookCell | null) =>
    scoreWorld(
      base,
      1,
      oracle((cell, _, i) => (i === 0 ? spoil(cell) : cell)),
    ).unanswered;
  const whole = spoilt((cell) => cell);
  const more = [
    spoilt(() => null),
    spoilt((cell) => ({ ...cell, next_m: cell.next_m.slice(1) })),
    spoilt((cell) => ({ ...cell, lo80_m: cell.hi80_m, hi80_m: cell.lo80_m })),
    spoilt((cell) => ({ ...cell, next_m: [...cell.next_m].reverse() })),
    spoilt((cell) => Object.assign({}, cell, { stock_m: Number.NaN })),
  ];
  expect(whole).toBe(0);
  for (const count of more) expect(count).toBeGreaterThan(0);
});

test('clubs or swings put out of their true order are counted', () => {
  const driverShort = oracle((cell, truth) =>
    truth.club.kind === 'driver' ? { ...cell, stock_m: metres(20), lo80_m: metres(19), hi80_m: metres(21) } : cell,
  );
  expect(scoreWorld(base, 2, driverShort).orderViolations).toBeGreaterThan(10);
  const chipsLong = oracle((cell) =>
    cell.swing === '7:30' ? { ...cell, stock_m: metres(399), lo80_m: metres(398), hi80_m: metres(400) } : cell,
  );
  expect(scoreWorld(base, 2, chipsLong).orderViolations).toBeGreaterThan(10);
});
