import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bounceAndRun } from '../../src/flight/bounceAndRun.ts';
import type { FlownKind } from '../../src/flight/flownClub.ts';
import { carryFromTotal, expectedRoll, rollTable } from '../../src/flight/roll.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';
import { metresFromYards, yards, yardsFromMetres } from '../../src/units/yards.ts';

const KINDS: readonly FlownKind[] = ['driver', 'fairway wood', 'hybrid', 'driving iron', 'iron', 'wedge'];
const GROUNDS = ['soft', 'normal', 'firm'] as const;

// Common practice, no source: what full shots run on normal ground.
test.each([
  { name: 'a 230 yd drive', kind: 'driver', loft: 10.5, carry: 230, least: 14, most: 26 },
  { name: 'a 250 yd drive', kind: 'driver', loft: 10.5, carry: 250, least: 14, most: 26 },
  { name: 'a 150 yd 7 iron', kind: 'iron', loft: 34, carry: 150, least: 3, most: 8 },
  { name: 'a 115 yd pitching wedge', kind: 'wedge', loft: 46, carry: 115, least: -2, most: 2 },
  { name: 'an 85 yd sand wedge', kind: 'wedge', loft: 56, carry: 85, least: -2, most: 2 },
] as const)('$name runs $least to $most yd', ({ kind, loft, carry, least, most }) => {
  const roll = expectedRoll(kind, degrees(loft), metresFromYards(yards(carry)), 'normal');
  expect(yardsFromMetres(roll.roll_m)).toBeGreaterThanOrEqual(least);
  expect(yardsFromMetres(roll.roll_m)).toBeLessThanOrEqual(most);
});

test('the firmer the ground the longer the run; the steeper and spinnier the landing the shorter', () => {
  for (const kind of KINDS) {
    const [soft, normal, firm] = GROUNDS.map((ground) => expectedRoll(kind, degrees(20), metres(160), ground).roll_m);
    expect(normal).toBeGreaterThan(soft);
    expect(firm).toBeGreaterThan(normal);
  }
  const land = (angle: number, spin: number): number =>
    bounceAndRun({ speed_mps: metresPerSecond(25), angle_deg: degrees(angle), spin_radps: spin }, 'normal');
  expect(land(50, 300)).toBeLessThan(land(35, 300));
  expect(land(45, 900)).toBeLessThan(land(45, 200));
});

test('a steep ball with much spin comes back on soft ground, and a ball set down dead stays', () => {
  const back = { speed_mps: metresPerSecond(25), angle_deg: degrees(55), spin_radps: 900 };
  expect(bounceAndRun(back, 'soft')).toBeLessThan(-0.3);
  expect(bounceAndRun({ speed_mps: metresPerSecond(0), angle_deg: degrees(0), spin_radps: 0 }, 'firm')).toBeCloseTo(
    0,
    12,
  );
});

test('any landing runs a finite way', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 3000, noNaN: true }),
      fc.constantFrom(...GROUNDS),
      (speed, angle, spin, ground) => {
        const run = bounceAndRun(
          { speed_mps: metresPerSecond(speed), angle_deg: degrees(angle), spin_radps: spin },
          ground,
        );
        expect(Number.isFinite(run)).toBe(true);
      },
    ),
    { numRuns: 1000 },
  );
});

test('carry from total undoes total from carry, and a longer total is a longer carry', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...KINDS),
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 400, noNaN: true }),
      fc.constantFrom(...GROUNDS),
      (kind, loft, carry, ground) => {
        const roll = expectedRoll(kind, degrees(loft), metres(carry), ground);
        expect(Number.isFinite(roll.sd_m)).toBe(true);
        const total = Math.max(0, carry + roll.roll_m);
        const back = carryFromTotal(kind, degrees(loft), metres(total), ground);
        expect(Math.abs(back.carry_m - carry)).toBeLessThan(1e-6);
        const more = carryFromTotal(kind, degrees(loft), metres(total + 1), ground);
        expect(more.carry_m).toBeGreaterThan(back.carry_m);
        expect(back.sd_m).toBeGreaterThanOrEqual(2 * 0.9144 - 1e-9);
      },
    ),
    { numRuns: 300 },
  );
});

test('totals grow with carries in every table, by a fifth of the carry at least', () => {
  for (const kind of KINDS) {
    for (let loft = 0; loft <= 90; loft += 1) {
      for (const ground of GROUNDS) {
        const { carry_m: carry, total_m: total } = rollTable(kind, degrees(loft), ground);
        expect(carry.length).toBeGreaterThan(8);
        for (let i = 1; i < carry.length; i++) {
          expect(carry[i]).toBeGreaterThan(carry[i - 1]);
          expect((total[i] - total[i - 1]) / (carry[i] - carry[i - 1])).toBeGreaterThan(0.199);
        }
      }
    }
  }
});

test('the spread is 40 % of the roll and 2 yd together', () => {
  const { roll_m: roll, sd_m: sd } = expectedRoll('driver', degrees(10.5), metres(210), 'firm');
  expect(sd).toBeCloseTo(Math.sqrt((0.4 * roll) ** 2 + 1.8288 ** 2), 12);
});

test('a table is worked out once', () => {
  const first = rollTable('iron', degrees(30), 'normal');
  expect(rollTable('iron', degrees(30.05), 'normal')).toBe(first);
  expect(rollTable('iron', degrees(30), 'firm')).not.toBe(first);
});

test('a carry or total that cannot be is a breach that names it', () => {
  expect(() => expectedRoll('iron', degrees(30), metres(-1), 'normal')).toThrow(/-1 m/);
  expect(() => carryFromTotal('iron', degrees(30), metres(-1), 'normal')).toThrow(/-1 m/);
  expect(() => rollTable('iron', degrees(100), 'normal')).toThrow(/100°/);
});

test('a short drive does not run on for half its carry', () => {
  // Common practice, no source: a slow swing's drive runs about a tenth of its carry on normal ground.
  for (const carry_yd of [80, 120, 150, 180]) {
    const { roll_m } = expectedRoll('driver', degrees(10.5), metres(carry_yd * 0.9144), 'normal');
    expect(roll_m / (carry_yd * 0.9144)).toBeLessThanOrEqual(0.15);
    expect(roll_m / (carry_yd * 0.9144)).toBeGreaterThanOrEqual(0.05);
  }
});
