import { describe, expect, test } from 'vitest';
import { type CarryModel, fitCarryModel } from '../../../src/yardages/carryModel.ts';
import { carryPrior, TABLE_SCALES } from '../../../src/yardages/carryPrior.ts';
import { withImaginedCells } from '../../../src/yardages/imaginedClub.ts';
import { cellOf, smallBag } from '../cells.ts';
import { inventedShots } from '../invented.ts';

const means = carryPrior(smallBag, TABLE_SCALES).mean;
const shots = inventedShots(smallBag, means, {
  seed: 'imagined',
  shots: 120,
  days: 9,
  scatter: 0.05,
  mishits: 0.15,
  word: (mishit) => (mishit ? 'mishit' : 'none'),
});
const model = fitCarryModel(smallBag, shots);
const imagined = [
  cellOf('hybrid', 25, 'full', 6),
  cellOf('driving iron', 20, 'full', 7),
  cellOf('iron', 33, 'full', 3, 8),
  cellOf('wedge', 58, 'full', 9),
  cellOf('wedge', 58, '9:00', 9),
];
const wider = withImaginedCells(model, imagined);
const n = smallBag.length;
const m = n + imagined.length;
const at = (one: CarryModel, i: number, j = i) => one.covariance[i * one.cells.length + j];

describe('imagined clubs', () => {
  test('leave every number of the real ones as it is, to 1e-9', () => {
    for (let i = 0; i < n; i++) {
      expect(Math.abs(wider.mean[i] - model.mean[i])).toBeLessThan(1e-9);
      expect(Math.abs(wider.own[i] - model.own[i])).toBeLessThan(1e-9);
      for (let j = 0; j < n; j++) expect(Math.abs(at(wider, i, j) - at(model, i, j))).toBeLessThan(1e-9);
    }
  });

  test('are near what a fit with them in it from the start says', () => {
    const fitted = fitCarryModel([...smallBag, ...imagined], shots);
    for (let i = n; i < m; i++) {
      expect(Math.abs(wider.mean[i] - fitted.mean[i])).toBeLessThan(0.003);
      expect(Math.abs(at(wider, i) / at(fitted, i) - 1)).toBeLessThan(0.05);
    }
  });

  test('know the golfer: surer than before any shot, less sure than the clubs hit, none of it own evidence', () => {
    const prior = carryPrior(wider.cells, TABLE_SCALES).covariance;
    for (let i = n; i < m; i++) {
      expect(at(wider, i)).toBeLessThan(0.1 * prior[i * m + i]);
      expect(wider.own[i]).toBe(0);
    }
    expect(at(wider, n)).toBeGreaterThan(at(wider, 1));
  });

  test('a bent club is surer than another one of the same loft, for it is the same club', () => {
    const two = withImaginedCells(model, [cellOf('iron', 33, 'full', 3, 20), cellOf('iron', 33, 'full', 21)]);
    expect(at(two, n)).toBeLessThan(at(two, n + 1));
    // 1° stronger: further by about 1.75 % (prior slope at the anchor loft).
    expect(two.mean[n] - two.mean[3]).toBeGreaterThan(0.01);
    expect(two.mean[n] - two.mean[3]).toBeLessThan(0.025);
  });

  test('none changes nothing, one that is there is refused', () => {
    expect(withImaginedCells(model, [])).toBe(model);
    expect(() => withImaginedCells(model, [smallBag[0]])).toThrow(/already has a full swing/);
  });

  test('without any shot are the prior', () => {
    const blank = withImaginedCells(fitCarryModel(smallBag, []), imagined);
    const prior = carryPrior(blank.cells, TABLE_SCALES);
    for (let i = n; i < m; i++) expect(blank.mean[i]).toBeCloseTo(prior.mean[i], 6);
  });
});
