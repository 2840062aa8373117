import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { clubSchema, specOn } from '../../../src/golf/club.ts';
import { builtDifferently } from '../../../src/golf/clubForm.ts';
import { anchorsOf } from '../../../src/screens/bag/anchorsOf.ts';
import { clubsInOrder } from '../../../src/screens/bag/clubsInOrder.ts';
import { blankClub, clubTextOf, readCarry, readClub } from '../../../src/screens/bag/clubText.ts';

const DAY = '2026-05-02';
const clubOf = (id: string, kind: string, name: string, loft: number, more: object = {}) =>
  z.parse(clubSchema, { id, kind, name, specPeriods: [{ id: `${id}a`, loft_deg: loft, length_m: 0.9401 }], ...more });
const iron = clubOf('c7', 'iron', '7 iron', 32.5, { claimed_m: 141.6 });
const before = { club: iron, spec: specOn(iron, DAY) };

describe('the form of a club', () => {
  test('read as it stands it leaves every figure as it was, rounded on screen or not', () => {
    const text = clubTextOf(iron, before.spec, 'yards');
    expect(text).toMatchObject({ loft: '32.5', length: '37.01', claimed: '155' });
    const read = readClub(text, before, 'yards');
    expect(read.kind === 'ok' && read.form).toMatchObject({ id: 'c7', claimed_m: 141.6, spec: { length_m: 0.9401 } });
    expect(read.kind === 'ok' && builtDifferently(before.spec, read.form.spec)).toBe(false);
  });

  test('says degrees, inches and the golfer’s own unit', () => {
    // Exact: an inch is 0.0254 m, a yard 0.9144 m. Source: International yard and pound agreement, 1959.
    const read = readClub({ ...blankClub, loft: '34', length: '37', claimed: '150' }, null, 'yards');
    expect(read.kind === 'ok' && read.form.spec.length_m).toBeCloseTo(0.9398, 10);
    expect(read.kind === 'ok' && read.form.claimed_m).toBeCloseTo(137.16, 10);
    const metric = readClub({ ...blankClub, loft: '34', claimed: '137' }, null, 'metres');
    expect(metric.kind === 'ok' && metric.form.claimed_m).toBe(137);
  });

  test.each([
    ['loft', ''],
    ['loft', '95'],
    ['lie', '12'],
    ['length', 'long'],
    ['bounce', '31'],
    ['claimed', '0'],
    ['claimed', '600'],
  ] as const)('%s does not take “%s”', (field, typed) => {
    expect(readClub({ ...blankClub, loft: '34', [field]: typed }, null, 'metres')).toEqual({ kind: 'wrong', field });
  });

  test('takes a comma for the point, and leaves open what is empty', () => {
    const read = readClub({ ...blankClub, loft: ' 28,5 ' }, null, 'yards');
    expect(read.kind === 'ok' && read.form.spec).toMatchObject({ loft_deg: 28.5, lie_deg: null, length_m: null });
  });

  test('a putter has no claimed carry', () => {
    const read = readClub({ ...blankClub, kind: 'putter', loft: '3', claimed: '20' }, null, 'yards');
    expect(read.kind === 'ok' && read.form.claimed_m).toBeNull();
  });
});

test('a carry typed is a length, nothing, or wrong', () => {
  expect(readCarry('100', 'yards')).toBeCloseTo(91.44, 10);
  expect(readCarry(' ', 'yards')).toBeNull();
  expect(readCarry('1 2', 'yards')).toBe('wrong');
});

const bag = [
  clubOf('w2', 'wedge', '54°', 54),
  clubOf('p', 'putter', 'putter', 3),
  iron,
  clubOf('d', 'driver', 'driver', 10.5),
  clubOf('w1', 'wedge', 'PW', 46),
  clubOf('c5', 'iron', '5 iron', 25),
];

test('the bag stands in loft order with the putter last', () => {
  expect(clubsInOrder(bag, DAY).map(({ club }) => club.id)).toEqual(['d', 'c5', 'c7', 'w1', 'w2', 'p']);
});

describe('the three clubs asked about', () => {
  test('are the driver, the 7 iron and a wedge', () => {
    const { driver, iron, wedges } = anchorsOf(bag, DAY);
    expect([driver?.id, iron?.id, wedges.map(({ id }) => id)]).toEqual(['d', 'c7', ['w1', 'w2']]);
  });

  test('without a 7 iron the iron nearest to its loft, and never a club out of the bag', () => {
    const without = [
      ...bag.filter((club) => club !== iron),
      clubOf('c8', 'iron', '8 iron', 37),
      { ...iron, inBag: false },
    ];
    expect(anchorsOf(without, DAY).iron?.id).toBe('c8');
    expect(anchorsOf([], DAY)).toEqual({ driver: null, iron: null, wedges: [] });
  });
});
