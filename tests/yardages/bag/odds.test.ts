import { describe, expect, test } from 'vitest';
import { flagUpTo } from '../../../src/yardages/flagUpTo.ts';
import { greenOdds, overCarries, type RollOf } from '../../../src/yardages/odds.ts';
import type { Spread } from '../../../src/yardages/spread.ts';
import { surestFirst, teeOdds } from '../../../src/yardages/teeOdds.ts';
import { randomNumbers } from '../../golfers/randomNumbers.ts';
import { drawCarry, forecastOf } from './leaving.ts';

const spread: Spread = {
  dots: 20,
  pooled: 100,
  rightMean: 0.01,
  longMean: 0,
  rr: 0.05 ** 2,
  rl: 0,
  ll: 0.04 ** 2,
  degrees: 6,
  worth: 30,
};
const rollOf: RollOf = (carry_m) => ({ roll_m: 0.05 * carry_m, sd_m: 2 });

/** One ball: carry, where it rests, and its line as a share of its length, a t of six degrees. */
function balls(count: number, stock_m: number) {
  const numbers = randomNumbers(`balls ${stock_m}`);
  const forecast = forecastOf(stock_m);
  return Array.from({ length: count }, () => {
    const carry = drawCarry(forecast, numbers);
    const { roll_m, sd_m } = rollOf(carry);
    return {
      carry,
      total: carry + roll_m + numbers.normal(0, sd_m),
      expectedTotal: carry + roll_m,
      line: 0.01 + 0.05 * numbers.studentT(6),
    };
  });
}
const share = (all: readonly boolean[]) => all.filter(Boolean).length / all.length;

describe('odds at a green', () => {
  test('are those of 100,000 balls', () => {
    const green = { front_m: 118, back_m: 146, left_m: -9, right_m: 13 };
    const odds = greenOdds(forecastOf(130), spread, rollOf, green);
    const drawn = balls(100_000, 130);
    const on = drawn.map(({ carry, line }) => {
      const right = line * carry;
      return carry >= 118 && carry <= 146 && right >= -9 && right <= 13;
    });
    expect(Math.abs(odds.short - share(drawn.map(({ carry }) => carry < 118)))).toBeLessThan(0.006);
    expect(Math.abs(odds.past - share(drawn.map(({ carry }) => carry > 146)))).toBeLessThan(0.006);
    expect(Math.abs(odds.pitches - share(on))).toBeLessThan(0.006);
    expect(Math.abs(odds.holds - share(on.map((pitched, i) => pitched && drawn[i].total <= 146)))).toBeLessThan(0.006);
  });

  test('all carries together weigh 1, and between no carries there is nothing', () => {
    expect(overCarries(forecastOf(130), 0, Number.POSITIVE_INFINITY, () => 1)).toBeCloseTo(1, 6);
    expect(overCarries(forecastOf(130), 900, 1000, () => 1)).toBe(0);
  });

  test('in yards they are the same', () => {
    const yard = 0.9144;
    const metres = greenOdds(forecastOf(130), spread, rollOf, { front_m: 118, back_m: 146, left_m: -9, right_m: 13 });
    const yards = greenOdds(forecastOf(130 / yard), spread, (carry) => ({ roll_m: 0.05 * carry, sd_m: 2 / yard }), {
      front_m: 118 / yard,
      back_m: 146 / yard,
      left_m: -9 / yard,
      right_m: 13 / yard,
    });
    expect(yards.holds).toBeCloseTo(metres.holds, 9);
  });

  test('a green without depth is refused', () => {
    expect(() =>
      greenOdds(forecastOf(130), spread, rollOf, { front_m: 130, back_m: 130, left_m: -5, right_m: 5 }),
    ).toThrow(/no green/);
  });
});

