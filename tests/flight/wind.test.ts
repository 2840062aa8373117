import { expect, test } from 'vitest';
import { windFromBearings, windFromClock, windShare } from '../../src/flight/wind.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { metresPerSecond } from '../../src/units/metresPerSecond.ts';

const FIVE = metresPerSecond(5);
const TWO = metres(2);

// Common practice, no source: 12 is into the wind, 3 from the right, 6 down wind, 9 from the left.
test.each([
  { clock: 12, head: 5, right: 0 },
  { clock: 0, head: 5, right: 0 },
  { clock: 3, head: 0, right: 5 },
  { clock: 6, head: -5, right: 0 },
  { clock: 9, head: 0, right: -5 },
  { clock: 1, head: 5 * Math.cos(Math.PI / 6), right: 2.5 },
])("from $clock o'clock 5 m/s is $head into and $right from the right", ({ clock, head, right }) => {
  const wind = windFromClock(clock, FIVE, TWO);
  expect(wind.head_mps).toBeCloseTo(head, 12);
  expect(wind.fromRight_mps).toBeCloseTo(right, 12);
});

test('a west wind comes from the left of a shot played north and into one played west', () => {
  const north = windFromBearings(degrees(270), degrees(0), FIVE, TWO);
  expect(north.fromRight_mps).toBeCloseTo(-5, 12);
  expect(north.head_mps).toBeCloseTo(0, 12);
  expect(windFromBearings(degrees(270), degrees(270), FIVE, TWO).head_mps).toBeCloseTo(5, 12);
});

// Source: logarithmic profile worked by hand, ln(10.03/.03)/ln(2.03/.03) = 5.81214/4.21459 = 1.37905.
test('the wind is as noted at its own height, 1.379 times that at 10 m when noted at 2 m, and nothing on the ground', () => {
  expect(windShare(2, 2, 0.03)).toBeCloseTo(1, 12);
  expect(windShare(10, 2, 0.03)).toBeCloseTo(1.37905, 5);
  expect(windShare(0, 2, 0.03)).toBe(0);
  expect(windShare(-5, 2, 0.03)).toBe(0);
  expect(windShare(30, 10, 0)).toBe(1);
});

test('a wind that cannot be is a breach that names it', () => {
  expect(() => windFromClock(3, metresPerSecond(-1), TWO)).toThrow(/-1 m\/s/);
  expect(() => windFromClock(Number.NaN, FIVE, TWO)).toThrow(/NaN/);
  expect(() => windFromClock(3, FIVE, metres(0))).toThrow(/0 m/);
});
