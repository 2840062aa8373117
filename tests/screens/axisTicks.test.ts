import { expect, test } from 'vitest';
import { axisTicks } from '../../src/screens/charts/axisTicks.ts';

test.each([
  { low: 61, high: 103, most: 5, ticks: [70, 80, 90, 100] },
  { low: 100, high: 250, most: 4, ticks: [100, 150, 200, 250] },
  { low: 91.3, high: 258.2, most: 3, ticks: [100, 200] },
  { low: 3.2, high: 3.9, most: 5, ticks: [] },
  { low: -4, high: 4, most: 5, ticks: [-4, -2, 0, 2, 4] },
])('$low to $high with room for $most', ({ low, high, most, ticks }) => {
  expect(axisTicks(low, high, most)).toEqual(ticks);
});
