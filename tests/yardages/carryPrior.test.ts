import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockHours } from '../../src/golf/swing.ts';
import { choleskyInPlace } from '../../src/statistics/cholesky.ts';
import { carryPrior, TABLE_SCALES } from '../../src/yardages/carryPrior.ts';
import { type Cell, logSwingFraction, scatterFactor, swingShares } from '../../src/yardages/cell.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { SCALE_GRID } from '../../src/yardages/scaleAverage.ts';
import { anyCells, cellOf, smallBag } from './cells.ts';

/** Straight lines through values at 7:30, 9:00, 10:30 and `full` at 12; below 7:30 the first line goes on. */
function between(hours: number, values: readonly number[], full: number): number {
  const at = [7.5, 9, 10.5, 12];
  const y = [...values, full];
  const i = hours <= 9 ? 0 : hours <= 10.5 ? 1 : 2;
  return y[i] + ((y[i + 1] - y[i]) * (hours - at[i])) / (at[i + 1] - at[i]);
}

/** What a cell loads on, by the name of the independent part: loading × standard deviation. */
function loadings(cell: Cell, place: number): Map<string, number> {
  const x = cell.loft_deg - 34;
  const hours = cell.swing === 'full' ? 12 : clockHours(cell.swing);
  const g = between(hours, PRIOR.swingFraction.map(Math.log), 0);
  const one = (s: number) => between(hours, [0, 0, 0].with(s, 1), 0);
  return new Map([
    ['level', PRIOR.level],
    ['slope', PRIOR.slope * x],
    ['bend', PRIOR.bend * x * x],
    [`kind ${cell.kind}`, PRIOR.kind[cell.kind]],
    [`club ${cell.club}`, PRIOR.club],
    [`period ${cell.period}`, PRIOR.period],
    ['softness', PRIOR.softness * g],
    ['7:30', PRIOR.swing[0] * one(0)],
    ['9:00', PRIOR.swing[1] * one(1)],
    ['10:30', PRIOR.swing[2] * one(2)],
    [`cell ${place}`, cell.swing === 'full' ? PRIOR.fullCell : PRIOR.partialCell],
  ]);
}

describe('the prior of all cells', () => {
  const cells = [...smallBag, cellOf('wedge', 52, 'full', 5, 9), cellOf('wedge', 50, '8:15', 6), cellOf('iron', 34)];
  const { mean, covariance } = carryPrior(cells, TABLE_SCALES);

  test('covariances are sums over the independent parts that two cells share', () => {
    const parts = cells.map(loadings);
    cells.forEach((_, i) => {
      cells.forEach((_, j) => {
        let expected = 0;
        for (const [name, loading] of parts[i]) expected += loading * (parts[j].get(name) ?? 0);
        expect(covariance[i * cells.length + j]).toBeCloseTo(expected, 14);
      });
    });
  });

  test('means follow the curve over loft, the kind and the swing', () => {
    expect(Math.exp(mean[3])).toBeCloseTo(135 * 0.9144, 9);
    expect(mean[0]).toBeCloseTo(Math.log(123.444) + 0.0175 * 23.5 - 0.0004 * 23.5 ** 2 + 0.14, 12);
    expect(mean[1]).toBeCloseTo(Math.log(123.444) + 0.0175 * 12 - 0.0004 * 144 + 0.02, 12);
    const wedge = Math.log(123.444) - 0.0175 * 20 - 0.0004 * 400;
    expect([mean[5], mean[6], mean[7], mean[8]]).toEqual(
      [1, 0.87, 0.73, 0.55].map((share) => expect.closeTo(wedge + Math.log(share), 12)),
    );
  });

  test('a club twice as free is twice as far from the curve, and no part else changes', () => {
    const wide = carryPrior(cells, { club: 2, swing: 1, walk: 1 }).covariance;
    const n = cells.length;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const more = cells[i].club === cells[j].club ? 3 * PRIOR.club ** 2 : 0;
        expect(wide[i * n + j] - covariance[i * n + j]).toBeCloseTo(more, 14);
      }
    }
  });

  test('it is positive definite for any bag at any width', () => {
    fc.assert(
      fc.property(anyCells, fc.constantFrom(TABLE_SCALES, ...SCALE_GRID), (bag, scales) => {
        const prior = carryPrior(bag, scales);
        expect(prior.mean.every(Number.isFinite)).toBe(true);
        expect(() => choleskyInPlace(prior.covariance.slice(), bag.length)).not.toThrow();
      }),
    );
  });
});

describe('swing lengths', () => {
  const clockText = (hours: number) => {
    const minutes = Math.round((hours % 1) * 60);
    return `${Math.floor(hours)}:${String(minutes).padStart(2, '0')}`;
  };

  test('each named position is itself, and full is none of them', () => {
    expect(swingShares('7:30')).toEqual([1, 0, 0]);
    expect(swingShares('9:00')).toEqual([0, 1, 0]);
    expect(swingShares('10:30')).toEqual([0, 0, 1]);
    expect(swingShares('full')).toEqual([0, 0, 0]);
    expect(scatterFactor('full')).toBe(1);
    expect(['7:30', '9:00', '10:30'].map(scatterFactor)).toEqual([1.6, 1.4, 1.2].map((f) => expect.closeTo(f, 12)));
  });

  test('between them carries and scatter run straight, below 6:30 no further', () => {
    for (let quarter = 26; quarter < 48; quarter++) {
      const hours = quarter / 4;
      const swing = clockText(hours);
      expect(logSwingFraction(swing)).toBeCloseTo(between(hours, [0.55, 0.73, 0.87].map(Math.log), 0), 12);
      expect(scatterFactor(swing)).toBeCloseTo(between(hours, [1.6, 1.4, 1.2], 1), 12);
    }
    expect(swingShares('3:00')).toEqual(swingShares('6:30'));
  });

  test('a longer swing is expected to carry further', () => {
    const swings = Array.from({ length: 22 }, (_, i) => clockText(6.5 + i / 4));
    const { mean } = carryPrior(
      swings.map((swing) => cellOf('wedge', 54, swing)),
      TABLE_SCALES,
    );
    for (let i = 1; i < mean.length; i++) expect(mean[i]).toBeGreaterThan(mean[i - 1]);
  });
});
