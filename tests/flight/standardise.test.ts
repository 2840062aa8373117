import fc from 'fast-check';
import { expect, test } from 'vitest';
import { errorShare } from '../../src/flight/adjustmentError.ts';
import { airDensity, STANDARD_DENSITY } from '../../src/flight/air.ts';
import { type FlightConditions, flightConditions } from '../../src/flight/flightConditions.ts';
import { type Adjusted, type Adjustment, standardise, standardiser } from '../../src/flight/standardise.ts';
import { CALM, windFromClock } from '../../src/flight/wind.ts';
import { conditionsSchema } from '../../src/golf/conditions.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';
import { club, launched, PLAYED } from './clubs.ts';

function inWind(clock: number, mps: number, density = STANDARD_DENSITY, reference = 2): FlightConditions {
  return {
    kind: 'conditions',
    density,
    wind: { kind: 'known', wind: windFromClock(clock, metresPerSecond(mps), metres(reference)) },
    assumed: [],
  };
}

function adjusted(adjustment: Adjustment): Adjusted {
  if (adjustment.kind !== 'adjusted') throw new Error(adjustment.why);
  return adjustment;
}

const NOTHING_NOTED = conditionsSchema.parse({});
const SEVEN = standardiser(launched(club('iron', 34), 137));
const CALM_DAY = inWind(12, 0);

test('in standard conditions nothing is adjusted, for every club', () => {
  for (const { kind, loft, shortest } of PLAYED) {
    const ready = standardiser(launched(club(kind, loft), shortest));
    const result = adjusted(standardise(ready, CALM_DAY, 0));
    expect(Math.abs(result.windLog + result.airLog)).toBeLessThan(1e-6);
    expect(result.slopeAdd_m).toBe(0);
    expect(result.sigmas.totalLog).toBe(0);
  }
});

test('what is not noted is standard, and said to be assumed', () => {
  const conditions = flightConditions(NOTHING_NOTED, null, null);
  expect(conditions).toEqual({
    kind: 'conditions',
    density: STANDARD_DENSITY,
    wind: { kind: 'known', wind: CALM },
    assumed: ['temperature', 'pressure', 'humidity', 'wind'],
  });
});

test('pressure and altitude both noted is refused with both named', () => {
  const both = conditionsSchema.parse({ pressure_hPa: 850, altitude_m: 1500 });
  const result = flightConditions(both, null, null);
  expect(result.kind).toBe('refused');
  if (result.kind === 'refused') expect(result.why).toMatch(/850 hPa and altitude 1500 m/);
});

test("the shot's own wind counts before the round's, calm is calm, and a round's wind turns with the shot", () => {
  const round = conditionsSchema.parse({ wind_mps: 4, windFrom_deg: 270, windReference_m: 10 });
  const own = flightConditions(
    round,
    { from_clock: 6, mps: metresPerSecond(2), reference_m: metres(2), how: 'felt' },
    degrees(0),
  );
  if (own.kind !== 'conditions' || own.wind.kind !== 'known') throw new Error('no wind');
  expect(own.wind.wind.head_mps).toBeCloseTo(-2, 12);
  const calm = flightConditions(round, 'calm', degrees(0));
  expect(calm).toMatchObject({ wind: { kind: 'known', wind: CALM } });
  const west = flightConditions(round, null, degrees(270));
  if (west.kind !== 'conditions' || west.wind.kind !== 'known') throw new Error('no wind');
  expect(west.wind.wind.head_mps).toBeCloseTo(4, 12);
  expect(west.wind.wind.reference_m).toBe(10);
  expect(flightConditions(round, null, null)).toMatchObject({ wind: { kind: 'direction unknown', mps: 4 } });
});

// Common practice, no source: into hurts more than down helps, for every club.
test('into hurts more than down helps, and left and right are alike, for every club', () => {
  for (const { kind, loft, shortest, longest } of PLAYED) {
    for (const carry of [shortest, (shortest + longest) / 2]) {
      const ready = standardiser(launched(club(kind, loft), carry));
      const into = adjusted(standardise(ready, inWind(12, 4), 0)).windLog;
      const down = adjusted(standardise(ready, inWind(6, 4), 0)).windLog;
      expect(into).toBeLessThan(0);
      expect(-into).toBeGreaterThan(down);
      const right = adjusted(standardise(ready, inWind(3, 4), 0)).windLog;
      const left = adjusted(standardise(ready, inWind(9, 4), 0)).windLog;
      expect(right).toBeCloseTo(left, 12);
      expect(Math.abs(right)).toBeLessThan(-into);
    }
  }
});

