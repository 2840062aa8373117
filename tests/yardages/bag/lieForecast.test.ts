import { expect, test } from 'vitest';
import { fitCarryModel } from '../../../src/yardages/carryModel.ts';
import { carryPrior, TABLE_SCALES } from '../../../src/yardages/carryPrior.ts';
import type { ShotEvidence } from '../../../src/yardages/evidence.ts';
import { lieCosts, lieForecast } from '../../../src/yardages/lieForecast.ts';
import { PRIOR } from '../../../src/yardages/priorTable.ts';
import { sharedIndex } from '../../../src/yardages/sharedEffects.ts';
import { evidenceOf, smallBag } from '../cells.ts';
import { forecastOf } from './leaving.ts';

const { mean } = carryPrior(smallBag, TABLE_SCALES);
const fairway: ShotEvidence[] = Array.from({ length: 120 }, (_, k) =>
  evidenceOf(k % 9, mean[k % 9] + 0.04 * Math.sin(k * 2.4), { day: k % 8 }),
);
const rough = (extra: number) =>
  Array.from({ length: 60 }, (_, k) =>
    evidenceOf(k % 9, mean[k % 9] + extra + 0.04 * Math.sin(k * 1.7), {
      day: k % 8,
      variance: 0.05 ** 2,
      shared: [[sharedIndex('rough'), 1]],
    }),
  );

test('without a shot from them, lies cost what the table says, as surely as golfers differ', () => {
  const costs = lieCosts(fitCarryModel(smallBag, []));
  expect(costs['light rough'].offset).toBeCloseTo(PRIOR.lieOffset.light, 9);
  expect(costs['light rough'].error).toBeCloseTo(PRIOR.rough, 6);
  expect(costs['heavy rough'].offset).toBeCloseTo(PRIOR.lieOffset.heavy, 9);
  expect(costs['heavy rough'].error).toBeCloseTo(2 * PRIOR.rough, 6);
  expect(costs.sand.offset).toBeCloseTo(PRIOR.lieOffset.sand, 9);
  expect(costs.sand.error).toBeCloseTo(PRIOR.sand, 6);
});

test('own shots from the rough teach what rough costs this golfer, and make it surer', () => {
  const usual = lieCosts(fitCarryModel(smallBag, [...fairway, ...rough(0)]))['light rough'];
  const bad = lieCosts(fitCarryModel(smallBag, [...fairway, ...rough(-0.05)]))['light rough'];
  expect(bad.offset).toBeLessThan(usual.offset - 0.02);
  expect(bad.error).toBeLessThan(0.7 * PRIOR.rough);
});

test('a forecast from a lie is shorter by its cost and wider by its error and scatter', () => {
  const forecast = forecastOf(120, 0.05);
  const from = lieForecast(forecast, { offset: -0.09, error: 0.03, scatter: 0.04 });
  expect(from.means[0]).toBeCloseTo(forecast.means[0] - 0.09, 12);
  expect(from.deviations[0]).toBeCloseTo(Math.sqrt(0.05 ** 2 + 0.03 ** 2 + 0.04 ** 2), 12);
  expect(from.weights).toEqual(forecast.weights);
});
