import { describe, expect, test } from 'vitest';
import { type Spread, type SpreadDot, spreadEllipse, spreads } from '../../../src/yardages/spread.ts';
import { type RandomNumbers, randomNumbers } from '../../golfers/randomNumbers.ts';

/** Balls of a golfer who scatters 6 % to the sides, 4 % in length, a little right and tilted. */
function ball(numbers: RandomNumbers, group: number, factor = 1, tails: number | null = null): SpreadDot {
  const wide = tails === null ? 1 : Math.sqrt(tails / (2 * numbers.gamma(tails / 2)));
  const x = numbers.normal() * wide;
  const y = numbers.normal() * wide;
  return { group, right: 0.01 + factor * 0.06 * x, long: -0.005 + factor * 0.04 * (0.4 * x + 0.9165 * y), factor };
}

/** Whether a ball of a carry of 1 lies in the ellipse as drawn: turned by its tilt onto its own axes. */
function holds(spread: Spread, dot: SpreadDot): boolean {
  const ellipse = spreadEllipse(spread, 1);
  const tilt = (ellipse.tilt_deg * Math.PI) / 180;
  const x = dot.right - ellipse.right_m;
  const y = dot.long - ellipse.long_m;
  const along = y * Math.cos(tilt) + x * Math.sin(tilt);
  const across = x * Math.cos(tilt) - y * Math.sin(tilt);
  return (along / ellipse.semiMajor_m) ** 2 + (across / ellipse.semiMinor_m) ** 2 <= 1;
}

describe('the spread of a club', () => {
  test.each([
    ['normal', null, 0, 0.8],
    ['heavy tails', 5, 0, 0.8],
    // 80 % of all balls are .8/.96 of the ordinary ones.
    ['one ball in 25 wild', null, 0.04, 0.833],
  ] as const)('80 %% ellipse holds its share of the next ordinary balls: %s', (_, tails, wild, expected) => {
    let held = 0;
    let tried = 0;
    for (let golfer = 0; golfer < 40; golfer++) {
      const numbers = randomNumbers(`spread ${golfer} ${tails} ${wild}`);
      const dots = Array.from({ length: 120 }, (_, k) => {
        const dot = ball(numbers, k % 3, 1, tails);
        return numbers.chance(wild) ? { ...dot, right: dot.right * 6, long: -0.5 } : dot;
      });
      spreads(dots, [1, 1, 1]).forEach((spread, group) => {
        for (let k = 0; k < 200; k++) {
          tried++;
          if (holds(spread, ball(numbers, group, 1, tails))) held++;
        }
      });
    }
    expect(Math.abs(held / tried - expected)).toBeLessThan(0.04);
  });

  test('80 % of the intervals of depth and width hold the true ones, for many balls and few', () => {
    const radius = Math.sqrt(-2 * Math.log(0.2));
    let held = 0;
    let tried = 0;
    for (let golfer = 0; golfer < 150; golfer++) {
      const numbers = randomNumbers(`within ${golfer}`);
      const dots = [60, 20, 6].flatMap((count, group) => Array.from({ length: count }, () => ball(numbers, group)));
      for (const spread of spreads(dots, [1, 1, 1])) {
        const { deep_m, wide_m, within } = spreadEllipse(spread, 100);
        for (const [found, truth] of [
          [deep_m, 2 * radius * 4],
          [wide_m, 2 * radius * 6],
        ]) {
          tried++;
          if (found / truth < within && truth / found < within) held++;
        }
      }
    }
    expect(held / tried).toBeGreaterThan(0.7);
    expect(held / tried).toBeLessThan(0.95);
  });

  test('does not depend on the order of the balls, and turns over with left and right', () => {
    const numbers = randomNumbers('order');
    const dots = Array.from({ length: 60 }, (_, k) => ball(numbers, k % 2));
    const [a, b] = spreads(dots, [1, 1]);
    const [c] = spreads(dots.toReversed(), [1, 1]);
    expect(c.rr).toBeCloseTo(a.rr, 12);
    expect(b.dots).toBe(30);
    const [d] = spreads(
      dots.map((dot) => ({ ...dot, right: -dot.right })),
      [1, 1],
    );
    expect(d.rightMean).toBeCloseTo(-a.rightMean, 12);
    expect(d.rl).toBeCloseTo(-a.rl, 12);
    expect(spreadEllipse(d, 100).tilt_deg).toBeCloseTo(-spreadEllipse(a, 100).tilt_deg, 9);
  });

  test('a club without balls has the pooled spread, a shorter swing its own factor wider', () => {
    const numbers = randomNumbers('pooled');
    const dots = Array.from({ length: 200 }, () => ball(numbers, 0));
    const [own, borrowed, short] = spreads(dots, [1, 1, 1.5]);
    expect(borrowed.dots).toBe(0);
    expect(borrowed.worth).toBeLessThan(own.worth);
    expect(Math.sqrt(short.rr / borrowed.rr)).toBeCloseTo(1.5, 9);
    expect(Math.sqrt(own.rr)).toBeCloseTo(0.06, 2);
    expect(Math.sqrt(own.ll)).toBeCloseTo(0.04, 2);
  });

  test('shorter swings are read as wider swings of one golfer', () => {
    const numbers = randomNumbers('factors');
    const dots = Array.from({ length: 400 }, (_, k) => ball(numbers, k % 2, k % 2 ? 1.4 : 1));
    const [full, half] = spreads(dots, [1, 1.4]);
    expect(Math.sqrt(half.rr / full.rr)).toBeGreaterThan(1.25);
    expect(Math.sqrt(half.rr / full.rr)).toBeLessThan(1.55);
  });

  test('of nobody is the usual golfer, and says it rests on no ball', () => {
    const [spread] = spreads([], [1]);
    expect(spread).toMatchObject({ dots: 0, pooled: 0, rr: 0.06 ** 2, ll: 0.05 ** 2, rl: 0 });
    expect(spreadEllipse(spread, 100).within).toBeGreaterThan(1.3);
  });

  test('a dot of no group, no carry and a share of 1 are refused', () => {
    const dot = { group: 1, right: 0, long: 0, factor: 1 };
    expect(() => spreads([dot], [1])).toThrow(/group 1 of 1/);
    expect(() => spreads([{ ...dot, group: 0, right: Number.NaN }], [1])).toThrow(/NaN right/);
    const [spread] = spreads([], [1]);
    expect(() => spreadEllipse(spread, 0)).toThrow(/carry 0 m/);
    expect(() => spreadEllipse(spread, 100, 1)).toThrow(/share 1/);
  });
});
