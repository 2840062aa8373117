import { describe, expect, test } from 'vitest';
import { BALL_RADIUS, HOLE_RADIUS, holingOdds, puttingAngle, rateOf } from '../../src/yardages/putting.ts';

/** Metres in a foot, exact. Source: International yard and pound agreement, 1959. */
const FOOT = 0.3048;

/** Length in feet, tried, holed: professionals. Source: Berry 1995, as printed by Gelman & Nolan 2002, table 1 (read). */
const BERRY: readonly (readonly [feet: number, tried: number, made: number])[] = [
  [2, 1443, 1346],
  [3, 694, 577],
  [4, 455, 337],
  [5, 353, 208],
  [6, 272, 149],
  [7, 256, 136],
  [8, 240, 111],
  [9, 217, 69],
  [10, 200, 67],
  [11, 237, 75],
  [12, 202, 52],
  [13, 192, 46],
  [14, 174, 54],
  [15, 167, 28],
  [16, 201, 27],
  [17, 195, 31],
  [18, 191, 33],
  [19, 147, 20],
  [20, 152, 24],
];
const tallies = BERRY.map(([feet, tried, made]) => ({ length_m: feet * FOOT, tried, made }));

describe('the angle model of putting', () => {
  test.each([
    {
      name: 'σ of professionals',
      actual: () => puttingAngle(tallies).sigma_deg,
      expected: 1.5,
      tolerance: 0.05,
      source: 'Gelman & Nolan 2002, Teaching Statistics 24, 93–95: σ = 1.5° from Berry’s data (read)',
    },
    {
      name: 'radius of the hole, inches',
      actual: () => HOLE_RADIUS / 0.0254,
      expected: 4.25 / 2,
      tolerance: 1e-12,
      source: 'Gelman & Nolan 2002; Rules of Golf: hole 4¼ in across',
    },
    {
      name: 'radius of the ball, inches',
      actual: () => BALL_RADIUS / 0.0254,
      expected: 1.68 / 2,
      tolerance: 1e-12,
      source: 'Gelman & Nolan 2002; Rules of Golf: ball not less than 1.68 in across',
    },
  ])('$name', ({ actual, expected, tolerance }) => {
    expect(Math.abs(actual() - expected)).toBeLessThanOrEqual(tolerance);
  });

  test('a putt that only just fits goes in, and the odds fall with length', () => {
    expect(holingOdds(0.01, 1.5)).toBe(1);
    let before = 1;
    for (const { length_m } of tallies) {
      const odds = holingOdds(length_m, 1.5);
      expect(odds).toBeLessThan(before);
      before = odds;
    }
  });

  test('6 ft at 1.5° by hand: 2Φ(asin(1.285 in / 72 in) / 1.5°) − 1', () => {
    // asin(.017847) = .017848 rad = 1.02263°; /1.5 = .68175; 2Φ − 1 = .5046 (normal table, Φ(.68175) = .75230).
    expect(Math.abs(holingOdds(6 * FOOT, 1.5) - 0.5046)).toBeLessThan(2e-4);
  });

  test('the interval of 80 % holds the truth for 72 to 88 % of golfers, with few putts and many', () => {
    let state = 99;
    const uniform = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return (state + 0.5) / 4294967296;
    };
    let held = 0;
    const golfers = 400;
    for (let golfer = 0; golfer < golfers; golfer++) {
      // Golfers as the prior has them: 2° within a factor of e^.5.
      const z = Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
      const truth = 2 * Math.exp(0.5 * z);
      const putts = Array.from({ length: golfer % 2 ? 12 : 120 }, () => {
        const length_m = 0.5 + 6 * uniform();
        return { length_m, tried: 1, made: uniform() < holingOdds(length_m, truth) ? 1 : 0 };
      });
      const { lo80_deg, hi80_deg } = puttingAngle(putts);
      if (truth > lo80_deg && truth < hi80_deg) held++;
    }
    expect(held / golfers).toBeGreaterThan(0.72);
    expect(held / golfers).toBeLessThan(0.88);
  });

  test('without putts is the prior, wide', () => {
    const { sigma_deg, lo80_deg, hi80_deg, putts } = puttingAngle([]);
    expect(sigma_deg).toBeCloseTo(2, 9);
    expect(hi80_deg / lo80_deg).toBeCloseTo(Math.exp(2 * 1.2815515655446 * 0.5), 6);
    expect(putts).toBe(0);
  });

  test('more holed than tried, and a putt of no length, are refused', () => {
    expect(() => puttingAngle([{ length_m: 2, tried: 3, made: 4 }])).toThrow(/4 of 3/);
    expect(() => puttingAngle([{ length_m: 0, tried: 3, made: 1 }])).toThrow(/0 m/);
    expect(() => holingOdds(2, 0)).toThrow(/0°/);
  });
});

describe('a share with its interval', () => {
  // Wilson 1927, closed form worked by hand with z = 1.2815516: centre (p + z²/2n)/(1 + z²/n), z² = 1.642374.
  test.each([
    { inputs: [0, 10], expected: [0, 0.141068], tolerance: 1e-5, source: 'z²/(n + z²) at none made' },
    { inputs: [10, 10], expected: [0.858932, 1], tolerance: 1e-5, source: 'n/(n + z²) at all made' },
  ])('$source', ({ inputs: [made, tried], expected, tolerance }) => {
    const { lo80, hi80 } = rateOf(made, tried);
    expect(Math.abs(lo80 - expected[0])).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(hi80 - expected[1])).toBeLessThanOrEqual(tolerance);
  });

  test('no tries are no share', () => {
    expect(() => rateOf(0, 0)).toThrow(/0 of 0/);
  });
});
