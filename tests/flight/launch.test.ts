import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { FlownKind } from '../../src/flight/flownClub.ts';
import { launchFor, standardCarry } from '../../src/flight/launch.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { club, launched, PLAYED } from './clubs.ts';

const KINDS: readonly FlownKind[] = ['driver', 'fairway wood', 'hybrid', 'driving iron', 'iron', 'wedge'];

test('the launch found carries the stock carry in standard conditions, from 20 m to as far as the club goes', () => {
  for (const { kind, loft, longest } of PLAYED) {
    for (const height of ['low', null, 'mid', 'high'] as const) {
      for (let carry = 20; carry <= longest; carry += 13) {
        const found = launched(club(kind, loft, height), carry);
        expect(Math.abs(standardCarry(found.launch) - carry)).toBeLessThan(1e-4);
        expect(found.standardCarry_m).toBe(standardCarry(found.launch));
      }
    }
  }
});

test('a driver can carry 330 m, a partial wedge 10 m, and a lob wedge 330 m says why not', () => {
  expect(launched(club('driver', 9), 330).launch.speed_mps).toBeLessThan(110);
  expect(launched(club('wedge', 60), 10).launch.speed_mps).toBeLessThan(15);
  const lob = launchFor(club('wedge', 60), metres(330));
  expect(lob).toMatchObject({ kind: 'no launch' });
  if (lob.kind === 'no launch') expect(lob.why).toMatch(/330 m with 60°/);
});

// Common practice, no source: ball speed, launch and spin of ordinary full shots, with wide bounds.
test.each([
  { name: 'driver 210 m', kind: 'driver', loft: 10.5, carry: 210, speed: [60, 67], angle: [9, 14], rpm: [2300, 3600] },
  { name: '7 iron 137 m', kind: 'iron', loft: 34, carry: 137, speed: [43, 49], angle: [16, 22], rpm: [4500, 7000] },
  {
    name: 'sand wedge 80 m',
    kind: 'wedge',
    loft: 56,
    carry: 80,
    speed: [30, 37],
    angle: [28, 36],
    rpm: [6000, 10_000],
  },
] as const)('$name leaves the club as full shots do', ({ kind, loft, carry, speed, angle, rpm }) => {
  const { launch } = launched(club(kind, loft), carry);
  const spin = (launch.spin_radps * 30) / Math.PI;
  expect(launch.speed_mps).toBeGreaterThan(speed[0]);
  expect(launch.speed_mps).toBeLessThan(speed[1]);
  expect(launch.angle_deg).toBeGreaterThan(angle[0]);
  expect(launch.angle_deg).toBeLessThan(angle[1]);
  expect(spin).toBeGreaterThan(rpm[0]);
  expect(spin).toBeLessThan(rpm[1]);
});

test('low launches lower and high launches higher than usual; mid is usual', () => {
  for (const { kind, loft, shortest } of PLAYED) {
    const angle = (height: 'low' | 'mid' | 'high' | null): number =>
      launched(club(kind, loft, height), shortest).launch.angle_deg;
    expect(angle('mid')).toBe(angle(null));
    expect(angle('low')).toBeLessThan(angle('mid') - 1);
    expect(angle('high')).toBeGreaterThan(angle('mid') + 1);
  }
});

test('more loft launches higher with more spin per speed, within every kind', () => {
  for (const kind of KINDS) {
    let angle = -90;
    let spinRatio = 0;
    for (let loft = kind === 'driver' ? 8 : 13; loft <= (kind === 'driver' ? 14 : 62); loft += 1) {
      const { launch } = launched(club(kind, loft), 60);
      expect(launch.angle_deg).toBeGreaterThan(angle);
      const ratio = launch.spin_radps / launch.speed_mps;
      expect(ratio).toBeGreaterThan(spinRatio);
      angle = launch.angle_deg;
      spinRatio = ratio;
    }
  }
});

test('any kind, loft, height and carry ends in a launch that carries it or in a reason', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...KINDS),
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.constantFrom('low', 'mid', 'high', null),
      fc.double({ min: 0.001, max: 600, noNaN: true }),
      (kind, loft, height, carry) => {
        const found = launchFor(club(kind, loft, height), metres(carry));
        if (found.kind === 'launch') {
          expect(Math.abs(found.standardCarry_m - carry)).toBeLessThan(1e-3);
          expect(Number.isFinite(found.launch.spin_radps)).toBe(true);
        } else {
          // Ordinary clubs at ordinary carries always have one.
          expect(loft >= 8 && loft <= 40 && carry >= 1 && carry <= 180).toBe(false);
        }
      },
    ),
    { numRuns: 500 },
  );
});

test('a carry or loft that cannot be is a breach that names it', () => {
  expect(() => launchFor(club('iron', 34), metres(0))).toThrow(/0 m/);
  expect(() => launchFor({ kind: 'iron', loft_deg: degrees(91), height: null }, metres(100))).toThrow(/91°/);
});
