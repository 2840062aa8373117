import { describe, expect, test } from 'vitest';
import { carryPrior, TABLE_SCALES } from '../../src/yardages/carryPrior.ts';
import { cellTraits, packEvidence, type ShotEvidence } from '../../src/yardages/evidence.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { fitStrikes, fittedCarry } from '../../src/yardages/strikeFit.ts';
import { SUM, strikeReader } from '../../src/yardages/strikeMixture.ts';
import { evidenceOf, smallBag } from './cells.ts';
import { conjugatePosterior, densePrior, loadingsOf } from './denseNormal.ts';
import { inventedShots } from './invented.ts';

const prior = carryPrior(smallBag, TABLE_SCALES);
const traits = cellTraits(smallBag);
const n = smallBag.length;
const fitOf = (shots: readonly ShotEvidence[], claims: { cell: number; logCarry: number }[] = []) =>
  fitStrikes(packEvidence(shots), traits, claims, prior, TABLE_SCALES);

const mixed = inventedShots(smallBag, prior.mean, {
  seed: 'mixed',
  shots: 90,
  days: 5,
  scatter: 0.05,
  mishits: 0.2,
  word: (mishit) => (mishit ? 'mishit' : 'solid'),
});

describe('the search for the most probable carries', () => {
  test('solid, labelled, mishit-free shots: the plain conjugate posterior, near enough', () => {
    const shots = inventedShots(smallBag, prior.mean, {
      seed: 'solid',
      shots: 54,
      days: 3,
      scatter: 0.03,
      mishits: 0,
      word: () => 'solid',
    });
    const fit = fitOf(shots);
    const dense = densePrior(prior, TABLE_SCALES, 3);
    const observations = shots.map((shot) => ({
      loadings: loadingsOf(shot, n, dense.size),
      y: shot.logLeast,
      variance: fit.scatter2 * traits.scatter2[shot.cell] + shot.variance,
    }));
    const { mean } = conjugatePosterior(dense, observations);
    // Eased and slightly mishit strikes stay possible, so the mixture reads the same shots up to 1.5 % longer.
    for (let i = 0; i < n; i++) {
      expect(fit.unknowns[i] - mean[i]).toBeGreaterThan(-0.003);
      expect(fit.unknowns[i] - mean[i]).toBeLessThan(0.015);
    }
    expect(fit.mishits).toBeLessThan(0.15);
    expect(Math.sqrt(fit.scatter2)).toBeLessThan(PRIOR.scatter);
  });

  test('with its own responsibilities as weights, the fit is the conjugate posterior computed densely', () => {
    const evidence = packEvidence(mixed);
    const fit = fitOf(mixed);
    const reader = strikeReader(evidence, traits);
    const dense = densePrior(prior, TABLE_SCALES, 5);
    const observations = mixed.map((shot, k) => {
      const fitted = fittedCarry(evidence, k, fit.unknowns, fit.dayEffect);
      reader.read(k, fitted, { ...fit, widening: 0 }, false);
      const information = reader.sums[SUM.information];
      return {
        loadings: loadingsOf(shot, n, dense.size),
        y: fitted + reader.sums[SUM.pull] / information,
        variance: 1 / information,
      };
    });
    const { mean } = conjugatePosterior(dense, observations);
    // The search stops when no θ moves by more than .002.
    for (let i = 0; i < n + SHARED_COUNT; i++) expect(Math.abs(fit.unknowns[i] - mean[i])).toBeLessThan(0.002);
    for (let r = 0; r < 5; r++) expect(Math.abs(fit.dayEffect[r] - mean[n + SHARED_COUNT + r])).toBeLessThan(0.0002);
    expect(fit.rounds).toBeLessThan(14);
  });

  test('the same shots give the same figures, digit for digit', () => {
    expect(fitOf(mixed)).toEqual(fitOf(mixed));
  });

  test('shots in another order, with days under other numbers, give the same carries', () => {
    const one = fitOf(mixed);
    const other = fitOf([...mixed].reverse().map((shot) => ({ ...shot, day: 40 - 3 * shot.day })));
    for (let i = 0; i < n + SHARED_COUNT; i++) expect(other.unknowns[i]).toBeCloseTo(one.unknowns[i], 9);
    expect(other.mishits).toBeCloseTo(one.mishits, 9);
  });

  test('no shots: the prior', () => {
    const fit = fitOf([]);
    for (let i = 0; i < n; i++) expect(fit.unknowns[i]).toBeCloseTo(prior.mean[i], 12);
    expect(fit.mishits).toBeCloseTo(0.2, 12);
    expect(fit.scatter2).toBeCloseTo(PRIOR.scatter ** 2, 12);
  });

  test('a claim alone counts as one weak shot', () => {
    const claimed = prior.mean[3] + 0.2;
    const { unknowns } = fitOf([], [{ cell: 3, logCarry: claimed }]);
    const k = prior.covariance[3 * n + 3];
    expect(unknowns[3] - prior.mean[3]).toBeCloseTo((0.2 * k) / (k + 0.08 ** 2), 9);
  });

  test('mishits that are labelled do not pull the number down', () => {
    const solid = Array.from({ length: 12 }, (_, k) => evidenceOf(3, prior.mean[3] + 0.01 * ((k % 5) - 2)));
    const short = Array.from({ length: 5 }, (_, k) =>
      evidenceOf(3, prior.mean[3] - 0.2 - 0.03 * k, { word: 'mishit' }),
    );
    const without = fitOf(solid).unknowns[3];
    const within = fitOf([...solid, ...short]);
    expect(Math.abs(within.unknowns[3] - without)).toBeLessThan(0.01);
    expect(within.mishits).toBeGreaterThan(fitOf(solid).mishits + 0.05);
  });
});
