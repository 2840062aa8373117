import { describe, expect, test } from 'vitest';
import { fitBook } from '../../src/book/fitBook.ts';
import { numberSearch, type SearchBook, searchBook } from '../../src/book/numberSearch.ts';
import { metres } from '../../src/units/metres.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { demoSeason } from '../demo/season.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';

interface Made {
  readonly id: string;
  readonly stock: number;
  readonly error?: number;
  readonly scatter?: number;
  readonly played?: boolean;
  readonly current?: boolean;
}

/** A book made by hand: one normal hill a cell, stock carries in metres, errors and scatters as shares. */
function bookOf(cells: readonly Made[], correlation = 0): SearchBook {
  const n = cells.length;
  const errors = cells.map(({ error = 0.01 }) => error);
  return {
    cells: cells.map(({ id, played = true, current = true }) => ({
      clubId: id,
      specId: id,
      swing: 'full',
      current,
      played,
    })),
    forecasts: cells.map(({ stock, scatter = 0.04 }, i) => ({
      weights: Float64Array.of(1),
      means: Float64Array.of(Math.log(stock)),
      deviations: Float64Array.of(Math.hypot(scatter, errors[i])),
    })),
    theta: Float64Array.from(cells, ({ stock }) => Math.log(stock)),
    covariance: Float64Array.from({ length: n * n }, (_, k) => {
      const [i, j] = [Math.floor(k / n), k % n];
      return errors[i] * errors[j] * (i === j ? 1 : correlation);
    }),
    shots: cells.map(() => 5),
  };
}

describe('what reaches a number', () => {
  test('the nearest stock carry comes first, and a chance is that of the balls that come', () => {
    const book = bookOf([
      { id: 'long', stock: 120 },
      { id: 'near', stock: 101 },
      { id: 'short', stock: 95 },
    ]);
    const found = numberSearch(book, metres(100), null);
    expect(found.map(({ clubId }) => clubId)).toEqual(['near', 'short']);
    // 200,000 balls drawn at random from the same hill.
    const random = randomNumbers('balls');
    let near = 0;
    for (let ball = 0; ball < 200_000; ball++) {
      const carry = Math.exp(random.normal(Math.log(101), Math.hypot(0.04, 0.01)));
      if (Math.abs(carry - 100) <= 5 * METRES_PER_YARD) near += 1;
    }
    expect(found[0].near).toBeCloseTo(near / 200_000, 2);
  });

  test('a hazard puts the club that clears it first, and says with what chance', () => {
    const book = bookOf([
      { id: 'near', stock: 100, scatter: 0.03 },
      { id: 'over', stock: 104, scatter: 0.03 },
    ]);
    expect(numberSearch(book, metres(100), null)[0].clubId).toBe('near');
    const found = numberSearch(book, metres(100), metres(100));
    expect(found[0].clubId).toBe('over');
    expect(found.find(({ clubId }) => clubId === 'near')?.over).toBeCloseTo(0.5, 6);
    expect(found[0].over).toBeGreaterThan(0.85);
  });

  test('what is not played or not in the bag is not offered', () => {
    const book = bookOf([
      { id: 'not played', stock: 100, played: false },
      { id: 'at home', stock: 100, current: false },
      { id: 'there', stock: 104 },
    ]);
    expect(numberSearch(book, metres(100), null).map(({ clubId }) => clubId)).toEqual(['there']);
  });

  test('two that cannot be told apart are a tie, two that can are not', () => {
    const tie = (cells: readonly Made[], correlation = 0) =>
      numberSearch(bookOf(cells, correlation), metres(100), null).map(({ isTie }) => isTie);
    expect(
      tie([
        { id: 'a', stock: 100, error: 0.03 },
        { id: 'b', stock: 101.5, error: 0.03 },
      ]),
    ).toEqual([false, true]);
    expect(
      tie([
        { id: 'a', stock: 100, error: 0.004 },
        { id: 'b', stock: 106, error: 0.004 },
      ]),
    ).toEqual([false, false]);
  });

  test('a tie is what draws from the joint posterior call undecided', () => {
    const random = randomNumbers('ties');
    let ties = 0;
    let compared = 0;
    for (let pair = 0; pair < 60; pair++) {
      const [error, correlation] = [random.between(0.005, 0.03), random.between(0, 0.95)];
      const stocks = [random.between(97, 103), random.between(95, 105)];
      const made = stocks.map((stock, i) => ({ id: `${i}`, stock, error }));
      const found = numberSearch(bookOf(made, correlation), metres(100), null);
      if (found.length < 2) continue;
      // One scatter for both, so the better chance is with the stock carry that is nearer in proportion.
      const [first, second] = found.map(({ clubId }) => Math.log(stocks[Number(clubId)] / 100));
      let better = 0;
      for (let draw = 0; draw < 4000; draw++) {
        const z = random.normal();
        const w = correlation * z + Math.sqrt(1 - correlation ** 2) * random.normal();
        if (Math.abs(first + error * z) < Math.abs(second + error * w)) better += 1;
      }
      if (Math.abs(better / 4000 - 0.8) < 0.04) continue;
      compared += 1;
      if (found[1].isTie) ties += 1;
      expect(found[1].isTie, `${stocks} ± ${error}, correlation ${correlation}: ${better / 4000}`).toBe(better < 3200);
    }
    expect(compared).toBeGreaterThan(30);
    expect(ties).toBeGreaterThan(5);
    expect(ties).toBeLessThan(compared - 5);
  });

  test('a number nobody reaches has no option, and no number is an error with its value', () => {
    expect(numberSearch(bookOf([{ id: 'a', stock: 100 }]), metres(250), null)).toEqual([]);
    expect(() => numberSearch(bookOf([]), metres(0), null)).toThrow('0 m');
    expect(() => numberSearch(bookOf([]), metres(100), metres(-3))).toThrow('-3 m');
  });

  test('in the demo season every number of the card finds its own club first or in a tie with the first', () => {
    const season = demoSeason('season-player.json');
    const book = searchBook(fitBook(season, season.exportedAt));
    const own = book.cells.flatMap((cell, i) => (cell.current && cell.played && book.shots[i] > 5 ? [i] : []));
    expect(own.length).toBeGreaterThan(10);
    const missed = own.filter((i) => {
      const found = numberSearch(book, metres(Math.exp(book.theta[i])), null);
      const firstLoser = found.findIndex(({ isTie }, rank) => rank > 0 && !isTie);
      const best = firstLoser < 0 ? found : found.slice(0, firstLoser);
      return !best.some(({ clubId, swing }) => clubId === book.cells[i].clubId && swing === book.cells[i].swing);
    });
    expect(missed.map((i) => `${book.cells[i].clubId} ${book.cells[i].swing}`)).toEqual([]);
  });
});
