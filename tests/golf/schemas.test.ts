import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { clubSchema, specOn } from '../../src/golf/club.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { shotSchema } from '../../src/golf/shot.ts';

test('a shot with only its ids takes every default', () => {
  const shot = z.parse(shotSchema, { id: 's1', roundId: 'r1', hole: 1, clubId: 'c1' });
  expect(shot.swing).toBe('full');
  expect(shot.aim).toEqual({ long_m: 0, right_m: 0 });
  expect(shot.marks).toEqual({ ball: null, pitch: null, rest: null });
  expect(shot.changedAt).toBe('1970-01-01T00:00:00.000Z');
});

test('a round without conditions has none noted', () => {
  const round = z.parse(roundSchema, { id: 'r1', date: '2026-05-02' });
  expect(round.conditions).toEqual({
    temperature_C: null,
    pressure_hPa: null,
    altitude_m: null,
    humidity_pct: null,
    windFrom_deg: null,
    wind_mps: null,
    windReference_m: 2,
    ground: 'normal',
  });
});

test('the spec on a day is the last that began by then, and the first before all', () => {
  const club = z.parse(clubSchema, {
    id: 'c1',
    kind: 'wedge',
    specPeriods: [
      { id: 'b', from: '2026-05-01', loft_deg: 52 },
      { id: 'a', from: '2026-03-01', loft_deg: 50 },
    ],
  });
  expect(specOn(club, '2026-04-30').id).toBe('a');
  expect(specOn(club, '2026-05-01T10:00:00Z').id).toBe('b');
  expect(specOn(club, '2025-01-01').id).toBe('a');
});

test('a carry that is no number is refused with its path', () => {
  const result = z.safeParse(shotSchema, { id: 's', roundId: 'r', hole: 1, clubId: 'c', carry: { m: '140' } });
  expect(result.success).toBe(false);
  if (!result.success) expect(result.error.issues[0].path).toEqual(['carry', 'm']);
});
