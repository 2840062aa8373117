import { expect, test } from 'vitest';
import { choleskyInPlace, invertFromCholesky } from '../../src/statistics/cholesky.ts';
import { packEvidence } from '../../src/yardages/evidence.ts';
import { addShot, clearInformation, eliminateDays, emptyInformation } from '../../src/yardages/jointInformation.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { SHARED_COUNT } from '../../src/yardages/sharedEffects.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { driftStep, evidenceOf } from './cells.ts';
import { loadingsOf } from './denseNormal.ts';

test('days eliminated shot by shot give the same as days solved for beside everything else', () => {
  const cells = 4;
  const days = 3;
  const size = cells + SHARED_COUNT;
  const whole = size + days;
  const numbers = randomNumbers('days');
  const shots = Array.from({ length: 30 }, (_, k) =>
    evidenceOf(k % cells, 4.6, {
      day: k % days,
      // Unordered on purpose, and one effect twice as strong as a whole step.
      shared:
        k % 3 === 0
          ? [[driftStep(2), 2] as const, [0, numbers.normal()] as const]
          : [[driftStep(0), numbers.uniform()] as const],
    }),
  );
  const weights = shots.map(() => numbers.between(50, 400));
  const pulls = shots.map(() => numbers.normal(0, 20));
  const dayEffect = Float64Array.from({ length: days }, () => numbers.normal(0, 0.01));

  const evidence = packEvidence(shots);
  const sheet = emptyInformation(cells, days);
  sheet.matrix.fill(7);
  sheet.gradient.fill(7);
  sheet.dayCoupling.fill(7);
  clearInformation(sheet, dayEffect);
  shots.forEach((_, k) => {
    addShot(sheet, evidence, k, weights[k], pulls[k]);
  });
  eliminateDays(sheet);

  const dense = new Float64Array(whole * whole);
  const gradient = new Float64Array(whole);
  for (let r = 0; r < days; r++) {
    dense[(size + r) * whole + size + r] = 1 / PRIOR.day ** 2;
    gradient[size + r] = -dayEffect[r] / PRIOR.day ** 2;
  }
  shots.forEach((shot, k) => {
    const a = loadingsOf(shot, cells, whole);
    for (let i = 0; i < whole; i++) {
      gradient[i] += pulls[k] * a[i];
      for (let j = 0; j < whole; j++) dense[i * whole + j] += weights[k] * a[i] * a[j];
    }
  });
  // A little information on everything, so that both can be inverted.
  for (let i = 0; i < size; i++) {
    dense[i * whole + i] += 1;
    sheet.matrix[i * size + i] += 1;
  }
  choleskyInPlace(dense, whole);
  const denseInverse = invertFromCholesky(dense, whole);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) expect(sheet.matrix[i * size + j]).toBe(sheet.matrix[j * size + i]);
  }
  choleskyInPlace(sheet.matrix, size);
  const inverse = invertFromCholesky(sheet.matrix, size);
  for (let i = 0; i < size; i++) {
    let step = 0;
    let denseStep = 0;
    for (let j = 0; j < size; j++) {
      expect(inverse[i * size + j]).toBeCloseTo(denseInverse[i * whole + j], 9);
      step += inverse[i * size + j] * sheet.gradient[j];
    }
    for (let j = 0; j < whole; j++) denseStep += denseInverse[i * whole + j] * gradient[j];
    expect(step).toBeCloseTo(denseStep, 9);
  }
});
