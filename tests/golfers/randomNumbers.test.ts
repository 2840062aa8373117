import { expect, test } from 'vitest';
import { type RandomNumbers, randomNumbers } from './randomNumbers.ts';

const COUNT = 40_000;

function moments(draw: (numbers: RandomNumbers) => number) {
  const numbers = randomNumbers('moments');
  const values = Array.from({ length: COUNT }, () => draw(numbers));
  const mean = values.reduce((sum, v) => sum + v, 0) / COUNT;
  const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (COUNT - 1);
  return { mean, variance };
}

// Expected mean and variance are the textbook ones of each distribution; tolerance about five standard errors.
test.each([
  ['uniform', (n: RandomNumbers) => n.uniform(), 1 / 2, 1 / 12],
  ['between 2 and 5', (n: RandomNumbers) => n.between(2, 5), 3.5, 9 / 12],
  ['whole 1 to 6', (n: RandomNumbers) => n.whole(1, 6), 3.5, 35 / 12],
  ['normal', (n: RandomNumbers) => n.normal(3, 2), 3, 4],
  ['gamma 0.6', (n: RandomNumbers) => n.gamma(0.6), 0.6, 0.6],
  ['gamma 4', (n: RandomNumbers) => n.gamma(4), 4, 4],
  ['beta 2, 3', (n: RandomNumbers) => n.beta(2, 3), 0.4, 6 / (25 * 6)],
  ['Student t, 8', (n: RandomNumbers) => n.studentT(8), 0, 8 / 6],
  ['chance 0.3', (n: RandomNumbers) => (n.chance(0.3) ? 1 : 0), 0.3, 0.21],
  ['choice by weight', (n: RandomNumbers) => n.choice([0, 1, 5], [2, 1, 1]), 1.5, 4.25],
] as const)('%s has its textbook mean and variance', (_, draw, mean, variance) => {
  const found = moments(draw);
  expect(Math.abs(found.mean - mean)).toBeLessThan(5 * Math.sqrt(variance / COUNT));
  expect(Math.abs(found.variance / variance - 1)).toBeLessThan(0.06);
});

test('the same seed gives the same stream, another seed another', () => {
  const stream = (seed: number | string) => {
    const numbers = randomNumbers(seed);
    return Array.from({ length: 50 }, () => numbers.uniform());
  };
  expect(stream(7)).toEqual(stream(7));
  expect(stream(7)).not.toEqual(stream(8));
  expect(stream('a').every((u) => u >= 0 && u < 1)).toBe(true);
});

test('a fork takes nothing from its parent', () => {
  const parent = randomNumbers(1);
  const other = randomNumbers(1);
  const fork = parent.fork('bag');
  fork.normal();
  expect(parent.uniform()).toBe(other.uniform());
  expect(fork.uniform()).not.toBe(other.fork('season').uniform());
});

test('there is no choice among nothing', () => {
  expect(() => randomNumbers(1).choice([])).toThrow(RangeError);
});
