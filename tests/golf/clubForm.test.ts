import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { clubSchema, specOn } from '../../src/golf/club.ts';
import { builtDifferently, periodsAfter } from '../../src/golf/clubForm.ts';
import { degrees } from '../../src/units/degrees.ts';

const club = z.parse(clubSchema, {
  id: 'c1',
  kind: 'wedge',
  specPeriods: [
    { id: 'old', from: '2026-01-01', loft_deg: 50 },
    { id: 'now', from: '2026-03-01', loft_deg: 52 },
  ],
});
const { id: _id, from: _from, ...spec } = specOn(club, '2026-06-01');
const bent = { ...spec, loft_deg: degrees(54) };

test('a bent club starts a new period on the day, and keeps the ones before', () => {
  const periods = periodsAfter(club, bent, '2026-05-01', '2026-06-01', 'new');
  expect(periods.map((period) => [period.id, period.from, period.loft_deg])).toEqual([
    ['old', '2026-01-01', 50],
    ['now', '2026-03-01', 52],
    ['new', '2026-05-01', 54],
  ]);
});

test('without a day the period of today is corrected; so is one that began on that very day', () => {
  for (const day of [null, '2026-03-01']) {
    const periods = periodsAfter(club, bent, day, '2026-06-01', 'new');
    expect(periods.map((period) => [period.id, period.loft_deg])).toEqual([
      ['old', 50],
      ['now', 54],
    ]);
  }
});

test('a note is no new build', () => {
  expect(builtDifferently(spec, { ...spec, note: 'regripped' })).toBe(false);
  expect(builtDifferently(spec, { ...spec, shaft: 'softer' })).toBe(true);
  const periods = periodsAfter(club, { ...spec, note: 'regripped' }, '2026-05-01', '2026-06-01', 'new');
  expect(periods.map((period) => period.note)).toEqual(['', 'regripped']);
});