test('more headwind, heavier air: less carry, for every full shot (short punches may float on both)', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...PLAYED),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 9, noNaN: true }),
      fc.double({ min: -200, max: 1600, noNaN: true }),
      ({ kind, loft, shortest, longest }, share, mps, altitude) => {
        const ready = standardiser(launched(club(kind, loft), shortest + share * (longest - shortest)));
        const high = (more: number): number =>
          airDensity({
            temperature_C: null,
            humidity_pct: null,
            pressure_hPa: null,
            altitude_m: metres(altitude + more),
          });
        const wind = (u: number): number | null => {
          const result = standardise(ready, inWind(12, u), 0);
          return result.kind === 'adjusted' ? result.windLog : null;
        };
        const less = wind(mps);
        const more = wind(mps + 0.5);
        expect(less).not.toBeNull();
        expect(more).not.toBeNull();
        expect(more ?? 0).toBeLessThan(less ?? 0);
        const low = standardise(ready, inWind(12, 0, high(0)), 0);
        const up = standardise(ready, inWind(12, 0, high(200)), 0);
        expect(adjusted(up).airLog).toBeGreaterThan(adjusted(low).airLog);
      },
    ),
    { numRuns: 300 },
  );
});

// Common practice, no source: a rise costs more than the same drop gains.
test('up hurts more than down helps, and both are added', () => {
  for (const { kind, loft, shortest } of PLAYED) {
    const ready = standardiser(launched(club(kind, loft), shortest));
    const up = adjusted(standardise(ready, CALM_DAY, 6)).slopeAdd_m;
    const down = adjusted(standardise(ready, CALM_DAY, -6)).slopeAdd_m;
    expect(up).toBeGreaterThan(0);
    expect(down).toBeLessThan(0);
    expect(up).toBeGreaterThan(-down);
  }
});

test('a landing point above the top of the flight is unreachable and says how high it was', () => {
  const result = standardise(SEVEN, CALM_DAY, 80);
  expect(result.kind).toBe('unreachable');
  if (result.kind === 'unreachable') expect(result.why).toMatch(/80 m above the ball/);
});

test('25 mph is adjusted, a little more is not and says the wind', () => {
  expect(standardise(SEVEN, inWind(12, 11.17), 0).kind).toBe('adjusted');
  const more = standardise(SEVEN, inWind(12, 11.3), 0);
  expect(more.kind).toBe('not adjustable');
  if (more.kind === 'not adjustable') expect(more.why).toMatch(/stronger than 25 mph/);
});

test('the same wind is judged alike at whatever height it was noted', () => {
  // Source: logarithmic profile, z0 = .03 m: 12 m/s at 10 m is ln(67.7)/ln(334.3) × 12 = 8.7 m/s at 2 m.
  const high = adjusted(standardise(SEVEN, inWind(12, 12, STANDARD_DENSITY, 10), 0));
  const felt = adjusted(standardise(SEVEN, inWind(12, 8.7, STANDARD_DENSITY, 2), 0));
  expect(high.windLog).toBeCloseTo(felt.windLog, 2);
  const gale = standardise(SEVEN, inWind(12, 16, STANDARD_DENSITY, 10), 0);
  expect(gale.kind).toBe('not adjustable');
});

test('an adjustment less sure than it is large is kept, with what it is unsure by', () => {
  const cross = adjusted(standardise(SEVEN, inWind(3, 2), 0));
  expect(cross.sigmas.totalLog).toBeGreaterThan(Math.abs(cross.windLog));
  const thin = airDensity({ temperature_C: null, humidity_pct: null, pressure_hPa: null, altitude_m: metres(1600) });
  const drive = standardiser(launched(club('driver', 10.5), 250));
  const cancelling = adjusted(standardise(drive, inWind(12, 3.2, thin), 0));
  expect(Math.abs(cancelling.windLog + cancelling.airLog)).toBeLessThan(0.03);
  expect(cancelling.sigmas.totalLog).toBeGreaterThan(0.04);
});

test('one that is a mere guess is not adjustable and says so', () => {
  const result = standardise(SEVEN, inWind(6, 9, 1.75), 0);
  expect(result.kind).toBe('not adjustable');
  if (result.kind === 'not adjustable') expect(result.why).toMatch(/less sure than it is large/);
});

test('a wind from nowhere known only adds uncertainty, a very strong one leaves the shot out', () => {
  const from = (mps: number): FlightConditions => ({
    ...CALM_DAY,
    wind: { kind: 'direction unknown', mps: metresPerSecond(mps), reference_m: metres(2) },
  });
  const light = adjusted(standardise(SEVEN, from(1), 0));
  expect(Math.abs(light.windLog)).toBeLessThan(0.005);
  expect(light.sigmas.windReadingLog).toBeGreaterThan(0.005);
  const strong = standardise(SEVEN, from(10), 0);
  expect(strong.kind).toBe('not adjustable');
  if (strong.kind === 'not adjustable') expect(strong.why).toMatch(/not from where/);
});

