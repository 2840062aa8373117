import { describe, expect, test } from 'vitest';
import { coachFile, EXPORTED_AT, playerFile } from '../../demo/logbooks.ts';
import { demoTruth } from '../../demo/truth.ts';
import type { Book } from '../../src/book/book.ts';
import { composeBook } from '../../src/book/composeBook.ts';
import type { CarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { metres } from '../../src/units/metres.ts';
import { yardsFromMetres } from '../../src/units/yards.ts';

/** How near the book comes to the truth, over the cells with shots: RMSE in yards, and share inside lo80 to hi80. */
function against(book: Book): { cells: number; rmse_yd: number; inside: number } {
  const hit = book.cells.filter((cell) => cell.shots > 0);
  let squares = 0;
  let inside = 0;
  for (const cell of hit) {
    const truth = demoTruth.find((true_) => true_.specId === cell.specId && true_.swing === cell.swing);
    if (!truth) throw new RangeError(`no truth for ${cell.specId} ${cell.swing}`);
    squares += yardsFromMetres(metres(cell.stock_m - truth.stock_m)) ** 2;
    if (truth.stock_m >= cell.lo80_m && truth.stock_m <= cell.hi80_m) inside++;
  }
  return { cells: hit.length, rmse_yd: Math.sqrt(squares / hit.length), inside: inside / hit.length };
}

function verdict(book: Book, pair: readonly string[]): string {
  const gap = book.gaps.find(({ longer, shorter }) => pair.includes(longer) && pair.includes(shorter));
  return gap?.verdict ?? 'not neighbours';
}

const golfers = [
  ['player', playerFile, { cells: 24, same: ['tib-c03', 'tib-c04'], wide: ['tib-c05', 'tib-c07'] }],
  ['coach', coachFile, { cells: 20, same: ['quo-c03', 'quo-c04'], wide: ['quo-c11', 'quo-c12'] }],
] as const;

describe.each(golfers)('the book of the %s', (_, file, expected) => {
  const bookOf = (logbook: CarrybookFile): Book => composeBook(logbook, EXPORTED_AT);
  const standard = bookOf(file('standard'));

  test('holds the truth in its intervals and comes near it, when every day has standard conditions', () => {
    const score = against(standard);
    expect(score.cells).toBeGreaterThanOrEqual(expected.cells);
    expect(score.rmse_yd).toBeLessThan(5);
    expect(score.inside).toBeGreaterThanOrEqual(0.7);
  });

  test('holds the truth and comes near it in the weather as it was', () => {
    const score = against(bookOf(file()));
    expect(score.rmse_yd).toBeLessThan(4);
    expect(score.inside).toBeGreaterThanOrEqual(0.7);
  });

  test('sees the overlap and the wide gap that were built in, in any weather', () => {
    for (const book of [standard, bookOf(file())]) {
      expect(['overlap', "can't tell yet"]).toContain(verdict(book, expected.same));
      expect(['wide gap', 'possibly wide']).toContain(verdict(book, expected.wide));
    }
  });
});
