import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitCarryModel, likelyCarries } from '../../src/yardages/carryModel.ts';
import { carryPrior, TABLE_SCALES } from '../../src/yardages/carryPrior.ts';
import type { ShotEvidence } from '../../src/yardages/evidence.ts';
import { SCALE_GRID } from '../../src/yardages/scaleAverage.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { anyCells, driftStep, evidenceOf, smallBag } from './cells.ts';
import { inventedShots } from './invented.ts';

const n = smallBag.length;
const prior = carryPrior(smallBag, TABLE_SCALES);
const SEVEN = 3;
const sdOf = (covariance: Float64Array, i: number) => Math.sqrt(covariance[i * n + i]);
const sevens = (count: number, log = prior.mean[SEVEN] + 0.08) =>
  Array.from({ length: count }, (_, k) => evidenceOf(SEVEN, log + 0.02 * ((k % 5) - 2), { day: k % 3, word: 'solid' }));

describe('one golfer', () => {
  test('no shots: the prior, its widths averaged', () => {
    const model = fitCarryModel(smallBag, []);
    for (let i = 0; i < n; i++) {
      expect(model.mean[i]).toBeCloseTo(prior.mean[i], 9);
      const widths = SCALE_GRID.map((scales) => {
        const floor = (0.15 * 0.022 * scales.walk) ** 2;
        return carryPrior(smallBag, scales).covariance[i * n + i] + floor;
      });
      const mean = widths.reduce((sum, width) => sum + width, 0) / widths.length;
      expect(model.covariance[i * n + i]).toBeCloseTo(mean, 9);
    }
    expect([...model.own]).toEqual([...new Float64Array(n)]);
  });

  test('more shots make the number surer, more its own, and nearer to what they say', () => {
    const neighbours = [2, 4, 2, 4, 2, 4].map((cell, day) =>
      evidenceOf(cell, prior.mean[cell] - 0.02, { day, word: 'solid' }),
    );
    let before = { sd: Number.POSITIVE_INFINITY, own: -1, off: Number.POSITIVE_INFINITY };
    for (const count of [0, 1, 3, 10, 40]) {
      const model = fitCarryModel(smallBag, [...neighbours, ...sevens(count)]);
      const now = {
        sd: sdOf(model.covariance, SEVEN),
        own: model.own[SEVEN],
        off: Math.abs(model.mean[SEVEN] - prior.mean[SEVEN] - 0.08),
      };
      expect(now.sd).toBeLessThan(before.sd);
      expect(now.own).toBeGreaterThan(before.own);
      expect(now.own).toBeLessThanOrEqual(1);
      expect(now.off).toBeLessThan(before.off);
      before = now;
    }
    expect(before.off).toBeLessThan(0.015);
  });

  test('the own share is what the variance would lose without the cell’s shots, drift and all', () => {
    const old = [0, 1, 2, 3].map((step) => [driftStep(step), 1] as const);
    const shots = [SEVEN, SEVEN, SEVEN, 2, 4, 5].flatMap((cell, c) =>
      Array.from({ length: 8 }, (_, k) =>
        evidenceOf(cell, prior.mean[cell] + 0.02 * ((k % 5) - 2), { day: 8 * c + k, shared: old, word: 'solid' }),
      ),
    );
    const { covariance, own } = fitCarryModel(smallBag, shots);
    for (const cell of [SEVEN, 2, 4, 5]) {
      const without = fitCarryModel(
        smallBag,
        shots.filter((shot) => shot.cell !== cell),
      );
      const share = 1 - covariance[cell * n + cell] / without.covariance[cell * n + cell];
      // Refitting changes the widths and the share of mishits too, which the formula leaves alone.
      expect(Math.abs(own[cell] - share), `${cell}`).toBeLessThan(0.1);
    }
  });

  test('shots with one club make its neighbours surer too, the nearest most', () => {
    const none = fitCarryModel(smallBag, []);
    const some = fitCarryModel(smallBag, sevens(10));
    const gain = (i: number) => sdOf(some.covariance, i) / sdOf(none.covariance, i);
    expect(gain(2)).toBeLessThan(0.25);
    expect(gain(2)).toBeLessThan(gain(0));
    expect(some.own[2]).toBe(0);
    expect(some.mean[2] - prior.mean[2]).toBeGreaterThan(0.05);
  });

  test('"cleared" raises, "short of" lowers, and the two against each other break nothing', () => {
    const start = fitCarryModel(smallBag, sevens(2)).mean[SEVEN];
    const cleared = evidenceOf(SEVEN, 0, { logLeast: start + 0.05, logMost: Number.POSITIVE_INFINITY });
    const shortOf = evidenceOf(SEVEN, 0, { logLeast: Number.NEGATIVE_INFINITY, logMost: start - 0.05 });
    const meanWith = (...more: ShotEvidence[]) => fitCarryModel(smallBag, [...sevens(2), ...more]).mean[SEVEN];
    expect(meanWith(cleared)).toBeGreaterThan(start + 0.003);
    expect(meanWith(shortOf)).toBeLessThan(start - 0.001);
    // A ball may fall short by a mishit, but hardly fly too far: the bound from below says more.
    expect(meanWith(cleared) - start).toBeGreaterThan(start - meanWith(shortOf));
    const both = meanWith(cleared, shortOf, cleared, shortOf);
    expect(Math.abs(both - start)).toBeLessThan(0.06);
  });

  test('a bound far from the number says nothing, an impossible one no more than an outlier', () => {
    const start = fitCarryModel(smallBag, sevens(8)).mean[SEVEN];
    const meanWith = (logLeast: number) =>
      fitCarryModel(smallBag, [...sevens(8), evidenceOf(SEVEN, 0, { logLeast, logMost: Number.POSITIVE_INFINITY })])
        .mean[SEVEN];
    expect(Math.abs(meanWith(start - 1) - start)).toBeLessThan(0.002);
    expect(Math.abs(meanWith(start + 1.5) - start)).toBeLessThan(0.03);
    expect(meanWith(start + 40)).toBeCloseTo(start, 1);
  });

  test('the order of the shots and the numbers of the days do not matter', () => {
    const shots = inventedShots(smallBag, prior.mean, {
      seed: 'order',
      shots: 120,
      days: 6,
      scatter: 0.05,
      mishits: 0.2,
      word: (mishit) => (mishit ? 'mishit' : 'none'),
    });
    const one = fitCarryModel(smallBag, shots);
    const other = fitCarryModel(
      smallBag,
      [...shots.slice(50), ...shots.slice(0, 50)].map((shot) => ({ ...shot, day: 9 - shot.day })),
    );
    for (let i = 0; i < n; i++) {
      expect(other.mean[i]).toBeCloseTo(one.mean[i], 9);
      expect(sdOf(other.covariance, i)).toBeCloseTo(sdOf(one.covariance, i), 9);
      expect(other.own[i]).toBeCloseTo(one.own[i], 9);
    }
  });

  test('a shot of no cell is refused by name', () => {
    expect(() => fitCarryModel(smallBag, [evidenceOf(99, 5)])).toThrow(/no cell 99 among 9/);
    expect(() => fitCarryModel(smallBag, [evidenceOf(-1, 5)])).toThrow(/no cell -1 among 9/);
  });

  test('the carries without intervals are those of the search, near the ones that count', () => {
    const likely = likelyCarries(smallBag, sevens(10), []);
    const { mean } = fitCarryModel(smallBag, sevens(10));
    for (let i = 0; i < n; i++) expect(Math.abs(likely[i] - mean[i])).toBeLessThan(0.03);
  });
});