test('an unknown direction spreads as much as flying every direction does', () => {
  const u = 2;
  const logs = Array.from({ length: 24 }, (_, i) => adjusted(standardise(SEVEN, inWind(i / 2, u), 0)).windLog);
  const mean = logs.reduce((a, b) => a + b) / logs.length;
  const sd = Math.sqrt(logs.reduce((a, b) => a + (b - mean) ** 2, 0) / logs.length);
  const unknown = adjusted(
    standardise(
      SEVEN,
      { ...CALM_DAY, wind: { kind: 'direction unknown', mps: metresPerSecond(u), reference_m: metres(2) } },
      0,
    ),
  );
  expect(unknown.sigmas.windReadingLog / sd).toBeGreaterThan(0.9);
  expect(unknown.sigmas.windReadingLog / sd).toBeLessThan(1.1);
  expect(Math.abs(unknown.windLog - mean)).toBeLessThan(0.006);
});

test('the error is the share of the effect its cause and club have', () => {
  const ready = standardiser(launched(club('iron', 34), 137));
  const into = adjusted(standardise(ready, inWind(12, 4), 0));
  expect(into.sigmas.windModelLog).toBeCloseTo(0.45 * -into.windLog, 12);
  expect(into.sigmas.windReadingLog).toBeCloseTo(0.2 * -into.windLog, 9);
  const down = adjusted(standardise(ready, inWind(6, 4), 0));
  expect(down.sigmas.windModelLog).toBeCloseTo(0.7 * down.windLog, 12);
  const up = adjusted(standardise(ready, CALM_DAY, 5));
  expect(up.sigmas.slope_m).toBeCloseTo(0.3 * up.slopeAdd_m, 12);
  expect(errorShare('air', 8)).toBe(0.9);
  expect(errorShare('air', 40)).toBeCloseTo(0.35, 12);
  expect(errorShare('down', 64)).toBe(0.1);
});

test('a high ball that the wind would blow back is not adjustable and says so', () => {
  const lob = standardiser(launched(club('wedge', 60), 75));
  const unknown = { kind: 'direction unknown', mps: metresPerSecond(11), reference_m: metres(2) } as const;
  for (const conditions of [inWind(12, 11, 2), { ...CALM_DAY, density: 2, wind: unknown }]) {
    expect(standardise(lob, conditions, 0)).toEqual({
      kind: 'not adjustable',
      why: 'in this wind the shot would carry next to nothing',
    });
  }
});

test('any club, carry, air, wind and slope gives figures or a reason, never NaN', () => {
  const outcomes = new Set<string>();
  fc.assert(
    fc.property(
      fc.constantFrom(...PLAYED),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 0.4, max: 1.75, noNaN: true }),
      fc.double({ min: 0, max: 12, noNaN: true }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: -400, max: 400, noNaN: true }),
      fc.boolean(),
      ({ kind, loft, longest }, share, density, clock, mps, reference, rise, known) => {
        const ready = standardiser(launched(club(kind, loft), share * longest));
        const conditions = known
          ? inWind(clock, mps / 4, density, reference)
          : ({
              ...CALM_DAY,
              density,
              wind: { kind: 'direction unknown', mps: metresPerSecond(mps), reference_m: metres(reference) },
            } as const);
        const result = standardise(ready, conditions, rise / 8);
        outcomes.add(result.kind);
        if (result.kind === 'adjusted') {
          const { windLog, airLog, slopeAdd_m, sigmas } = result;
          for (const figure of [windLog, airLog, slopeAdd_m, ...Object.values(sigmas)]) {
            expect(Number.isFinite(figure)).toBe(true);
          }
          for (const sigma of Object.values(sigmas)) expect(sigma).toBeGreaterThanOrEqual(0);
        } else {
          expect(result.why).not.toMatch(/NaN|Infinity/);
          expect(result.why.length).toBeGreaterThan(20);
        }
      },
    ),
    { numRuns: 800 },
  );
  expect([...outcomes].sort()).toEqual(['adjusted', 'not adjustable', 'unreachable']);
});

test('the same shot is adjusted alike however many came between; the time of one is printed', () => {
  const windyCold = inWind(1, 4, 1.25);
  const first = standardise(SEVEN, windyCold, 3);
  for (let i = 0; i < 3000; i++) standardise(SEVEN, inWind(i % 12, 3 + (i % 5), 1.25), (i % 7) - 3);
  const begun = performance.now();
  for (let i = 0; i < 3000; i++) standardise(SEVEN, inWind(i % 12, 3 + (i % 5), 1.25), (i % 7) - 3);
  console.log(`an adjustment for air, wind and slope: ${((performance.now() - begun) / 3).toFixed(0)} µs (goal 50)`);
  expect(standardise(SEVEN, windyCold, 3)).toEqual(first);
});
