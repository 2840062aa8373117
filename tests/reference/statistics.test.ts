import { describe, expect, test } from 'vitest';
import { normalCrps } from '../../src/statistics/crps.ts';
import { isotonicRegression } from '../../src/statistics/isotonic.ts';
import { mean, standardDeviation } from '../../src/statistics/mean.ts';
import { logNormalDistribution, normalDistribution, normalQuantile } from '../../src/statistics/normal.ts';
import { partialPooling } from '../../src/statistics/partialPooling.ts';
import { quantile } from '../../src/statistics/quantile.ts';
import { lew, lottery, mavro, michelso } from '../fixtures/nist/univariate.ts';

/** Number of correct significant digits, as NIST scores software: −log10 |relative error|. */
function logRelativeError(actual: number, certified: number): number {
  return actual === certified ? 16 : -Math.log10(Math.abs((actual - certified) / certified));
}

function alternating(first: number, odd: number, even: number): number[] {
  return [first, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? odd : even))];
}

describe('mean and standard deviation', () => {
  const read = 'NIST Statistical Reference Datasets, univariate summary statistics, certified values (read)';
  const made =
    'NIST Statistical Reference Datasets after Simon & Lesage 1989, exact by construction (NumAcc4 read, 1–3 from memory)';
  const rows = [
    {
      name: 'Michelso',
      inputs: michelso,
      count: 100,
      expected: { mean: 299.8524, sd: 0.0790105478190518 },
      digits: 9,
      source: read,
    },
    {
      name: 'Mavro',
      inputs: mavro,
      count: 50,
      expected: { mean: 2.001856, sd: 0.000429123454003053 },
      digits: 9,
      source: read,
    },
    {
      name: 'Lew',
      inputs: lew,
      count: 200,
      expected: { mean: -177.435, sd: 277.332168044316 },
      digits: 9,
      source: read,
    },
    {
      name: 'Lottery',
      inputs: lottery,
      count: 218,
      expected: { mean: 518.95871559633, sd: 291.699727470969 },
      digits: 9,
      source: read,
    },
    {
      name: 'NumAcc1',
      inputs: [10000001, 10000003, 10000002],
      count: 3,
      expected: { mean: 10000002, sd: 1 },
      digits: 9,
      source: made,
    },
    {
      name: 'NumAcc2',
      inputs: alternating(1.2, 1.1, 1.3),
      count: 1001,
      expected: { mean: 1.2, sd: 0.1 },
      digits: 9,
      source: made,
    },
    {
      name: 'NumAcc3',
      inputs: alternating(1000000.2, 1000000.1, 1000000.3),
      count: 1001,
      expected: { mean: 1000000.2, sd: 0.1 },
      digits: 9,
      source: made,
    },
    // The doubles nearest to these figures are off by up to 1e-9, so eight digits of the deviation is all there is.
    {
      name: 'NumAcc4',
      inputs: alternating(10000000.2, 10000000.1, 10000000.3),
      count: 1001,
      expected: { mean: 10000000.2, sd: 0.1 },
      digits: 8,
      source: made,
    },
  ];
  test.each(rows)('$name: $source', ({ inputs, count, expected, digits }) => {
    expect(inputs.length).toBe(count);
    expect(logRelativeError(mean(inputs), expected.mean)).toBeGreaterThanOrEqual(9);
    expect(logRelativeError(standardDeviation(inputs), expected.sd)).toBeGreaterThanOrEqual(digits);
  });
});

describe('order of the NIST fixtures, by the certified lag-1 autocorrelation', () => {
  const rows = [
    { name: 'Michelso', inputs: michelso, expected: 0.535199668621283 },
    { name: 'Mavro', inputs: mavro, expected: 0.937989183438248 },
    { name: 'Lew', inputs: lew, expected: -0.307304800605679 },
    { name: 'Lottery', inputs: lottery, expected: -0.120948622967393 },
  ];
  test.each(rows)('$name', ({ inputs, expected }) => {
    const centre = mean(inputs);
    const gaps = inputs.map((x) => x - centre);
    const lagged = gaps.slice(1).reduce((sum, gap, i) => sum + gap * gaps[i], 0);
    expect(logRelativeError(lagged / gaps.reduce((sum, gap) => sum + gap * gap, 0), expected)).toBeGreaterThanOrEqual(
      9,
    );
  });
});

describe('sample quantiles of {2,4,4,5,7,9,12,3,8,10}', () => {
  const source = 'Hyndman & Fan 1996, definitions 6–8; figures from R 4.2.2 quantile()';
  const inputs = [2, 4, 4, 5, 7, 9, 12, 3, 8, 10];
  const rows = [
    { type: 6, expected: [2.1, 6, 11.8], tolerance: 1e-12, source },
    { type: 7, expected: [2.9, 6, 10.2], tolerance: 1e-12, source },
    { type: 8, expected: [2.366666667, 6, 11.266666667], tolerance: 5e-10, source },
  ] as const;
  test.each(rows)('type $type: $source', ({ type, expected, tolerance }) => {
    for (const [i, p] of [0.1, 0.5, 0.9].entries()) {
      expect(Math.abs(quantile(inputs, p, type) - expected[i])).toBeLessThanOrEqual(tolerance);
    }
  });
});

