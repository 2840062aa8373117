import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clockHours } from '../../src/golf/swing.ts';
import { orderedCarries } from '../../src/yardages/ordering.ts';
import { anyCells, cellOf, smallBag } from './cells.ts';

const numbers = (count: number, min: number, max: number) =>
  fc.array(fc.double({ min, max, noNaN: true }), { minLength: count, maxLength: count });

test('full swings never go up with loft, partial swings never past a longer one of the club', () => {
  const drawn = anyCells.chain((cells) =>
    fc.tuple(fc.constant(cells), numbers(cells.length, 2, 6), numbers(cells.length, 1e-6, 0.1)),
  );
  fc.assert(
    fc.property(drawn, ([cells, mean, variance]) => {
      const ordered = orderedCarries(cells, Float64Array.from(mean), variance);
      cells.forEach((a, i) => {
        cells.forEach((b, j) => {
          if (a.swing === 'full' && b.swing === 'full' && a.loft_deg < b.loft_deg) {
            expect(ordered[i]).toBeGreaterThanOrEqual(ordered[j] - 1e-12);
          }
          const longer = clockHours(a.swing) > clockHours(b.swing);
          if (a.period === b.period && longer && clockHours(a.swing) <= 12) {
            expect(ordered[i]).toBeGreaterThanOrEqual(ordered[j] - 1e-12);
          }
        });
      });
    }),
  );
});

test('carries in order stay as they are', () => {
  const mean = Float64Array.of(5.4, 5.2, 5, 4.9, 4.8, 4.5, 4.4, 4.2, 3.9);
  expect(orderedCarries(smallBag, mean, new Float64Array(9).fill(0.01))).toEqual(mean);
});

test('two irons the wrong way round meet at their mean by precision', () => {
  const cells = [cellOf('iron', 30, 'full', 0), cellOf('iron', 34, 'full', 1)];
  const ordered = orderedCarries(cells, Float64Array.of(4.8, 4.9), [0.01, 0.04]);
  expect([...ordered]).toEqual([expect.closeTo(4.82, 12), expect.closeTo(4.82, 12)]);
});

test('a partial swing gives way to the full one, and two partial ones to each other', () => {
  const wedge = ['full', '10:30', '9:00', '7:30'].map((swing) => cellOf('wedge', 54, swing));
  const ordered = orderedCarries(wedge, Float64Array.of(4.4, 4.45, 4, 4.1), [0.01, 0.01, 0.01, 0.03]);
  expect([...ordered]).toEqual([4.4, 4.4, 4.025, 4.025].map((theta) => expect.closeTo(theta, 12)));
});

test('a swing to 12:00 stands between the shorter swings and the full one', () => {
  const cells = [cellOf('iron', 30, 'full', 0), cellOf('iron', 30, '9:00', 0), cellOf('iron', 30, '12:00', 0)];
  const [full, nine, twelve] = orderedCarries(cells, Float64Array.of(5, 5.2, 4.8), [0.01, 0.01, 0.01]);
  expect(nine).toBeLessThanOrEqual(twelve);
  expect(twelve).toBeLessThanOrEqual(full);
});
