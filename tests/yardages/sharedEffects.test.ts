import { expect, test } from 'vitest';
import {
  DRIFT_STEPS,
  driftShares,
  SHARED_EFFECTS,
  sharedIndex,
  sharedVariances,
} from '../../src/yardages/sharedEffects.ts';

const TABLE = { club: 1, swing: 1, walk: 1 };

test('the drift is a walk: its variance grows with the days, .022 over 210', () => {
  const variances = sharedVariances(TABLE).slice(SHARED_EFFECTS.length);
  for (const [age, expected] of [
    [0, 0],
    [30, 0.022 ** 2 / 7],
    [210, 0.022 ** 2],
    [840, 4 * 0.022 ** 2],
    [5000, 4 * 0.022 ** 2],
  ]) {
    const shares = driftShares(age);
    expect(shares.length).toBe(DRIFT_STEPS);
    expect(shares.reduce((sum, share, s) => sum + share ** 2 * variances[s], 0)).toBeCloseTo(expected, 12);
  }
});

test('an older shot has every step behind it that a younger one has', () => {
  for (let age = 0; age < 900; age += 7) {
    const younger = driftShares(age);
    driftShares(age + 7).forEach((share, s) => {
      expect(share).toBeGreaterThanOrEqual(younger[s]);
    });
  }
  expect(driftShares(60)).toEqual([1, 0.5, 0, 0, 0]);
});

test('a wilder walk widens the drift alone', () => {
  const table = sharedVariances(TABLE);
  const wild = sharedVariances({ ...TABLE, walk: 2 });
  table.forEach((variance, s) => {
    expect(wild[s] / variance).toBeCloseTo(s < SHARED_EFFECTS.length ? 1 : 4, 12);
  });
  expect(table[sharedIndex('wind')]).toBeCloseTo(0.45 ** 2, 12);
  expect(table[sharedIndex('rough')]).toBeCloseTo(0.025 ** 2, 12);
});
