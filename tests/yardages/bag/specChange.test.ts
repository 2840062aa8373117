import { describe, expect, test } from 'vitest';
import { type BagEntry, bagWarnings } from '../../../src/yardages/bagWarnings.ts';
import { specChange } from '../../../src/yardages/specChange.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';

const YARD = 0.9144;

describe('a change of build', () => {
  test('median, interval and odds are those of 100,000 draws of the two carries', () => {
    const [before, after, shared, own] = [80, 84, 0.02, 0.015];
    const found = specChange(before, after, shared ** 2 + own ** 2, shared ** 2 + own ** 2, shared ** 2);
    const numbers = randomNumbers('change');
    let longer = 0;
    let shorter = 0;
    let inside = 0;
    const draws = 100_000;
    for (let i = 0; i < draws; i++) {
      const all = numbers.normal(0, shared);
      const change = after * Math.exp(all + numbers.normal(0, own)) - before * Math.exp(all + numbers.normal(0, own));
      if (change > 2 * YARD) longer++;
      if (change < -2 * YARD) shorter++;
      if (change > found.lo80_m && change < found.hi80_m) inside++;
    }
    expect(found.change_m).toBe(4);
    expect(Math.abs(found.pLonger - longer / draws)).toBeLessThan(0.01);
    expect(Math.abs(found.pShorter - shorter / draws)).toBeLessThan(0.01);
    expect(Math.abs(inside / draws - 0.8)).toBeLessThan(0.01);
    expect(found.pChanged).toBe(found.pLonger + found.pShorter);
  });

  test.each([
    [80, 88, 0.01, 'longer'],
    [88, 80, 0.01, 'shorter'],
    [80, 80.2, 0.005, 'as before'],
    [80, 82, 0.02, "can't tell yet"],
  ] as const)('from %f to %f m is %s', (before, after, sd, verdict) => {
    expect(specChange(before, after, sd ** 2, sd ** 2, 0).verdict).toBe(verdict);
  });

  test('what both builds share makes it surer', () => {
    const alone = specChange(80, 84, 4e-4, 4e-4, 0);
    const together = specChange(80, 84, 4e-4, 4e-4, 3.6e-4);
    expect(together.hi80_m - together.lo80_m).toBeLessThan(0.4 * (alone.hi80_m - alone.lo80_m));
  });

  test('a variance of nothing is refused', () => {
    expect(() => specChange(80, 84, 1e-4, 1e-4, 2e-4)).toThrow(/variance/);
  });
});

describe('bag warnings', () => {
  const entry = (clubId: string, loft_deg: number, cell: number | null, kind: BagEntry['kind'] = 'iron') => ({
    clubId,
    kind,
    loft_deg,
    cell,
  });
  const diagonal = (n: number, sd: number) =>
    Float64Array.from({ length: n * n }, (_, at) => (at % (n + 1) ? 0 : sd ** 2));
  const carries = (...m: number[]) => m.map(Math.log);

  test('an ordinary bag has none', () => {
    const bag = [entry('i6', 30, 0), entry('i7', 34, 1), entry('i8', 38, 2), entry('pt', 3, null, 'putter')];
    expect(bagWarnings(bag, carries(150, 140, 130), diagonal(3, 0.02))).toEqual([]);
  });

  test('more loft and more carry, beyond doubt, is told with its odds', () => {
    const bag = [entry('i6', 30, 0), entry('i7', 34, 1)];
    const [warning, ...rest] = bagWarnings(bag, carries(140, 148), diagonal(2, 0.01));
    expect(rest).toEqual([]);
    if (warning.kind !== 'loft and carry disagree') throw new Error(warning.kind);
    expect([warning.clubId, warning.otherId]).toEqual(['i7', 'i6']);
    expect(warning.further_m).toBeCloseTo(8, 9);
    expect(warning.deviation_m).toBeCloseTo(Math.hypot(1.4, 1.48), 9);
    expect(warning.probability).toBeGreaterThan(0.99);
    expect(bagWarnings(bag, carries(140, 148), diagonal(2, 0.05))).toEqual([]);
  });

  test('one kind and one loft is a duplicate, a hybrid beside an iron is none', () => {
    const bag = [
      entry('a', 50, 0, 'wedge'),
      entry('b', 50.5, 1, 'wedge'),
      entry('h', 25, 2, 'hybrid'),
      entry('i', 25, 3),
    ];
    expect(bagWarnings(bag, carries(100, 99, 170, 165), diagonal(4, 0.02))).toEqual([
      { kind: 'duplicate', clubId: 'a', otherId: 'b' },
    ]);
  });

  test('fifteen clubs are one too many (Rules of Golf 2023, Rule 4.1b)', () => {
    const bag = Array.from({ length: 14 }, (_, i) => entry(`c${i}`, 15 + 3 * i, i));
    const means = carries(...bag.map((_, i) => 200 - 10 * i));
    expect(bagWarnings(bag, means, diagonal(14, 0.02))).toEqual([]);
    const fifteen = [...bag, entry('pt', 3, null, 'putter')];
    expect(bagWarnings(fifteen, means, diagonal(14, 0.02))).toEqual([{ kind: 'too many', clubs: 15, over: 1 }]);
  });
});