describe('the flag', () => {
  const green = { deep_m: 27, wide_m: 23, flagFromFront_m: 4.5, flagFromLeft_m: 11.5 };
  const approaches = [60, 80, 100, 120, 150, 180].map((stock_m, cell) => ({
    cell,
    stock_m,
    forecast: forecastOf(stock_m),
    spread,
    rollOf,
  }));

  test('is on up to some club, beyond which the middle is the aim; a bolder golfer goes further', () => {
    const careful = flagUpTo(green, approaches, 0.45);
    const bold = flagUpTo(green, approaches, 0.6);
    if (careful.upTo === null || bold.upTo === null) throw new Error('no club at all');
    expect(bold.upTo).toBeGreaterThan(careful.upTo);
    expect(careful.risks.map(({ stock_m }) => stock_m)).toEqual([60, 80, 100, 120, 150, 180]);
    for (const { cell, atFlag, atMiddle } of careful.risks) {
      expect(atMiddle).toBeLessThan(atFlag);
      expect(atFlag <= 0.45).toBe(cell <= careful.upTo && !careful.except.includes(cell));
    }
  });

  test('an awkward shorter swing is named as the exception', () => {
    const odd = approaches.map((one) => (one.cell === 1 ? { ...one, forecast: forecastOf(80, 0.2) } : one));
    expect(flagUpTo(green, odd, 0.65).except).toEqual([1]);
  });

  test('no club is within no risk, and a flag off the green is refused', () => {
    expect(flagUpTo(green, approaches, 0).upTo).toBeNull();
    expect(() => flagUpTo({ ...green, flagFromFront_m: 28 }, approaches, 0.3)).toThrow(/not on the green/);
    expect(() => flagUpTo(green, approaches, 1.2)).toThrow(/risk 1.2/);
  });
});

describe('odds from the tee', () => {
  const club = { forecast: forecastOf(200), spread, rollOf };

  test('are those of 100,000 balls', () => {
    const task = { carry_m: 180, limit_m: 212, fairwayWidth_m: 28 };
    const odds = teeOdds(club, task);
    const drawn = balls(100_000, 200);
    const clear = drawn.map(({ carry }) => carry >= 180);
    const short = drawn.map(({ total }) => total <= 212);
    const straight = drawn.map(({ expectedTotal, line }) => Math.abs(line * expectedTotal) <= 14);
    expect(Math.abs(odds.clears - share(clear))).toBeLessThan(0.006);
    expect(Math.abs(odds.staysShort - share(short))).toBeLessThan(0.006);
    expect(Math.abs(odds.inWidth - share(straight))).toBeLessThan(0.006);
    expect(Math.abs(odds.all - share(clear.map((c, i) => c && short[i] && straight[i])))).toBeLessThan(0.006);
  });

  test('with nothing asked for are certain', () => {
    const odds = teeOdds(club, { carry_m: null, limit_m: null, fairwayWidth_m: null });
    for (const odd of Object.values(odds)) expect(odd).toBeCloseTo(1, 6);
  });

  test('the surest club stands first, of equals the longer', () => {
    const clubs = [150, 170, 190, 210].map((stock, cell) => ({ cell, ...club, forecast: forecastOf(stock) }));
    const order = surestFirst(clubs, { carry_m: 150, limit_m: 205, fairwayWidth_m: null });
    expect(order[0].cell).toBe(1);
    expect(order.map(({ odds }) => odds.all)).toEqual(order.map(({ odds }) => odds.all).toSorted((a, b) => b - a));
    const even = surestFirst(clubs, { carry_m: null, limit_m: 9000, fairwayWidth_m: null });
    expect(even.map(({ odds }) => odds.staysShort.toFixed(6))).toEqual([
      '1.000000',
      '1.000000',
      '1.000000',
      '1.000000',
    ]);
  });

  test('a carry of nothing is refused', () => {
    expect(() => teeOdds(club, { carry_m: 0, limit_m: null, fairwayWidth_m: null })).toThrow(/0 m asked for/);
  });
});
