import geodesics from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { aboutFlag } from '../../src/golf/aboutFlag.ts';
import { averagedFix, standingFixes } from '../../src/golf/averagedFix.ts';
import { type Mark, markSchema } from '../../src/golf/mark.ts';
import { marked, measuresOfMarks, restOfLast } from '../../src/golf/markChain.ts';
import { markDistance } from '../../src/golf/markDistance.ts';
import { markError } from '../../src/golf/markError.ts';
import { plusMinus80 } from '../../src/golf/plusMinus80.ts';
import { blankEntry } from '../../src/golf/shotEntry.ts';
import { plusMinusOfError } from '../../src/screens/distance.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { shotOf } from './shotOf.ts';

const { WGS84 } = geodesics.Geodesic;
const markAt = (lat_deg: number, lon_deg: number, accuracy_m = 4, at: string | null = null): Mark =>
  z.parse(markSchema, { lat_deg, lon_deg, accuracy_m, at });
const tee = markAt(51.2, -1.1);

/** A place so many metres from another along a bearing. */
function going(from: Mark, m: number, bearing: number, accuracy_m = 4, at: string | null = null): Mark {
  const { lat2, lon2 } = WGS84.Direct(from.lat_deg, from.lon_deg, bearing, m);
  return markAt(lat2 as number, lon2 as number, accuracy_m, at);
}

const second = (n: number) => new Date(Date.UTC(2026, 4, 2, 9, 0, n)).toISOString();

describe('the error of a distance between marks', () => {
  test('is √(r₁² + r₂²)/2.448, and never below 2 yd', () => {
    const r = (accuracy_m: number) => markAt(0, 0, accuracy_m);
    // By hand: √(6² + 8²)/2.448 = 4.0850.
    expect(markError(r(6), r(8))).toBeCloseTo(4.085, 3);
    // 3.1 yd for two marks of 4.9 m: a figure of the design, by hand √2 · 4.9/2.448 = 2.8307 m = 3.096 yd.
    expect(markError(r(4.9), r(4.9)) / 0.9144).toBeCloseTo(3.096, 2);
    expect(markError(r(1), r(1)) / 0.9144).toBeCloseTo(2, 9);
  });

  test('the ± shown holds 8 in 10', () => {
    expect(plusMinus80(markError(markAt(0, 0, 6), markAt(0, 0, 8)))).toBeCloseTo(4.085 * 1.28155, 3);
  });
});

describe('fixes while standing', () => {
  test('their mean lies among them and its radius never goes below 2 yd, however many', () => {
    const fixes = Array.from({ length: 40 }, (_, n) => going(tee, 0.5, n * 9, 4, second(n % 15)));
    const mean = averagedFix(fixes);
    expect(markDistance(mean, tee).m).toBeLessThan(0.1);
    expect(mean.accuracy_m).toBeGreaterThan(4 * Math.sqrt(0.7) - 1e-9);
    expect(mean.accuracy_m).toBeLessThan(4);
    const fine = averagedFix(fixes.map((fix) => ({ ...fix, accuracy_m: 0.5 as never })));
    expect((fine.accuracy_m ?? 0) / 0.9144).toBeCloseTo(2, 9);
  });

  test('a better fix counts for more, by 1/r²', () => {
    const mean = averagedFix([going(tee, 3, 90, 6), going(tee, 0, 0, 3)]);
    expect(markDistance(tee, mean).m).toBeCloseTo(3 / 5, 3);
  });

  test('one fix stays where it is', () => {
    const fix = going(tee, 10, 45, 5.5, second(1));
    expect(averagedFix([fix])).toEqual(fix);
  });

  test('the mean of fixes astride the date line is on it', () => {
    const mean = averagedFix([markAt(-17, 179.99999), markAt(-17, -179.99999)]);
    expect(Math.abs(mean.lon_deg)).toBeGreaterThan(179.9999);
  });

  test('steps taken before and fixes long past are left out', () => {
    const walk = Array.from({ length: 10 }, (_, n) => going(tee, 1.4 * (10 - n), 180, 4, second(n)));
    const stand = Array.from({ length: 5 }, (_, n) => going(tee, 0.3, n * 70, 4, second(10 + n)));
    const kept = standingFixes([...walk, ...stand]);
    expect(kept.length).toBeGreaterThanOrEqual(5);
    expect(kept.length).toBeLessThanOrEqual(7);
    const old = [going(tee, 0, 0, 4, second(0)), going(tee, 0, 0, 4, second(30))];
    expect(standingFixes(old)).toEqual([old[1]]);
    expect(standingFixes([])).toEqual([]);
    expect(() => averagedFix([])).toThrow(RangeError);
  });
});

test('long and right of the flag come from three marks, whichever way the hole runs', () => {
  for (const bearing of [0, 47, 181, 359]) {
    const flag = going(tee, 140, bearing);
    const pitch = going(going(tee, 136, bearing), 5, bearing - 90);
    const about = aboutFlag(tee, pitch, flag);
    expect(about.long_m).toBeCloseTo(-4, 2);
    expect(about.right_m).toBeCloseTo(-5, 2);
    expect(about.flag_m).toBeCloseTo(140, 5);
  }
});