describe('isotonic regression', () => {
  const rows = [
    {
      source: 'R isoreg(), its help page example',
      inputs: { y: [1, 0, 4, 3, 3, 5, 4, 2, 0], w: [1, 1, 1, 1, 1, 1, 1, 1, 1] },
      expected: [0.5, 0.5, 3, 3, 3, 3, 3, 3, 3],
      tolerance: 1e-12,
    },
    {
      source: 'R package Iso, pava() with weights',
      inputs: { y: [1, 2, 3, 2, 5, 4, 6], w: [1, 2, 1, 3, 1, 2, 1] },
      expected: [1, 2, 2.25, 2.25, 4.3333, 4.3333, 6],
      tolerance: 5e-5,
    },
  ];
  test.each(rows)('$source', ({ inputs, expected, tolerance }) => {
    const fitted = isotonicRegression(inputs.y, inputs.w);
    expect(fitted.length).toBe(expected.length);
    for (const [i, level] of expected.entries()) expect(Math.abs(fitted[i] - level)).toBeLessThanOrEqual(tolerance);
  });
});

describe('normal distribution', () => {
  const digits60 = 'erfc in 60-digit arithmetic (mpmath 1.3.0)';
  const rows = [
    { inputs: -1, expected: 0.15865525393145705141, tolerance: 1e-14, source: digits60 },
    { inputs: -3, expected: 0.0013498980316300945267, tolerance: 1e-14, source: digits60 },
    { inputs: -5, expected: 2.8665157187919391167e-7, tolerance: 1e-13, source: digits60 },
    { inputs: -10, expected: 7.619853024160526066e-24, tolerance: 1e-13, source: digits60 },
    { inputs: -20, expected: 2.7536241186062336951e-89, tolerance: 1e-12, source: digits60 },
    { inputs: -37, expected: 5.7255712225245768227e-300, tolerance: 1e-12, source: digits60 },
    {
      inputs: 2,
      expected: 0.977249868051821,
      tolerance: 3e-14,
      source: 'Abramowitz & Stegun 1964, Table 26.1 (from memory)',
    },
  ];
  test.each(rows)('Φ($inputs), relative: $source', ({ inputs, expected, tolerance }) => {
    expect(Math.abs(normalDistribution(inputs) / expected - 1)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(logNormalDistribution(inputs) / Math.log(expected) - 1)).toBeLessThanOrEqual(tolerance);
  });

  const quantiles = [
    {
      inputs: 0.9,
      expected: 1.2815515655446,
      tolerance: 1e-13,
      source: 'tables of the normal distribution, 14 digits',
    },
    {
      inputs: 0.25,
      expected: -0.6744897501960817,
      tolerance: 2e-15,
      source: 'Wichura 1988, check values (from memory)',
    },
    {
      inputs: 0.001,
      expected: -3.090232306167814,
      tolerance: 2e-15,
      source: 'Wichura 1988, check values (from memory)',
    },
    {
      inputs: 1e-20,
      expected: -9.262340089798408,
      tolerance: 5e-15,
      source: 'Wichura 1988, check values (from memory)',
    },
  ];
  test.each(quantiles)('quantile $inputs: $source', ({ inputs, expected, tolerance }) => {
    expect(Math.abs(normalQuantile(inputs) - expected)).toBeLessThanOrEqual(tolerance);
  });
});

test('CRPS of N(0,1) at 0 is (√2 − 1)/√π = .23370: Gneiting & Raftery 2007', () => {
  expect(Math.abs(normalCrps(0, 1, 0) - (Math.SQRT2 - 1) / Math.sqrt(Math.PI))).toBeLessThanOrEqual(1e-15);
  expect(Math.abs(normalCrps(0, 1, 0) - 0.2337)).toBeLessThanOrEqual(1e-5);
});

describe('partial pooling', () => {
  const rows = [
    {
      name: 'Rail',
      source: 'Pinheiro & Bates 2000, ch. 1; R nlme lme(travel ~ 1, random = ~ 1 | Rail)',
      inputs: [
        [55, 53, 54],
        [26, 37, 32],
        [78, 91, 85],
        [92, 100, 96],
        [49, 51, 50],
        [80, 85, 83],
      ],
      expected: { mean: 66.5, between: 24.805465313, within: 4.020779363 },
      effects: [-12.39147557, -34.53091193, 18.0089445, 29.24388235, -16.35674776, 16.02630841],
      tolerance: 1e-7,
    },
    {
      name: 'Dyestuff',
      source: 'Davies & Goldsmith 1972; variances 1764.05 and 2451.25 from R lme4 (all from memory)',
      inputs: [
        [1545, 1440, 1440, 1520, 1580],
        [1540, 1555, 1490, 1560, 1495],
        [1595, 1550, 1605, 1510, 1560],
        [1445, 1440, 1595, 1465, 1545],
        [1595, 1630, 1515, 1635, 1625],
        [1520, 1455, 1450, 1480, 1445],
      ],
      expected: { mean: 1527.5, between: Math.sqrt(1764.05), within: Math.sqrt(2451.25) },
      effects: [],
      // The variances are given to two decimals.
      tolerance: 1e-4,
    },
  ];
  test.each(rows)('$name: $source', ({ inputs, expected, effects, tolerance }) => {
    const found = partialPooling(inputs);
    expect(Math.abs(found.mean - expected.mean)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(found.betweenDeviation - expected.between)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(found.withinDeviation - expected.within)).toBeLessThanOrEqual(tolerance);
    for (const [i, effect] of effects.entries()) {
      expect(Math.abs(found.effects[i] - effect)).toBeLessThanOrEqual(tolerance);
    }
  });
});