test('any bag with any evidence: finite, own share between 0 and 1, variances above 0', () => {
  const log = fc.double({ min: 0, max: 7, noNaN: true });
  const shot = fc.record({
    cell: fc.nat({ max: 100 }),
    day: fc.nat({ max: 5 }),
    one: log,
    other: log,
    kind: fc.constantFrom('measured', 'measured', 'between', 'least', 'most'),
    variance: fc.double({ min: 1e-6, max: 1e5, noNaN: true }),
    word: fc.constantFrom('none' as const, 'solid' as const, 'mishit' as const),
    shared: fc.uniqueArray(fc.tuple(fc.nat({ max: SHARED_COUNT - 1 }), fc.double({ min: -3, max: 3, noNaN: true })), {
      maxLength: 5,
      selector: ([index]) => index,
    }),
  });
  const drawn = fc.tuple(
    anyCells,
    fc.array(shot, { maxLength: 40 }),
    fc.array(fc.tuple(fc.nat({ max: 100 }), log), { maxLength: 4 }),
  );
  fc.assert(
    fc.property(drawn, ([cells, drawnShots, drawnClaims]) => {
      const shots = drawnShots.map(({ cell, day, one, other, kind, variance, word, shared }): ShotEvidence => {
        const least = kind === 'most' ? Number.NEGATIVE_INFINITY : kind === 'measured' ? one : Math.min(one, other);
        const most = kind === 'least' ? Number.POSITIVE_INFINITY : kind === 'measured' ? one : Math.max(one, other);
        return { cell: cell % cells.length, day, logLeast: least, logMost: most, variance, word, shared };
      });
      const claims = drawnClaims.map(([cell, logCarry]) => ({ cell: cell % cells.length, logCarry }));
      const model = fitCarryModel(cells, shots, claims);
      const size = cells.length;
      expect(model.mean.every(Number.isFinite)).toBe(true);
      expect(model.covariance.every(Number.isFinite)).toBe(true);
      for (let i = 0; i < size; i++) {
        expect(model.covariance[i * size + i]).toBeGreaterThan(0);
        expect(model.own[i]).toBeGreaterThanOrEqual(0);
        expect(model.own[i]).toBeLessThanOrEqual(1);
      }
      expect(model.solid.every((p) => p >= 0 && p <= 1 + 1e-12)).toBe(true);
    }),
    { numRuns: 60 },
  );
});