describe('marks of a hole', () => {
  const far = going(tee, 220, 10);
  const nearer = going(tee, 205, 10);

  test('ball and pitch give the carry, ball and rest the total, and a rest never a carry', () => {
    const shot = shotOf('s1', { marks: { ball: tee, pitch: null, rest: null } });
    const rested = marked(shot, 'rest', far, true);
    expect(rested.total).toMatchObject({ by: 'gnss' });
    expect(rested.total?.m).toBeCloseTo(220, 6);
    expect(rested.carry).toBeUndefined();
    const pitched = marked(shot, 'pitch', nearer, true);
    expect(pitched.carry?.m).toBeCloseTo(205, 6);
    expect(pitched.carry?.error_m).toBeCloseTo(markError(tee, nearer), 9);
    expect(pitched.total).toBeUndefined();
  });

  test('a carry measured otherwise stays', () => {
    const carry = { m: 200 as never, by: 'laser' as const, error_m: null };
    const shot = shotOf('s1', { carry, marks: { ball: tee, pitch: null, rest: null } });
    expect(marked(shot, 'pitch', nearer, true).carry).toBeUndefined();
  });

  test('in a round by the Rules only the mark is kept; the measures follow from it afterwards', () => {
    const shot = shotOf('s1', { marks: { ball: tee, pitch: null, rest: null } });
    const changes = marked(shot, 'rest', far, false);
    expect(Object.keys(changes)).toEqual(['marks']);
    expect(measuresOfMarks({ ...shot, ...changes }).total?.m).toBeCloseTo(220, 6);
  });

  test('the ball of the next shot is the rest of the last: one tap at each ball walks the hole', () => {
    const first = shotOf('s1', { number: 1, marks: { ball: tee, pitch: null, rest: null } });
    const chained = restOfLast([first], blankEntry(1, 2), far, true);
    expect(chained?.id).toBe('s1');
    expect(chained?.changes.total?.m).toBeCloseTo(220, 6);
    expect(chained?.changes.marks?.rest).toEqual(far);
  });

  test('a drop breaks the chain, and so do a lost ball, the first ball of a hole and a rest already marked', () => {
    const first = shotOf('s1', { number: 1, marks: { ball: tee, pitch: null, rest: null } });
    expect(restOfLast([first], { ...blankEntry(1, 2), fromDrop: true }, far, true)).toBeNull();
    for (const outcome of ['lost', 'out of bounds', 'penalty area'] as const) {
      expect(restOfLast([{ ...first, outcome }], blankEntry(1, 2), far, true)).toBeNull();
    }
    expect(restOfLast([first], blankEntry(2, 1), far, true)).toBeNull();
    const rested = { ...first, marks: { ...first.marks, rest: nearer } };
    expect(restOfLast([rested], blankEntry(1, 2), far, true)).toBeNull();
  });

  test('a provisional ball not in play is passed over', () => {
    const first = shotOf('s1', { number: 1, marks: { ball: tee, pitch: null, rest: null } });
    const provisional = shotOf('s2', { number: 1.5, outcome: 'provisional unused' });
    expect(restOfLast([first, provisional], blankEntry(1, 2), far, true)?.id).toBe('s1');
  });
});

/**
 * 400 shots walked on holes of real size, with fixes as a phone gives them: one error for the whole stand and a
 * smaller one for each second, 70 : 30 in variance, at a reported radius of 3 to 8 m.
 */
test('the carry errs by no more than the ± shown in at least 8 of 10 of 400 walked shots', () => {
  const random = randomNumbers('walked shots');
  let within = 0;
  let squared = 0;
  for (let shot = 0; shot < 400; shot++) {
    const ball = going(tee, random.between(0, 400), random.between(0, 360));
    const carry = random.between(30, 250);
    const pitch = going(ball, carry, random.between(0, 360));
    const stand = (place: Mark, from: number): Mark => {
      const radius = random.between(3, 8);
      const sd = radius / 2.448;
      const off = (from: Mark, sd: number) =>
        going(going(from, random.normal(0, sd), 0, radius), random.normal(0, sd), 90, radius);
      const shared = off(place, sd * Math.sqrt(0.7));
      const fixes = Array.from({ length: random.whole(1, 8) }, (_, n) => ({
        ...off(shared, sd * Math.sqrt(0.3)),
        at: second(from + n),
      }));
      return averagedFix(standingFixes(fixes));
    };
    const measure = marked(
      shotOf('s', { marks: { ball: stand(ball, 0), pitch: null, rest: null } }),
      'pitch',
      stand(pitch, 40),
      true,
    ).carry;
    if (!measure?.error_m) throw new Error('no carry');
    const error = Math.abs(measure.m - carry) / 0.9144;
    squared += (error / (measure.error_m / 0.9144)) ** 2;
    if (error <= Number(plusMinusOfError(measure.error_m, 'yards'))) within += 1;
  }
  expect(within / 400).toBeGreaterThanOrEqual(0.8);
  expect(within / 400).toBeLessThan(0.9);
  // The standard error itself is honest: the mean square of error over standard error is near 1.
  expect(squared / 400).toBeGreaterThan(0.7);
  expect(squared / 400).toBeLessThan(1.3);
});
