import { describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { fitBook } from '../../src/book/fitBook.ts';
import { type StandardShot, shotInStandard } from '../../src/book/shotInStandard.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { AS_OF, carried, cellIn, logbookOf, ROUNDS, roundOf, shotOf, solidShots } from './logbooks.ts';

const rest = [...solidShots('i7', 140, 12), ...solidShots('dr', 205, 12, { lie: 'tee' }), ...solidShots('pw', 100, 8)];
const cold = [...ROUNDS, roundOf('cold', '2026-06-21', { conditions: { temperature_C: 8 } })];

function tell(shot: Shot, rounds = cold) {
  return shotInStandard(fitBook(logbookOf({ rounds, shots: [...rest, shot] }), AS_OF), shot.id);
}

function told(shot: Shot): StandardShot {
  const one = tell(shot);
  if (one.kind !== 'standard') throw new Error(one.why);
  return one;
}

const into = { from_clock: 12, mps: 3, reference_m: 2 };

describe('one shot in standard conditions', () => {
  test('a plain one is what it measured', () => {
    const one = told(carried('x', 138));
    expect(one).toMatchObject({ known: 'carry', measured_m: 138, measuredSd_m: 2, steps: [] });
    expect(one.standard_m).toBeCloseTo(138, 9);
    expect(one.sd_m).toBe(2);
  });

  test('in a cold headwind it is worth more, by air and by wind, and less sure', () => {
    const one = told(carried('x', 134, { roundId: 'cold', wind: into }));
    expect(one.steps.map(({ cause }) => cause)).toEqual(['air', 'wind']);
    for (const { add_m, sd_m } of one.steps) {
      expect(add_m).toBeGreaterThan(0.3);
      expect(sd_m).toBeGreaterThan(0.1);
    }
    expect(one.standard_m).toBeCloseTo(134 + one.steps[0].add_m + one.steps[1].add_m, 9);
    // The trade's rules of thumb: a club in about 4.5 m/s into (10 mph), a yard or two for 10 °F; common practice, no source.
    expect(one.standard_m).toBeGreaterThan(138);
    expect(one.standard_m).toBeLessThan(148);
    expect(one.sd_m).toBeGreaterThan(Math.max(2, one.steps[1].sd_m));
  });

  test('uphill, out of the rough and as a flier each have their line', () => {
    const one = told(carried('x', 134, { rise_m: 6, lie: 'light rough', tags: ['flier'] }));
    const add = Object.fromEntries(one.steps.map(({ cause, add_m }) => [cause, add_m]));
    expect(Object.keys(add)).toEqual(['slope', 'lie', 'tags']);
    expect(add.slope).toBeGreaterThan(3);
    expect(add.lie).toBeGreaterThan(4);
    expect(add.tags).toBeLessThan(-4);
    expect(one.standard_m).toBeCloseTo(134 + add.slope + add.lie + add.tags, 9);
  });

  test('of a total the run is taken off first', () => {
    const one = told(shotOf('x', { clubId: 'dr', lie: 'tee', total: { m: 225, by: 'gnss' } }));
    expect(one).toMatchObject({ known: 'total', measured_m: 225, measuredSd_m: 0 });
    expect(one.steps[0].cause).toBe('roll');
    expect(one.steps[0].add_m).toBeLessThan(-10);
    expect(one.standard_m).toBeCloseTo(225 + one.steps[0].add_m, 9);
    expect(one.sd_m).toBeGreaterThan(4);
  });

  test('a bunker cleared is a bound', () => {
    expect(told(shotOf('x', { clubId: 'dr', lie: 'tee', carryAtLeast_m: 190 })).known).toBe('at least');
    expect(told(shotOf('x', { clubId: 'dr', lie: 'tee', carryAtMost_m: 190 })).known).toBe('at most');
  });

  test('one left out says why, one unknown is a breach', () => {
    expect(tell(carried('x', 90, { wind: { ...into, mps: 20 } }))).toMatchObject({ kind: 'left out', shotId: 'x' });
    const knockdown = tell(carried('x', 90, { intent: 'knockdown' }));
    if (knockdown.kind !== 'left out') throw new Error('it counts');
    expect(knockdown.why).toMatch(/knockdown/);
    expect(() => shotInStandard(fitBook(logbookOf(), AS_OF), 'y')).toThrow(/no shot y/);
  });
});

test('a shot whose wind was forgotten flew through the wind of its round, from somewhere', () => {
  const windy = Array.from({ length: 6 }, (_, k) =>
    carried(`w${k}`, 140, { roundId: 'cold', wind: { from_clock: (5 * k) % 12, mps: 6, reference_m: 2 } }),
  );
  const one = (roundId: string) => {
    const fitted = fitBook(
      logbookOf({ rounds: cold, shots: [...rest, ...windy, carried('x', 140, { roundId })] }),
      AS_OF,
    );
    const found = shotInStandard(fitted, 'x');
    if (found.kind !== 'standard') throw new Error(found.why);
    return found;
  };
  expect(one('cold').sd_m).toBeGreaterThan(2.5 * one('r1').sd_m);
  expect(one('cold').steps.some(({ cause }) => cause === 'wind')).toBe(true);
});

test('shots with forgotten wind count less than those of a round without any', () => {
  const long = (roundId: string) => solidShots('i7', 156, 6, { roundId }, `long${roundId}`);
  const windy = solidShots('i7', 140, 6, { roundId: 'cold', wind: { ...into, from_clock: 3, mps: 6 } }, 'windy');
  const stock = (roundId: string) =>
    cellIn(composeBook(logbookOf({ rounds: cold, shots: [...rest, ...windy, ...long(roundId)] }), AS_OF), 'i7').stock_m;
  expect(stock('cold')).toBeLessThan(stock('r1') - 0.5);
});
