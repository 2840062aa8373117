import { describe, expect, test } from 'vitest';
import { studentDistribution } from '../../src/statistics/studentT.ts';
import { integrate } from './integrate.ts';

describe('Student’s t', () => {
  const source = 'table of the t distribution, any textbook; from memory, as Abramowitz & Stegun 1964, table 26.10';
  test.each([
    { inputs: [2.776, 4], expected: 0.975, tolerance: 2e-5, source },
    { inputs: [2.447, 6], expected: 0.975, tolerance: 2e-5, source },
    { inputs: [1.372, 10], expected: 0.9, tolerance: 5e-5, source },
    { inputs: [2.75, 30], expected: 0.995, tolerance: 2e-5, source },
    { inputs: [-2.776, 4], expected: 0.025, tolerance: 2e-5, source },
  ])('F($inputs)', ({ inputs: [t, degrees], expected, tolerance }) => {
    expect(Math.abs(studentDistribution(t, degrees) - expected)).toBeLessThanOrEqual(tolerance);
  });

  test.each([2, 4, 6, 10, 30])('with %i degrees is the integral of its density', (degrees) => {
    const kernel = (t: number) => (1 + (t * t) / degrees) ** (-(degrees + 1) / 2);
    // The density's tail beyond 4000 is worth less than 1e-7.
    const whole = 2 * (integrate(kernel, 0, 40) + integrate((u) => kernel(1 / u) / (u * u), 1e-9, 1 / 40));
    const part = 0.5 + integrate(kernel, 0, 1.7) / whole;
    expect(Math.abs(studentDistribution(1.7, degrees) - part)).toBeLessThan(1e-6);
  });

  test('is symmetric, ends at 0 and 1, and refuses odd degrees', () => {
    expect(studentDistribution(1.3, 6) + studentDistribution(-1.3, 6)).toBeCloseTo(1, 14);
    expect(studentDistribution(Number.NEGATIVE_INFINITY, 4)).toBe(0);
    expect(studentDistribution(Number.POSITIVE_INFINITY, 4)).toBe(1);
    expect(() => studentDistribution(1, 5)).toThrow(/5 degrees/);
    expect(() => studentDistribution(Number.NaN, 4)).toThrow(/NaN/);
  });
});
