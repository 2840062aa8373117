import { expect, test } from 'vitest';
import { holeToResume } from '../../src/golf/holeToResume.ts';
import { roundOf, shotOf } from './shotOf.ts';

test('a new round begins on its first hole, wherever that is', () => {
  expect(holeToResume(roundOf('r1'), [])).toBe(1);
  expect(holeToResume(roundOf('r1', { startHole: 7 }), [])).toBe(7);
});

test('a hole in play goes on; one that is over leads to the next', () => {
  expect(holeToResume(roundOf('r1'), [shotOf('a', { hole: 3 })])).toBe(3);
  expect(holeToResume(roundOf('r1'), [shotOf('a', { hole: 3, outcome: 'holed' })])).toBe(4);
});

test('a hole passed over does not call back, and the last hole stays', () => {
  const shots = [shotOf('a', { hole: 1, outcome: 'holed' }), shotOf('b', { hole: 4, outcome: 'holed' })];
  expect(holeToResume(roundOf('r1'), shots)).toBe(5);
  expect(holeToResume(roundOf('r1', { startHole: 5 }), shots)).toBe(4);
});

test('a round without a hole is refused', () => {
  expect(() => holeToResume(roundOf('r1', { holes: [] }), [])).toThrow(RangeError);
});
