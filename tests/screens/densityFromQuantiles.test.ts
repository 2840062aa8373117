import { expect, test } from 'vitest';
import { densityFromQuantiles } from '../../src/screens/charts/densityFromQuantiles.ts';

/** Quantiles .05, .10 … .95 of the standard normal distribution. Source: from memory, as in any printed normal table. */
const upper = [0.1257, 0.2533, 0.3853, 0.5244, 0.6745, 0.8416, 1.0364, 1.2816, 1.6449];
const normal = [...upper.map((z) => -z).reverse(), 0, ...upper];
const at100 = normal.map((z) => 100 + 8 * z);

function area(points: readonly { at: number; density: number }[]): number {
  return points.slice(1).reduce((sum, point, i) => {
    return sum + ((point.density + points[i].density) / 2) * (point.at - points[i].at);
  }, 0);
}

test('the area under the curve is 1, and a tenth lies below p10', () => {
  const curve = densityFromQuantiles(at100, 401);
  expect(area(curve)).toBeCloseTo(1, 2);
  expect(area(curve.filter(({ at }) => at <= at100[1]))).toBeCloseTo(0.1, 1);
});

test('of normal quantiles it is about the normal curve', () => {
  const curve = densityFromQuantiles(at100, 401);
  for (const { at, density } of curve) {
    const expected = Math.exp(-(((at - 100) / 8) ** 2) / 2) / (8 * Math.sqrt(2 * Math.PI));
    expect(Math.abs(density - expected)).toBeLessThan(0.005);
  }
});

test('equal neighbours are allowed; a wrong count or no spread is refused with the figures', () => {
  const stuck = [...Array<number>(5).fill(100), ...at100.slice(9, 19), 115, 115, 115, 115];
  expect(densityFromQuantiles(stuck, 50).every(({ density }) => Number.isFinite(density))).toBe(true);
  expect(() => densityFromQuantiles([1, 2], 50)).toThrow('19 quantiles are needed, 2 were given');
  expect(() => densityFromQuantiles(Array<number>(19).fill(7), 50)).toThrow('quantiles from 7 to 7 have no spread');
});
