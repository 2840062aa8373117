import { expect, test } from 'vitest';
import { distanceWithUnit, plusMinus, plusMinusOfError, wholeDistance } from '../../src/screens/distance.ts';
import { metres } from '../../src/units/metres.ts';

test('a carry is shown to the whole yard or metre', () => {
  // 150 yd = 137.16 m. Source: International yard and pound agreement, 1959.
  expect(wholeDistance(metres(137.16), 'yards')).toBe('150');
  expect(wholeDistance(metres(137.16 - 0.46), 'yards')).toBe('149');
  expect(wholeDistance(metres(137.16), 'metres')).toBe('137');
  expect(distanceWithUnit(metres(137.16), 'yards')).toBe('150\u00a0yd');
  expect(distanceWithUnit(metres(137.16), 'metres')).toBe('137\u00a0m');
});

test('± is half the interval, whole, and never less than 1', () => {
  expect(plusMinus(metres(91.44), metres(96.9264), 'yards')).toBe('3');
  expect(plusMinus(metres(100), metres(107), 'metres')).toBe('4');
  expect(plusMinus(metres(100), metres(100.2), 'yards')).toBe('1');
  expect(plusMinusOfError(metres(0.2), 'metres')).toBe('1');
  // By hand: 1.2816 · 4.6 m = 5.895 m = 6.45 yd, rounded up.
  expect(plusMinusOfError(metres(4.6), 'yards')).toBe('7');
});
