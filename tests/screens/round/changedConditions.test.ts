import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { conditionsSchema } from '../../../src/golf/conditions.ts';
import { changedConditions } from '../../../src/screens/round/card/changedConditions.ts';
import type { ShownUnits } from '../../../src/screens/round/shownUnits.ts';
import {
  type ConditionsForm,
  conditionsFormOf,
  readConditions,
} from '../../../src/screens/round/start/conditionsForm.ts';

const units: ShownUnits = { temperature: '°F', distance: 'yards', windSpeed: 'mph' };

/** Invented: figures that no form of whole degrees and feet shows exactly, and a wind felt at head height. */
const stored = z.parse(conditionsSchema, {
  temperature_C: 21.3,
  altitude_m: 251.7,
  humidity_pct: 55,
  wind_mps: 3.21,
  windFrom_deg: 268,
  windReference_m: 2,
});

function changed(changes: Partial<ConditionsForm>) {
  const form = conditionsFormOf(stored, units);
  const [before, after] = [readConditions(form, units), readConditions({ ...form, ...changes }, units)];
  if (before.kind !== 'ok' || after.kind !== 'ok') throw new Error('the form is not read');
  return changedConditions(stored, before.conditions, after.conditions);
}

test('a field not touched keeps what is stored, unrounded', () => {
  expect(changed({})).toEqual(stored);
  expect(changed({ ground: 'firm' })).toEqual({ ...stored, ground: 'firm' });
});

test('a field changed is taken over alone, the wind as a whole', () => {
  // 50 °F is 10 °C by definition.
  const warmth = changed({ temperature: '50' });
  expect(warmth.temperature_C).toBeCloseTo(10, 9);
  expect({ ...warmth, temperature_C: 21.3 }).toEqual(stored);
  const wind = changed({ windSpeed: '20' });
  // A mile is 1609.344 m (international yard and pound agreement, 1959): exact. A speed told belongs to 10 m.
  expect(wind.wind_mps).toBeCloseTo((20 * 1609.344) / 3600, 9);
  expect(wind).toMatchObject({ windReference_m: 10, temperature_C: 21.3, altitude_m: 251.7, humidity_pct: 55 });
  expect(changed({ wind: 'none' })).toMatchObject({ wind_mps: 0, windFrom_deg: null });
});
