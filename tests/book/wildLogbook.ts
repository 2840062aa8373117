import fc from 'fast-check';
import * as z from 'zod/mini';
import { clubKinds, clubSchema } from '../../src/golf/club.ts';
import { lies } from '../../src/golf/lie.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { intentField, knownByField, outcomeField, shotSchema, strikeField, tagField } from '../../src/golf/shot.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
/** A length with a liking for the ends of its range. */
const length = (most: number) => fc.oneof(double(0, most), fc.constantFrom(0, 0.5, 3, most), double(60, 250));
const ids = (letter: string, count: number) => Array.from({ length: count }, (_, i) => `${letter}${i}`);
const date = fc.constantFrom('1999-12-31', '2024-02-29', '2026-05-01', '2026-06-30', '2030-01-01');
const instant = date.map((day) => `${day}T12:00:00Z`);
const swing = fc.oneof(
  fc.constantFrom('full', 'full', '7:30', '9:00', '10:30'),
  fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 59 }))
    .map(([hour, minute]) => `${hour}:${String(minute).padStart(2, '0')}`),
);
const measure = fc.record({
  m: length(600),
  by: fc.constantFrom(...knownByField.options),
  error_m: maybe(double(0, 200)),
});
const mark = fc.record({ lat_deg: double(-90, 90), lon_deg: double(-180, 180), accuracy_m: maybe(length(100_000)) });

const club = fc.record({
  kind: fc.constantFrom(...clubKinds),
  inBag: fc.boolean(),
  claimed_m: maybe(double(1, 500)),
  launch: maybe(fc.constantFrom('low', 'mid', 'high')),
  notPlayed: fc.uniqueArray(swing, { maxLength: 3 }),
  lofts: fc.array(fc.tuple(fc.oneof(double(0, 90), fc.constantFrom(0, 90, 34)), date), { minLength: 1, maxLength: 3 }),
});
const conditions = fc.record({
  temperature_C: maybe(double(-40, 60)),
  pressure_hPa: maybe(double(500, 1100)),
  altitude_m: maybe(double(-500, 6000)),
  humidity_pct: maybe(double(0, 100)),
  windFrom_deg: maybe(double(0, 360)),
  wind_mps: maybe(double(0, 60)),
  windReference_m: double(0.1, 100),
  ground: fc.constantFrom('soft', 'normal', 'firm'),
});
const hole = fc.record({
  bearing_deg: maybe(double(0, 360)),
  strokes: maybe(fc.integer({ min: 1, max: 99 })),
  penalties: fc.integer({ min: 0, max: 50 }),
});
const round = fc.record({
  date,
  play: fc.constantFrom('rules', 'casual', 'practice ground'),
  ball: fc.constantFrom('own', 'range'),
  conditions: fc.oneof(fc.constant({}), conditions),
  holes: fc.array(hole, { maxLength: 3 }),
});
const shot = fc.record({
  clubId: fc.constantFrom(...ids('c', 6), null),
  specId: fc.constantFrom(null, 'c0s0', 'c1s1', 'none'),
  roundId: fc.constantFrom(...ids('r', 3)),
  hole: fc.integer({ min: 1, max: 3 }),
  at: maybe(instant),
  swing,
  lie: maybe(fc.constantFrom(...lies)),
  tags: fc.uniqueArray(fc.constantFrom(...tagField.options), { maxLength: 6 }),
  strike: maybe(fc.constantFrom(...strikeField.options)),
  intent: fc.oneof(
    { weight: 9, arbitrary: fc.constant('normal') },
    { weight: 1, arbitrary: fc.constantFrom(...intentField.options) },
  ),
  carry: maybe(measure),
  carryAtLeast_m: maybe(length(600)),
  carryAtMost_m: maybe(length(600)),
  total: maybe(measure),
  flag_m: maybe(length(600)),
  offline_m: maybe(double(-400, 400)),
  outcome: fc.constantFrom(...outcomeField.options),
  wind: fc.oneof(
    fc.constant(null),
    fc.constant('calm'),
    fc.record({ from_clock: double(0, 12), mps: double(0, 60), reference_m: double(0.1, 100) }),
  ),
  rise_m: maybe(fc.oneof(double(-400, 400), double(-20, 20))),
  marks: fc.record({ ball: maybe(mark), pitch: maybe(mark) }),
});

/** Any logbook that the schemas let through, wild values and all. */
export const wildLogbook: fc.Arbitrary<Logbook> = fc
  .record({
    clubs: fc.array(club, { minLength: 1, maxLength: 6 }),
    rounds: fc.array(round, { minLength: 1, maxLength: 3 }),
    shots: fc.array(shot, { maxLength: 30 }),
  })
  .map(({ clubs, rounds, shots }) => ({
    player: z.parse(playerSchema, { id: 'p' }),
    clubs: clubs.map(({ lofts, ...rest }, i) =>
      z.parse(clubSchema, {
        ...rest,
        id: `c${i}`,
        specPeriods: lofts.map(([loft_deg, from], k) => ({ id: `c${i}s${k}`, loft_deg, from })),
      }),
    ),
    rounds: rounds.map(({ holes, ...rest }, i) =>
      z.parse(roundSchema, { ...rest, id: `r${i}`, holes: holes.map((one, k) => ({ ...one, number: k + 1 })) }),
    ),
    shots: shots.map((one, i) => z.parse(shotSchema, { ...one, id: `s${i}` })),
    reviews: [],
    done: [],
    deleted: [],
  }));
