import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MODERN_BALL } from '../../src/flight/dragAndLift.ts';
import { fly, type Landed, type Launch, type Surroundings, still } from '../../src/flight/trajectory.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';

function launch(speed: number, angle: number, spin: number): Launch {
  return { speed_mps: metresPerSecond(speed), angle_deg: degrees(angle), spin_radps: spin };
}

function windy(head: number, fromRight: number, density = 1.2): Surroundings {
  return {
    density,
    wind: {
      head_mps: metresPerSecond(head),
      fromRight_mps: metresPerSecond(fromRight),
      reference_m: metres(2),
      roughness_m: metres(0.03),
    },
  };
}

function landed(start: Launch, surroundings: Surroundings, rise = 0, step = 0.1): Landed {
  const flight = fly(start, surroundings, rise, MODERN_BALL, step);
  if (flight.kind !== 'landed') throw new Error(flight.why);
  return flight;
}

const DRIVE = launch(68, 11, 310);
const WEDGE = launch(33, 33, 750);

test.each([
  { name: 'drive', start: DRIVE },
  { name: 'wedge', start: WEDGE },
])('a $name steps within .05 m of a tenth of the step, in still air and in wind, level and on slopes', ({ start }) => {
  for (const surroundings of [still(1.2), windy(6, 3), windy(-6, -3)]) {
    for (const rise of [0, 8, -12]) {
      const coarse = landed(start, surroundings, rise);
      const fine = landed(start, surroundings, rise, 0.01);
      expect(Math.abs(coarse.carry_m - fine.carry_m)).toBeLessThan(0.05);
      expect(Math.abs(coarse.offline_m - fine.offline_m)).toBeLessThan(0.05);
      expect(Math.abs(coarse.apex_m - fine.apex_m)).toBeLessThan(0.05);
    }
  }
});

test('a wind from the right blows the ball left, from the left by as much right, and a straight one not at all', () => {
  const fromRight = landed(DRIVE, windy(0, 5));
  const fromLeft = landed(DRIVE, windy(0, -5));
  expect(fromRight.offline_m).toBeLessThan(-5);
  expect(fromLeft.offline_m).toBeCloseTo(-fromRight.offline_m, 9);
  expect(fromLeft.carry_m).toBeCloseTo(fromRight.carry_m, 9);
  expect(landed(DRIVE, windy(5, 0)).offline_m).toBeCloseTo(0, 12);
});

test('spin dies by about 4 % a second', () => {
  const flight = landed(DRIVE, still(1.2));
  const perSecond = (flight.spin_radps / 310) ** (1 / flight.time_s);
  expect(perSecond).toBeGreaterThan(0.94);
  expect(perSecond).toBeLessThan(0.98);
});

test('a target just under the top is met on the way down, one just over it is unreachable', () => {
  const { apex_m: apex } = landed(WEDGE, still(1.2));
  const under = landed(WEDGE, still(1.2), apex - 0.001);
  expect(under.apex_m).toBe(apex);
  expect(under.carry_m).toBeLessThan(landed(WEDGE, still(1.2), apex - 1).carry_m);
  expect(fly(WEDGE, still(1.2), apex + 0.001)).toEqual({ kind: 'unreachable', why: 'above the top of the flight' });
});

test('whatever the launch, a target just under the top is met falling, not climbing', () => {
  for (let speed = 20; speed <= 70; speed += 1.7) {
    const start = launch(speed, 25, 400);
    const { apex_m: apex } = landed(start, still(1.2));
    for (const under of [1e-6, 1e-3, 0.02]) {
      expect(landed(start, still(1.2), apex - under).angle_deg).toBeGreaterThanOrEqual(0);
    }
  }
});

test('a fall of five kilometres is not followed to its end', () => {
  expect(fly(DRIVE, still(1.2), -5000)).toEqual({ kind: 'unreachable', why: 'still in the air after a minute' });
});

test('a spinning ball let go at rest falls', () => {
  const flight = landed(launch(0, 0, 500), still(1.2), -2);
  expect(flight.time_s).toBeGreaterThan(Math.sqrt(4 / 9.81));
  expect(flight.time_s).toBeLessThan(1);
});

test('a ball struck downwards lands where it lies', () => {
  const flight = landed(launch(30, -20, 100), still(1.2));
  expect(flight.carry_m).toBeCloseTo(0, 6);
  expect(flight.apex_m).toBe(0);
});

test('any launch in any air, wind and slope comes to an end with figures, and lands at the height asked for', () => {
  let longest = 0;
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 200, noNaN: true }),
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 10_000, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      fc.double({ min: -60, max: 60, noNaN: true }),
      fc.double({ min: -60, max: 60, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: -400, max: 400, noNaN: true }),
      (speed, angle, spin, density, head, right, reference, rise) => {
        const wind = { ...windy(head, right).wind, reference_m: metres(reference) };
        const begun = performance.now();
        const flight = fly(launch(speed, angle, spin), { density, wind }, rise);
        longest = Math.max(longest, performance.now() - begun);
        if (flight.kind === 'landed') {
          for (const figure of Object.values(flight)) {
            if (typeof figure === 'number') expect(figure).toSatisfy(Number.isFinite);
          }
          expect(flight.time_s).toBeGreaterThanOrEqual(0);
          expect(flight.time_s).toBeLessThanOrEqual(60.2);
          expect(flight.apex_m).toBeGreaterThanOrEqual(Math.max(0, rise) - 1e-9);
          expect(flight.spin_radps).toBeGreaterThanOrEqual(0);
        } else {
          expect(['above the top of the flight', 'still in the air after a minute']).toContain(flight.why);
        }
      },
    ),
    { numRuns: 2000 },
  );
  console.log(`longest of 2,000 wild flights ${longest.toFixed(2)} ms`);
});

test.each([
  { start: launch(-1, 10, 0), names: /-1 m\/s/ },
  { start: launch(50, 91, 0), names: /91°/ },
  { start: { ...launch(50, 10, 0), spin_radps: Number.NaN }, names: /NaN rad\/s/ },
])('a launch that cannot be is a breach that names it: $names', ({ start, names }) => {
  expect(() => fly(start, still(1.2))).toThrow(names);
});

test('air, wind, rise and step that cannot be are breaches that name it', () => {
  expect(() => fly(DRIVE, still(-1))).toThrow(/-1 kg/);
  expect(() => fly(DRIVE, windy(101, 0))).toThrow(/101/);
  expect(() => fly(DRIVE, still(1.2), Number.NaN)).toThrow(/NaN m/);
  expect(() => fly(DRIVE, still(1.2), 0, MODERN_BALL, 0.2)).toThrow(/0.2 s/);
});
