import { describe, expect, test } from 'vitest';
import { carryPrior } from '../../src/yardages/carryPrior.ts';
import { packEvidence, type ShotEvidence } from '../../src/yardages/evidence.ts';
import { addShot, clearInformation, eliminateDays, emptyInformation } from '../../src/yardages/jointInformation.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { averageOverScales, SCALE_GRID } from '../../src/yardages/scaleAverage.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { fittedCarry, type StrikeFit } from '../../src/yardages/strikeFit.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { driftStep, evidenceOf, smallBag } from './cells.ts';
import { conjugatePosterior, densePrior, loadingsOf } from './denseNormal.ts';

const n = smallBag.length;
const DAYS = 3;
const SD = 0.04;

/** Shots that are plain normal observations, read at z*: a quadratic log likelihood without any remainder. */
function sheetAt(shots: readonly ShotEvidence[], unknowns: Float64Array) {
  const dayEffect = new Float64Array(DAYS);
  const evidence = packEvidence(shots);
  const sheet = emptyInformation(n, DAYS);
  clearInformation(sheet, dayEffect);
  shots.forEach((shot, k) => {
    const residual = shot.logLeast - fittedCarry(evidence, k, unknowns, dayEffect);
    addShot(sheet, evidence, k, 1 / SD ** 2, residual / SD ** 2);
  });
  eliminateDays(sheet);
  const fit: StrikeFit = {
    unknowns,
    dayEffect,
    mishits: 0.2,
    scatter2: 0.002,
    calledMishit: Float64Array.from(PRIOR.calledMishit),
    loose: 0.06,
    rounds: 1,
  };
  const own = { information: new Float64Array(n), loading: new Float64Array(n * SHARED_COUNT) };
  return { observed: { sheet, own, solid: new Float64Array(shots.length) }, fit };
}

/** The same worked directly: every width's posterior and marginal likelihood from the covariance of the data. */
function directAverage(shots: readonly ShotEvidence[]) {
  const found = SCALE_GRID.map((scales) => {
    const dense = densePrior(carryPrior(smallBag, scales), scales, DAYS);
    const observations = shots.map((shot) => ({
      loadings: loadingsOf(shot, n, dense.size),
      y: shot.logLeast,
      variance: SD ** 2,
    }));
    return { ...conjugatePosterior(dense, observations), size: dense.size, scales };
  });
  const best = Math.max(...found.map(({ logEvidence }) => logEvidence));
  const weights = found.map(({ logEvidence }) => Math.exp(logEvidence - best));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / total);
  const mean = Array.from({ length: n }, (_, i) => found.reduce((sum, one, s) => sum + shares[s] * one.mean[i], 0));
  const covariance = (i: number, j: number) =>
    found.reduce((sum, one, s) => {
      const floor = i === j ? (0.15 * 0.022 * one.scales.walk) ** 2 : 0;
      const within = one.covariance[i * one.size + j] + floor;
      return sum + shares[s] * (within + (one.mean[i] - mean[i]) * (one.mean[j] - mean[j]));
    }, 0);
  return { shares, mean, covariance };
}

/** Shots of a golfer whose clubs lie off the curve by this much, ln. */
function shotsOf(offCurve: number, seed: string): ShotEvidence[] {
  const numbers = randomNumbers(seed);
  const { mean } = carryPrior(smallBag, { club: 1, swing: 1, walk: 1 });
  const off = [1, -1, 1, -1, 1, -1].map((sign) => sign * offCurve);
  return Array.from({ length: 45 }, (_, k) => {
    const cell = k % n;
    return evidenceOf(cell, mean[cell] + 0.05 + off[smallBag[cell].club] + numbers.normal(0, SD), {
      day: k % DAYS,
      shared: k % 2 === 0 ? [[driftStep(1), 1] as const] : [],
    });
  });
}

describe.each([
  ['clubs on the curve', 0],
  ['clubs a little off the curve', 0.015],
])('%s', (_, off) => {
  const shots = shotsOf(off, `off ${off}`);
  const direct = directAverage(shots);
  // Read at the answer, so that no step is cut short.
  const at = new Float64Array(n + SHARED_COUNT);
  at.set(direct.mean);
  const { observed, fit } = sheetAt(shots, at);
  const average = averageOverScales(smallBag, observed, fit);

  test('each width counts by the marginal likelihood of the shots', () => {
    for (let i = 0; i < n; i++) {
      expect(average.mean[i]).toBeCloseTo(direct.mean[i], 7);
      for (let j = 0; j < n; j++) {
        expect(average.covariance[i * n + j] / direct.covariance(i, i)).toBeCloseTo(
          direct.covariance(i, j) / direct.covariance(i, i),
          6,
        );
      }
    }
  });
});

test('clubs off the curve make wide club priors more probable', () => {
  const wide = (off: number) =>
    directAverage(shotsOf(off, 'wide')).shares.reduce(
      (sum, share, s) => sum + (SCALE_GRID[s].club === 2 ? share : 0),
      0,
    );
  expect(wide(0.05)).toBeGreaterThan(wide(0) + 0.3);
});

test('no θ moves by more than a posterior deviation away from where it was read', () => {
  const shots = shotsOf(0, 'far');
  const { mean } = directAverage(shots);
  for (const away of [-0.5, 0.5]) {
    const at = new Float64Array(n + SHARED_COUNT);
    at.set(mean.map((each) => each + away));
    const { observed, fit } = sheetAt(shots, at);
    const average = averageOverScales(smallBag, observed, fit);
    for (let i = 0; i < n; i++) {
      const moved = Math.abs(average.mean[i] - at[i]);
      expect(moved).toBeGreaterThan(0.005);
      expect(moved).toBeLessThanOrEqual(Math.sqrt(average.covariance[i * n + i]));
    }
  }
});
