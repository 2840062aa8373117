import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalDistribution } from '../../src/statistics/normal.ts';
import { gapBetween } from '../../src/yardages/gaps.ts';

const YARD = 0.9144;
const between = (longer_yd: number, shorter_yd: number, sd = 0.02, correlation = 0) =>
  gapBetween(longer_yd * YARD, shorter_yd * YARD, sd ** 2, sd ** 2, correlation * sd ** 2);

test('median, interval and odds are those of a normal difference', () => {
  const a = 150 * YARD;
  const b = 138 * YARD;
  const gap = gapBetween(a, b, 0.0004, 0.0009, 0.0002);
  const sd = Math.sqrt(a * a * 0.0004 + b * b * 0.0009 - 2 * a * b * 0.0002 + 0.006 ** 2 * (a * a + b * b));
  expect(gap.gap_m).toBeCloseTo(12 * YARD, 9);
  expect(gap.hi80_m - gap.gap_m).toBeCloseTo(1.2815515655446 * sd, 9);
  expect(gap.gap_m - gap.lo80_m).toBeCloseTo(1.2815515655446 * sd, 9);
  const below = (limit: number) => normalDistribution((limit - a + b) / sd);
  expect(gap.pSame).toBeCloseTo(below(5 * YARD) - below(-5 * YARD), 9);
  expect(gap.pWide).toBeCloseTo(1 - below(0.12 * a), 9);
});

test('15 yd is the least that is wide, 12 % of the longer with long clubs', () => {
  expect(between(100, 85).pWide).toBeCloseTo(0.5, 9);
  expect(between(250, 220).pWide).toBeCloseTo(0.5, 9);
});

test('what two clubs share makes their gap surer', () => {
  const alone = between(150, 138, 0.03, 0);
  const together = between(150, 138, 0.03, 0.9);
  expect(together.hi80_m - together.lo80_m).toBeLessThan(0.5 * (alone.hi80_m - alone.lo80_m));
  expect(together.gap_m).toBe(alone.gap_m);
});

// Own rule, thresholds of the design: overlap from .5; can't tell from .2; wide from .8, possibly from .5.
test.each([
  [150, 149, 0.001, 'overlap'],
  [150, 143, 0.02, "can't tell yet"],
  [150, 138, 0.004, 'gap'],
  [150, 141, 0.02, 'gap'],
  [150, 131, 0.012, 'possibly wide'],
  [150, 120, 0.004, 'wide gap'],
] as const)('%d and %d yd, each ± %d: %s', (longer, shorter, sd, verdict) => {
  const gap = between(longer, shorter, sd);
  expect(gap.verdict).toBe(verdict);
  const expected =
    gap.pSame >= 0.5
      ? 'overlap'
      : gap.pWide >= 0.8
        ? 'wide gap'
        : gap.pWide >= 0.5
          ? 'possibly wide'
          : gap.pSame >= 0.2
            ? "can't tell yet"
            : 'gap';
  expect(expected).toBe(verdict);
});

test('any two carries: finite, ordered, odds between 0 and 1', () => {
  const carry = fc.double({ min: 1, max: 600, noNaN: true });
  const sd = fc.double({ min: 1e-4, max: 2, noNaN: true });
  fc.assert(
    fc.property(carry, carry, sd, sd, fc.double({ min: -1, max: 1, noNaN: true }), (a, b, sa, sb, r) => {
      const gap = gapBetween(a, b, sa * sa, sb * sb, r * sa * sb);
      expect(gap.lo80_m).toBeLessThan(gap.gap_m);
      expect(gap.gap_m).toBeLessThan(gap.hi80_m);
      for (const p of [gap.pSame, gap.pWide]) {
        expect(p).toBeGreaterThanOrEqual(0);
        expect(p).toBeLessThanOrEqual(1);
      }
    }),
  );
});
