import { expect, test } from 'vitest';
import type { Shot } from '../../src/golf/shot.ts';
import { carryError } from '../../src/yardages/carryError.ts';
import { shotOf } from '../golf/shotOf.ts';

const YARD = 0.9144;
const carry = (m: number, by: string, error_m: number | null = null) =>
  ({ carry: { m, by, error_m } }) as Partial<Shot>;
const mark = (accuracy_m: number) => ({ lat_deg: 1, lon_deg: 1, accuracy_m }) as never;

// Own table of errors by how a carry was known, yards; nothing published.
test.each([
  ['typed', carry(140, 'typed'), 3 * YARD],
  ['judged', carry(140, 'judged'), 5.5 * YARD],
  ['paced', carry(80, 'paced'), 2],
  [
    'laser, pitched 4 m from the flag',
    { ...carry(140, 'laser'), flag_m: 140, offline_m: 4 } as never,
    Math.hypot(1.1 * YARD, 0.6 + 0.5 * YARD),
  ],
  ['satellite marks of usual accuracy', carry(140, 'gnss'), (Math.SQRT2 * 4.9) / 2.448],
  [
    'good satellite marks: the floor',
    { ...carry(140, 'gnss'), marks: { ball: mark(1), pitch: mark(1), rest: null } } as never,
    2 * YARD,
  ],
  ['stored with the shot', carry(140, 'judged', 1.5), 1.5],
  ['stored as nothing at all', carry(140, 'typed', 0), 0.1],
])('%s', (_, slots, expected) => {
  expect(Math.abs(carryError(shotOf('s', slots as Partial<Shot>)) - expected)).toBeLessThan(0.012);
});

test('a shot without a carry has no error of it', () => {
  expect(() => carryError(shotOf('s7'))).toThrow(/shot s7 has no carry/);
});
