import { expect, test } from 'vitest';
import { rememberedStart } from '../../../src/golf/newRound.ts';
import type { ShownUnits } from '../../../src/screens/round/shownUnits.ts';
import { conditionsFormOf } from '../../../src/screens/round/start/conditionsForm.ts';
import { readStart, type StartForm, startFormOf } from '../../../src/screens/round/start/startForm.ts';
import { roundOf } from '../../golf/shotOf.ts';

const american: ShownUnits = { temperature: '°F', distance: 'yards', windSpeed: 'mph' };
const metric: ShownUnits = { temperature: '°C', distance: 'metres', windSpeed: 'm/s' };

function read(changes: Partial<StartForm>, units = american) {
  return readStart({ ...startFormOf(rememberedStart([]), units), ...changes }, units);
}

function startOf(changes: Partial<StartForm>, units = american) {
  const outcome = read(changes, units);
  if (outcome.kind !== 'ok') throw new Error(`not read: ${outcome.field}`);
  return outcome;
}

test('nothing typed is nothing noted', () => {
  const { start, bearing_deg } = startOf({});
  expect(start).toMatchObject({ course: '', holes: 18, startHole: 1, play: 'rules', distanceDevices: true });
  expect(start.conditions).toMatchObject({ temperature_C: null, altitude_m: null, pressure_hPa: null, wind_mps: null });
  expect(bearing_deg).toBeNull();
});

test('temperature and height are read in the units they are typed in', () => {
  const us = startOf({ temperature: '50', altitude: '3000', pressure: '1002,5' }).start.conditions;
  // 50 °F is 10 °C by definition; a foot is 0.3048 m (international yard and pound agreement, 1959).
  expect(us.temperature_C).toBeCloseTo(10, 9);
  expect(us.altitude_m).toBeCloseTo(3000 * 0.3048, 9);
  expect(us.pressure_hPa).toBe(1002.5);
  const si = startOf({ temperature: '−4', altitude: '240' }, metric).start.conditions;
  expect(si).toMatchObject({ temperature_C: -4, altitude_m: 240 });
});

test.each([
  { field: 'temperature', text: 'warm' },
  { field: 'altitude', text: '12ft' },
  { field: 'pressure', text: '1.0.1' },
  { field: 'windSpeed', text: 'ten' },
  { field: 'startHole', text: '1.5' },
  { field: 'startHole', text: '0' },
  { field: 'startHole', text: '55' },
] as const)('$text is no $field', ({ field, text }) => {
  expect(read({ [field]: text })).toEqual({ kind: 'wrong', field });
});

test('the wind: open, none, by the compass, by the clock on the first hole', () => {
  expect(startOf({ wind: 'none' }).start.conditions).toMatchObject({ wind_mps: 0, windFrom_deg: null });
  const compass = startOf({ wind: 'compass', windFrom: 'SW', force: 4 }).start.conditions;
  expect(compass.windFrom_deg).toBe(225);
  expect(compass.windReference_m).toBe(10);
  const clock = startOf({ wind: 'clock', windClock: '3', heading: 'E', force: 2 });
  expect(clock.start.conditions.windFrom_deg).toBe(180);
  expect(clock.bearing_deg).toBe(90);
});

test.each([
  // A mile is 1609.344 m and an hour 3600 s (international yard and pound agreement, 1959; SI): exact.
  { unit: 'mph', figure: '10', mps: 16093.44 / 3600 },
  { unit: 'km/h', figure: '18', mps: 5 },
  { unit: 'm/s', figure: '4,5', mps: 4.5 },
] as const)('a wind of $figure $unit goes before the force, and comes back as it was told', ({ unit, figure, mps }) => {
  const units = { ...american, windSpeed: unit };
  const told = { wind: 'compass', windFrom: 'W', force: 6, windSpeed: figure } as const;
  const { conditions } = startOf(told, units).start;
  expect(conditions.wind_mps).toBeCloseTo(mps, 9);
  expect(conditions.windReference_m).toBe(10);
  const again = conditionsFormOf(conditions, units);
  expect(again).toMatchObject({ wind: 'compass', windFrom: 'W', windSpeed: figure.replace(',', '.') });
});

test('what a round began with comes back into the form', () => {
  const form: Partial<StartForm> = {
    course: ' Larch Hill (invented) ',
    tees: 'white',
    holes: '9',
    play: 'casual',
    temperature: '61',
    altitude: '850',
    wind: 'compass',
    windFrom: 'NE',
    force: 5,
    windSpeed: '',
    ground: 'firm',
  };
  const { start } = startOf(form);
  expect(start.course).toBe('Larch Hill (invented)');
  const { holes, ...slots } = start;
  const round = roundOf('r', { ...slots, holes: roundOf('x').holes.slice(0, holes) });
  const again = startFormOf(rememberedStart([round]), american);
  expect(again).toMatchObject({ ...form, course: 'Larch Hill (invented)' });
});
