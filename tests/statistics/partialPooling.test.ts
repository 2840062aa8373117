import fc from 'fast-check';
import { expect, test } from 'vitest';
import { choleskyInPlace, logDeterminantFromCholesky, solveCholesky } from '../../src/statistics/cholesky.ts';
import { partialPooling } from '../../src/statistics/partialPooling.ts';

const unequal = [[171, 168, 175, 169], [158, 161], [149, 151, 146, 150, 155, 148], [140], [131, 127, 134]];

/** −2 ln of the restricted likelihood from the full covariance matrix of all values, the long way round. */
function restrictedDeviance(groups: number[][], between: number, within: number): number {
  const y = groups.flat();
  const owner = groups.flatMap((group, i) => group.map(() => i));
  const n = y.length;
  const v = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      v[i * n + j] = (owner[i] === owner[j] ? between ** 2 : 0) + (i === j ? within ** 2 : 0);
    }
  }
  choleskyInPlace(v, n);
  const ones = new Float64Array(n).fill(1);
  solveCholesky(v, n, ones);
  const information = ones.reduce((sum, x) => sum + x, 0);
  const centre = ones.reduce((sum, x, i) => sum + x * y[i], 0) / information;
  const residuals = Float64Array.from(y, (x) => x - centre);
  const solved = residuals.slice();
  solveCholesky(v, n, solved);
  const quadratic = residuals.reduce((sum, r, i) => sum + r * solved[i], 0);
  return logDeterminantFromCholesky(v, n) + Math.log(information) + quadratic;
}

test('groups of equal size: the analysis of variance estimates, when they are not negative', () => {
  const balanced = fc
    .integer({ min: 2, max: 5 })
    .chain((size) =>
      fc.array(fc.array(fc.integer({ min: 80, max: 220 }), { minLength: size, maxLength: size }), {
        minLength: 3,
        maxLength: 8,
      }),
    )
    .filter((groups) => groups.some((group) => new Set(group).size > 1));
  fc.assert(
    fc.property(balanced, (groups) => {
      const n = groups[0].length;
      const k = groups.length;
      const means = groups.map((group) => group.reduce((sum, x) => sum + x, 0) / n);
      const grand = means.reduce((sum, x) => sum + x, 0) / k;
      const inside = groups.flatMap((group, i) => group.map((x) => (x - means[i]) ** 2)).reduce((sum, x) => sum + x, 0);
      const across = n * means.reduce((sum, x) => sum + (x - grand) ** 2, 0);
      const meanSquareWithin = inside / (k * (n - 1));
      const between = (across / (k - 1) - meanSquareWithin) / n;
      const found = partialPooling(groups);
      expect(found.mean).toBeCloseTo(grand, 9);
      if (between > 0) {
        expect(found.withinDeviation).toBeCloseTo(Math.sqrt(meanSquareWithin), 5);
        expect(found.betweenDeviation ** 2).toBeCloseTo(between, 3);
        expect(found.meanError).toBeCloseTo(Math.sqrt(across / (k - 1) / (n * k)), 5);
      } else {
        expect(found.betweenDeviation).toBeLessThanOrEqual(1e-3);
        expect(found.withinDeviation).toBeCloseTo(Math.sqrt((inside + across) / (k * n - 1)), 5);
      }
    }),
  );
});

test('groups of unequal size: no other pair of deviations has a better restricted likelihood', () => {
  const { betweenDeviation, withinDeviation } = partialPooling(unequal);
  const least = restrictedDeviance(unequal, betweenDeviation, withinDeviation);
  for (const step of [0.5, 0.9, 0.99, 0.999, 1.001, 1.01, 1.1, 2]) {
    expect(restrictedDeviance(unequal, betweenDeviation * step, withinDeviation)).toBeGreaterThan(least);
    expect(restrictedDeviance(unequal, betweenDeviation, withinDeviation * step)).toBeGreaterThan(least);
    expect(restrictedDeviance(unequal, betweenDeviation * step, withinDeviation / step)).toBeGreaterThan(least);
  }
});

test('effects shrink towards nothing, the more so the fewer the values', () => {
  const found = partialPooling(unequal);
  for (const [i, group] of unequal.entries()) {
    const own = group.reduce((sum, x) => sum + x, 0) / group.length - found.mean;
    const share = found.effects[i] / own;
    const expected =
      found.betweenDeviation ** 2 / (found.betweenDeviation ** 2 + found.withinDeviation ** 2 / group.length);
    expect(share).toBeCloseTo(expected, 9);
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(1);
  }
});

test('a group without values changes nothing and has no effect of its own', () => {
  const without = partialPooling(unequal);
  const withEmpty = partialPooling([...unequal, []]);
  expect(withEmpty.mean).toBeCloseTo(without.mean, 12);
  expect(withEmpty.betweenDeviation).toBeCloseTo(without.betweenDeviation, 12);
  expect(withEmpty.effects[unequal.length]).toBe(0);
});

test('groups that differ less than chance would have it are pooled wholly', () => {
  const found = partialPooling([
    [10, 20, 30],
    [11, 19, 30],
    [30, 10, 21],
  ]);
  expect(found.betweenDeviation).toBe(0);
  expect([...found.effects].every((effect) => effect === 0)).toBe(true);
});

test('what tells nothing of spread is refused', () => {
  expect(() => partialPooling([[1, 2, 3], []])).toThrow(
    new RangeError('1 groups with values: partial pooling needs at least two'),
  );
  expect(() => partialPooling([[1, 1], [2]])).toThrow(/no group varies within itself/);
  expect(() => partialPooling([[1, Number.NaN], [2]])).toThrow(/value 1 of group 0 is NaN/);
  const next = 1 + Number.EPSILON;
  expect(() => partialPooling([[1, next], [1e6]])).toThrow(/differ without bound/);
});
