import { describe, expect, test } from 'vitest';
import { type GapPair, shotsToSettle } from '../../../src/yardages/gapSettling.ts';
import { gapBetween, USUAL_THRESHOLDS } from '../../../src/yardages/gaps.ts';

const YARD = 0.9144;
/** Two irons of so many yards, each known to so much of ln carry; a ball tells 1/(7 %)². */
const pair = (longer_yd: number, shorter_yd: number, deviation: number, ball = 1 / 0.07 ** 2): GapPair => ({
  longer_m: longer_yd * YARD,
  shorter_m: shorter_yd * YARD,
  caa: deviation ** 2,
  cab: 0,
  cbb: deviation ** 2,
  longerBall: ball,
  shorterBall: ball,
});

describe('shots to settle a gap', () => {
  test('none when the verdict stands', () => {
    expect(shotsToSettle(pair(150, 138, 0.008))).toEqual({ kind: 'settled' });
  });

  test('a few more when little is known, fewer when each tells more', () => {
    const usual = shotsToSettle(pair(150, 139, 0.05));
    const sharp = shotsToSettle(pair(150, 139, 0.05, 1 / 0.035 ** 2));
    if (usual.kind !== 'shots' || sharp.kind !== 'shots') throw new Error(`${usual.kind}, ${sharp.kind}`);
    expect(usual.shots).toBeGreaterThan(2);
    expect(sharp.shots).toBeLessThan(usual.shots);
    expect(usual.odds).toBeGreaterThanOrEqual(0.8);
  });

  test('more than sixty for a gap on the very threshold', () => {
    expect(shotsToSettle(pair(150, 144.5, 0.012)).kind).toBe('more than');
  });

  test('own thresholds count', () => {
    const thresholds = { same_m: 10 * YARD, wide_m: 20 * YARD, wideShare: 0.15 };
    expect(shotsToSettle(pair(150, 142, 0.02), thresholds).kind).toBe('settled');
    expect(shotsToSettle(pair(150, 142, 0.02)).kind).not.toBe('settled');
  });

  test.each([
    [142, 0.045],
    [143, 0.015],
  ])('the odds are those of 5,000 golfers whose gap is then known that well: to %i yd, %f', (shorter_yd, deviation) => {
    const one = pair(150, shorter_yd, deviation);
    const settling = shotsToSettle(one);
    if (settling.kind === 'settled') throw new Error('settled already');
    // Each of two equal clubs gets half of the shots; the posterior mean spreads by √(V₀ − V_n).
    const known = 1 / (1 / deviation ** 2 + settling.shots / 2 / 0.07 ** 2);
    const move = Math.sqrt(deviation ** 2 - known);
    let state = 12345;
    const uniform = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return (state + 0.5) / 4294967296;
    };
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    let settled = 0;
    for (let i = 0; i < 5000; i++) {
      const a = one.longer_m * (1 + move * normal());
      const b = one.shorter_m * (1 + move * normal());
      const { verdict } = gapBetween(Math.max(a, b), Math.min(a, b), known, known, 0);
      if (verdict !== "can't tell yet" && verdict !== 'possibly wide') settled++;
    }
    expect(Math.abs(settled / 5000 - settling.odds)).toBeLessThan(0.035);
  });
});

test('the usual thresholds are 5 yd, 15 yd and 12 %', () => {
  expect(USUAL_THRESHOLDS.same_m).toBeCloseTo(5 * YARD, 12);
  expect(USUAL_THRESHOLDS.wide_m).toBeCloseTo(15 * YARD, 12);
  expect(USUAL_THRESHOLDS.wideShare).toBe(0.12);
  const narrow = { ...USUAL_THRESHOLDS, same_m: 1 };
  expect(gapBetween(140, 138, 1e-4, 1e-4, 0, narrow).pSame).toBeLessThan(gapBetween(140, 138, 1e-4, 1e-4, 0).pSame);
});
