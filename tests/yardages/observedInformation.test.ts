import { describe, expect, test } from 'vitest';
import { choleskyInPlace, invertFromCholesky } from '../../src/statistics/cholesky.ts';
import { carryPrior, TABLE_SCALES } from '../../src/yardages/carryPrior.ts';
import { cellTraits, packEvidence } from '../../src/yardages/evidence.ts';
import { observedInformation } from '../../src/yardages/observedInformation.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { fitStrikes } from '../../src/yardages/strikeFit.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { cellOf, evidenceOf } from './cells.ts';
import { type Drawn, inventedShots } from './invented.ts';
import { logOfPrior, logOfShots, type Place, placeOf } from './logPosterior.ts';

const bag = [cellOf('iron', 30, 'full', 0), cellOf('iron', 34, 'full', 1), cellOf('wedge', 54, '9:00', 2)];
const prior = carryPrior(bag, TABLE_SCALES);
const traits = cellTraits(bag);

function golferOf(mishits: number, word: Drawn['word']) {
  const shots = inventedShots(bag, prior.mean, { seed: 'hessian', shots: 36, days: 3, scatter: 0.04, mishits, word });
  const evidence = packEvidence(shots);
  const fit = fitStrikes(evidence, traits, [], prior, TABLE_SCALES);
  return { shots, fit, ...observedInformation(evidence, traits, [], fit) };
}
const labelled = golferOf(0.15, (mishit) => (mishit ? 'mishit' : 'solid'));
const unlabelled = golferOf(0.3, () => 'none');

// Own tolerances: the information on the scatter is taken as expected, not as observed; and where nothing is
// labelled a shot that says less than nothing counts as nothing, which the cells make up for but the rough does not.
describe.each([
  ['labelled', labelled, 4, 0.03],
  ['not labelled', unlabelled, 3, 0.018],
])('a small golfer, %s', (_, { shots, fit, sheet, own, solid }, compared, tolerance) => {
  const used = [0, 1, 2, bag.length];
  const days = 3;
  const count = used.length + days + 2;

  function moved(direction: ArrayLike<number>): number {
    const at = placeOf(fit);
    const unknowns = at.unknowns.slice();
    used.forEach((place, i) => {
      unknowns[place] += direction[i];
    });
    const there: Place = {
      unknowns,
      days: at.days.map((day, r) => day + direction[used.length + r]),
      logitMishits: at.logitMishits + direction[count - 2],
      logScatter2: at.logScatter2 + direction[count - 1],
    };
    return logOfShots(bag, shots, fit, there);
  }

  test('the information is the curvature of the log likelihood, days, mishits and scatter eliminated', () => {
    const step = (i: number) => (i < count - 2 ? 5e-4 : 5e-3);
    const along = (i: number, di: number, j: number, dj: number) => {
      const direction = new Float64Array(count);
      direction[i] += di * step(i);
      direction[j] += dj * step(j);
      return moved(direction);
    };
    const hessian = new Float64Array(count * count);
    for (let i = 0; i < count; i++) {
      for (let j = 0; j <= i; j++) {
        const second = along(i, 1, j, 1) - along(i, 1, j, -1) - along(i, -1, j, 1) + along(i, -1, j, -1);
        hessian[i * count + j] = -second / (4 * step(i) * step(j));
        hessian[j * count + i] = hessian[i * count + j];
      }
    }
    // The Schur complement of the last rows is the inverse of the leading block of the inverse.
    choleskyInPlace(hessian, count);
    const inverse = invertFromCholesky(hessian, count);
    const marginal = new Float64Array(used.length ** 2);
    for (let i = 0; i < used.length; i++) {
      for (let j = 0; j < used.length; j++) marginal[i * used.length + j] = inverse[i * count + j];
    }
    choleskyInPlace(marginal, used.length);
    const information = invertFromCholesky(marginal, used.length);
    const size = bag.length + SHARED_COUNT;
    for (let i = 0; i < compared; i++) {
      for (let j = 0; j < compared; j++) {
        const scale = Math.sqrt(information[i * used.length + i] * information[j * used.length + j]);
        const difference = sheet.matrix[used[i] * size + used[j]] - information[i * used.length + j];
        expect(Math.abs(difference) / scale, `${i}, ${j}`).toBeLessThan(tolerance);
      }
    }
  });

  test('no step away from the fit is more probable', () => {
    const at = placeOf(fit);
    const best = logOfShots(bag, shots, fit, at) + logOfPrior(bag, at);
    used.forEach((place) => {
      for (const step of [-0.02, -0.01, 0.01, 0.02]) {
        const there = { ...at, unknowns: at.unknowns.with(place, at.unknowns[place] + step) };
        expect(logOfShots(bag, shots, fit, there) + logOfPrior(bag, there)).toBeLessThan(best);
      }
    });
    for (const step of [-0.4, 0.4]) {
      const otherMishits = { ...at, logitMishits: at.logitMishits + step };
      const otherScatter = { ...at, logScatter2: at.logScatter2 + step };
      expect(logOfShots(bag, shots, fit, otherMishits)).toBeLessThan(logOfShots(bag, shots, fit, at));
      expect(logOfShots(bag, shots, fit, otherScatter)).toBeLessThan(logOfShots(bag, shots, fit, at));
    }
  });

  test('every shot is solid with a probability, and every cell has something of its own', () => {
    expect(solid.every((p) => p >= 0 && p <= 1)).toBe(true);
    expect(own.information.every((information) => information > 0)).toBe(true);
  });
});

test('shots said to be mishits are less probably solid', () => {
  const mean = (word: string) => {
    const of = [...labelled.solid].filter((_, k) => labelled.shots[k].word === word);
    return of.reduce((sum, p) => sum + p, 0) / of.length;
  };
  expect(mean('solid')).toBeGreaterThan(0.9);
  expect(mean('mishit')).toBeLessThan(0.4);
});

// Each of these once made a matrix that was not definite: hundreds of shots on one day, two clear groups of them.
test.each([
  ['a solid and a short group, measured to .1 %', 32],
  ['one club alone', 104],
  ['two groups of equal size', 122],
  ['mostly short', 186],
])('a long day on the practice ground keeps the matrix definite: %s', (_, seed) => {
  const numbers = randomNumbers(`pd${seed}`);
  const count = numbers.choice([50, 200, 600]);
  const alone = numbers.chance(0.5);
  const mishits = numbers.uniform();
  const short = numbers.between(0.03, 0.3);
  const scatter = numbers.between(0.001, 0.06);
  const variance = numbers.choice([0.001, 0.005, 0.03]) ** 2;
  const many = Array.from({ length: count }, (_, k) => {
    const cell = alone ? 0 : k % 3;
    const log = prior.mean[cell] + numbers.normal(0, scatter) - (numbers.chance(mishits) ? short : 0);
    return evidenceOf(cell, log, { variance });
  });
  const packed = packEvidence(many);
  const found = fitStrikes(packed, traits, [], prior, TABLE_SCALES);
  const { matrix, size } = observedInformation(packed, traits, [], found).sheet;
  const eased = matrix.map((entry, e) => entry + (e % (size + 1) === 0 ? 1e-6 : 0));
  expect(() => choleskyInPlace(eased, size)).not.toThrow();
});
