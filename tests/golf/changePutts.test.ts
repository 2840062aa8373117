import { expect, test } from 'vitest';
import { changePutts } from '../../src/golf/changePutts.ts';
import { metres } from '../../src/units/metres.ts';

const long = { clubId: 'p', length_m: metres(9), holed: false };
const short = { clubId: 'p', length_m: metres(0.4), holed: true };
const open = { clubId: 'p', length_m: null, holed: false };

test.each([
  { had: [], count: 2, gives: [open, { ...open, holed: true }] },
  { had: [long, short], count: 3, gives: [open, long, short] },
  { had: [long, short], count: 2, gives: [long, short] },
  { had: [long, short], count: 1, gives: [short] },
  { had: [long, short], count: 0, gives: [] },
])('$had.length putts become $count', ({ had, count, gives }) => {
  expect(changePutts(had, count, 'p')).toEqual(gives);
});

test('a count that is none is refused', () => {
  expect(() => changePutts([], -1, null)).toThrow(RangeError);
  expect(() => changePutts([], 1.5, null)).toThrow(RangeError);
});
