import { expect, test } from 'vitest';
import { edgeOfGreen, isOnGreen } from '../../../../src/screens/round/shot/green.ts';
import { keyPages } from '../../../../src/screens/round/shot/keyPages.ts';
import { tensKeys, unitKeys } from '../../../../src/screens/round/shot/numberKeys.ts';
import { pitched, pitchOf } from '../../../../src/screens/round/shot/pitch.ts';
import { puttFigure, puttLength, puttLengths } from '../../../../src/screens/round/shot/puttLength.ts';
import { pointAt, sheetScale, spotAt } from '../../../../src/screens/round/shot/sheetScale.ts';
import { isDistance, largestFigure } from '../../../../src/screens/round/shot/spokenDistance.ts';
import { spotWords } from '../../../../src/screens/round/shot/spotWords.ts';
import { GUARD_MS, tapGuard } from '../../../../src/screens/round/shot/tapGuard.ts';
import { type Metres, metres } from '../../../../src/units/metres.ts';

const level = { long_m: metres(0), right_m: metres(0) };
const at = (long: number, right: number) => ({ long_m: metres(long), right_m: metres(right) });

test('every distance up to 399 takes two taps and at most two turns of the page; the likely ones none', () => {
  for (const rows of [3, 4, 5] as const) {
    for (const kind of ['flag', 'shot'] as const) {
      const tens = tensKeys(kind, rows);
      expect([...tens].sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, index) => index * 10));
      const pages = keyPages(tens, rows * 5);
      expect(pages.length).toBeLessThanOrEqual(3);
      const likely = kind === 'flag' ? [60, 100, 150, 180] : [200, 240, 280];
      for (const figure of likely) expect(pages[0]).toContain(figure);
    }
  }
  expect(unitKeys('14')).toEqual(['140', '141', '142', '143', '144', '145', '146', '147', '148', '149']);
  expect(unitKeys('0')[7]).toBe('7');
});

test('keys in pages: none is lost, none stands twice, and each page leaves room for the key that turns it', () => {
  for (const [count, room] of [
    [15, 15],
    [16, 15],
    [40, 20],
    [3, 15],
    [31, 16],
  ]) {
    const keys = Array.from({ length: count }, (_, index) => index);
    const pages = keyPages(keys, room);
    expect(pages.flat()).toEqual(keys);
    for (const page of pages) expect(page.length).toBeLessThanOrEqual(pages.length > 1 ? room - 1 : room);
  }
});

test('a bounce on one spot counts once, another spot or a later tap is meant', () => {
  const tap = (at_ms: number, x = 100, y = 500) => ({ at_ms, x, y });
  const counts = tapGuard();
  expect(counts(tap(1000))).toBe(true);
  expect(counts(tap(1000 + GUARD_MS - 1))).toBe(false);
  // A trembling thumb goes on counting once.
  expect(counts(tap(1000 + 2 * GUARD_MS - 3))).toBe(false);
  expect(counts(tap(1000 + 3 * GUARD_MS))).toBe(true);
  expect(counts(tap(1010 + 3 * GUARD_MS, 180, 500))).toBe(true);
});

test('carry is the flag and what it pitched long of it; the line is about the aim', () => {
  const aim = at(3, -5);
  const changes = pitched({ flag_m: metres(100), aim }, at(-4, 2), 'paced');
  expect(changes).toEqual({ carry: { m: 96, by: 'paced', error_m: null }, offline_m: 7 });
  expect(
    pitchOf({ flag_m: metres(100), aim, carry: changes.carry ?? null, offline_m: changes.offline_m ?? null }),
  ).toEqual(at(-4, 2));
  expect(pitched({ flag_m: metres(10), aim: level }, at(-30, 0), 'laser').carry?.m).toBe(0);
  expect(() => pitched({ flag_m: null, aim: level }, at(0, 0), 'laser')).toThrow(RangeError);
});

test('a spot in the words of golfers', () => {
  const yard = 0.9144;
  expect(spotWords(at(-4 * yard, -3 * yard), 'yards')).toBe('4 short, 3 left');
  expect(spotWords(at(12, 0), 'metres')).toBe('12 long');
  expect(spotWords(at(0, 7), 'metres')).toBe('pin high, 7 right');
  expect(spotWords(at(0.2, -0.3), 'metres')).toBe('at the flag');
});

test('a tap on the sheet says the spot to the whole yard, and the mark stands where it was tapped', () => {
  const yard = 0.9144;
  const scale = sheetScale(290, 208, 18, yard);
  for (const [x, y] of [
    [145, 104],
    [10, 200],
    [280, 3],
  ]) {
    const spot = spotAt(scale, x, y);
    for (const length of [spot.long_m, spot.right_m]) {
      expect(Math.abs(length / yard - Math.round(length / yard))).toBeLessThan(1e-9);
    }
    const back = pointAt(scale, spot.long_m, spot.right_m);
    expect(Math.abs(back.x - x)).toBeLessThanOrEqual(scale.pxPerStep / 2 + 1e-9);
    expect(Math.abs(back.y - y)).toBeLessThanOrEqual(scale.pxPerStep / 2 + 1e-9);
  }
  expect(spotAt(scale, 145, 0).long_m).toBeGreaterThan(0);
  expect(spotAt(scale, 290, 104).right_m).toBeGreaterThan(0);
});

test('the green drawn is one piece about the flag, and what lies beyond its edge is off it', () => {
  for (let step = 0; step < 72; step += 1) {
    const turn = (step / 72) * 2 * Math.PI;
    const edge = edgeOfGreen(turn);
    expect(edge).toBeGreaterThan(8);
    expect(edge).toBeLessThan(16);
    const spot = (length: number) => at(length * Math.cos(turn), length * Math.sin(turn));
    expect(isOnGreen(spot(edge * 0.99))).toBe(true);
    expect(isOnGreen(spot(edge * 1.01))).toBe(false);
  }
});

test('a putt is said in feet by golfers of yards and in metres by the others', () => {
  // International foot: .3048 m exactly (International yard and pound agreement, 1959).
  expect(puttLength(20, 'yards')).toBeCloseTo(6.096, 9);
  expect(puttLength(2.5, 'metres')).toBe(2.5);
  for (const unit of ['yards', 'metres'] as const) {
    for (const figure of puttLengths(unit, 15)) expect(puttFigure(puttLength(figure, unit), unit)).toBe(figure);
    expect([...puttLengths(unit, 10)].sort((a, b) => a - b)).toEqual(puttLengths(unit, 15));
  }
});

test('only distances that a shot may hold are taken', () => {
  expect(isDistance('', 'yards')).toBe(false);
  expect(isDistance('0', 'yards')).toBe(false);
  expect(isDistance('656', 'yards')).toBe(true);
  expect(isDistance('657', 'yards')).toBe(false);
  expect(isDistance('601', 'metres')).toBe(false);
  expect(largestFigure('yards') * 0.9144).toBeLessThanOrEqual(600 as Metres);
});
