import fc from 'fast-check';
import { expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { carried, clubOf, logbookOf, shotOf } from './logbooks.ts';
import { wildLogbook } from './wildLogbook.ts';

const AS_OF = '2026-07-01T00:00:00Z';
/** Full count with CARRYBOOK_PROVE=1. */
const RUNS = process.env.CARRYBOOK_PROVE === '1' ? 1500 : 120;

function expectWhole(logbook: Logbook): void {
  const book = composeBook(logbook, AS_OF);
  for (const cell of book.cells) {
    const figures = [cell.lo80_m, cell.stock_m, cell.hi80_m];
    expect(figures.every((m) => Number.isFinite(m) && m > 0)).toBe(true);
    expect(cell.lo80_m).toBeLessThan(cell.stock_m);
    expect(cell.stock_m).toBeLessThan(cell.hi80_m);
    expect(cell.next_m.length).toBe(19);
    cell.next_m.forEach((m, i) => {
      expect(Number.isFinite(m)).toBe(true);
      expect(m).toBeGreaterThan(i === 0 ? 0 : cell.next_m[i - 1]);
    });
    expect(cell.own).toBeGreaterThanOrEqual(0);
    expect(cell.own).toBeLessThanOrEqual(1);
    expect(cell.shots).toBe(cell.shotIds.length);
    expect(cell.solid).toBeLessThanOrEqual(cell.shots);
  }
  for (const gap of book.gaps) {
    expect(gap.gap_m).toBeGreaterThanOrEqual(0);
    expect(gap.lo80_m).toBeLessThan(gap.hi80_m);
    for (const p of [gap.pSame, gap.pWide]) expect(p >= 0 && p <= 1).toBe(true);
  }
  const told = book.cells.flatMap(({ shotIds }) => shotIds).concat(book.leftOut.map(({ shotId }) => shotId));
  expect(told.sort()).toEqual(logbook.shots.map(({ id }) => id).sort());
}

test('any logbook the schemas let through: every number finite and in order, every shot in a number or left out', () => {
  fc.assert(fc.property(wildLogbook, expectWhole), { numRuns: RUNS });
}, 120_000);

test.each([
  ['carries of 0 and of 600 m', [carried('a', 0), carried('b', 600), carried('c', 600, { clubId: 'sw' })]],
  ['a carry known to ± 200 m', [carried('a', 120, { carry: { m: 120, error_m: 200 } })]],
  [
    'a carry known to the millimetre',
    Array.from({ length: 9 }, (_, k) => carried(`s${k}`, 131, { carry: { m: 131, error_m: 0 } })),
  ],
  ['one shot', [carried('a', 131)]],
  ['200 shots on one day', Array.from({ length: 200 }, (_, k) => carried(`s${k}`, k % 2 === 0 ? 131 : 118))],
  [
    'bounds that shut each other out in two shots',
    [shotOf('a', { carryAtLeast_m: 180 }), shotOf('b', { carryAtMost_m: 80 })],
  ],
  ['a total of nothing', [shotOf('a', { total: { m: 0 } })]],
])('%s', (_, shots) => {
  expectWhole(logbookOf({ shots }));
});

test('600 solid and mishit shots of one day, measured to the inch', () => {
  const shots = Array.from({ length: 600 }, (_, k) => {
    const m = k % 9 === 0 ? 116 : 131 + 0.8 * ((k % 5) - 2);
    return carried(`s${k}`, m, { carry: { m, error_m: 0.1 } });
  });
  expectWhole(logbookOf({ shots }));
});

test.each([0, 90])('a club of %d° loft', (loft) => {
  const clubs = [clubOf('i7', 'iron', loft), clubOf('dr', 'driver', 10)];
  expectWhole(logbookOf({ clubs }));
  expectWhole(logbookOf({ clubs, shots: [carried('a', 90), carried('b', 95, { wind: { from_clock: 12, mps: 5 } })] }));
});
