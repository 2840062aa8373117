import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import { shotSchema } from '../../src/golf/shot.ts';
import { readSwing, type Swing } from '../../src/golf/swing.ts';
import { ladderBall, ladderDone, ladderRungs, nextRung, type Rung, swingsOffered } from '../../src/golf/wedgeLadder.ts';
import { metres } from '../../src/units/metres.ts';

const club = (id: string, kind: string, loft: number, notPlayed: readonly Swing[] = []): Club =>
  z.parse(clubSchema, { id, kind, notPlayed, specPeriods: [{ id: `${id}a`, loft_deg: loft }] });
const rung = (clubId: string, swing: Swing): Rung => ({ clubId, swing });
const DAY = '2026-05-02';

test('a wedge has its three positions and full, any club the golfer’s own, and what is not played is left out', () => {
  expect(swingsOffered(club('w', 'wedge', 54), [])).toEqual(['7:30', '9:00', '10:30', 'full']);
  expect(swingsOffered(club('w', 'wedge', 58, ['full', '7:30']), [{ swing: '8:00', label: 'hip' }])).toEqual([
    '8:00',
    '9:00',
    '10:30',
  ]);
  expect(swingsOffered(club('i', 'iron', 34), [{ swing: '10:30', label: '' }])).toEqual(['10:30', 'full']);
});

describe('the order of the rungs', () => {
  const clubs = [club('gap', 'wedge', 50), club('lob', 'wedge', 58, ['full'])];

  test('without carries the shorter swing comes first, and in a swing the most loft', () => {
    expect(ladderRungs(clubs, [], () => null, DAY)).toEqual([
      rung('lob', '7:30'),
      rung('gap', '7:30'),
      rung('lob', '9:00'),
      rung('gap', '9:00'),
      rung('lob', '10:30'),
      rung('gap', '10:30'),
      rung('gap', 'full'),
    ]);
  });

  test('with carries the shortest comes first', () => {
    const carries: Record<string, number> = { 'lob 10:30': 50, 'gap 7:30': 55 };
    const carryOf = ({ clubId, swing }: Rung) => metres(carries[`${clubId} ${swing}`] ?? 80);
    expect(ladderRungs(clubs, [], carryOf, DAY).slice(0, 2)).toEqual([rung('lob', '10:30'), rung('gap', '7:30')]);
  });
});

test('ten balls fill a rung, and the next with balls left is climbed to, round to the bottom again', () => {
  const rungs = [rung('a', '9:00'), rung('b', '9:00'), rung('c', '9:00')];
  const hit = (clubId: string, n: number) => Array.from({ length: n }, () => ({ clubId, swing: '9:00' }));
  const done = ladderDone(rungs, [...hit('b', 10), ...hit('c', 9), { clubId: 'a', swing: 'full' }]);
  expect(done.map(({ balls }) => balls)).toEqual([0, 10, 9]);
  expect(nextRung(done, 0)).toBe(2);
  expect(nextRung(done, 2)).toBe(0);
  expect(nextRung(ladderDone(rungs, [...hit('a', 11), ...hit('b', 10), ...hit('c', 10)]), 1)).toBeNull();
});

describe('a ball of the ladder', () => {
  test('carried the target and what it was long of it, and is a shot that the logbook takes', () => {
    const ball = ladderBall(rung('w', '9:00'), metres(70), { kind: 'pitched', long_m: metres(-4) }, [{ number: 3 }]);
    expect(ball).toMatchObject({ clubId: 'w', swing: '9:00', number: 4, lie: 'fairway', flag_m: 70 });
    expect(ball.carry).toEqual({ m: 66, by: 'laser', error_m: null });
    expect(z.safeParse(shotSchema, { ...ball, id: 's', roundId: 'r' }).success).toBe(true);
  });

  test('well short carried no more than that; short of nothing it carried nothing', () => {
    const target = metres(70);
    const ball = ladderBall(rung('w', '9:00'), target, { kind: 'well short', least_short_m: metres(25) }, []);
    expect([ball.carry, ball.carryAtMost_m]).toEqual([null, 45]);
    const topped = ladderBall(rung('w', '9:00'), metres(10), { kind: 'pitched', long_m: metres(-20) }, []);
    expect(topped.carry?.m).toBe(0);
  });

  test('no target is an error', () => {
    expect(() => ladderBall(rung('w', 'full'), metres(0), { kind: 'pitched', long_m: metres(0) }, [])).toThrow('0 m');
  });
});

test.each([
  ['8:00', '8:00'],
  [' 08:00 ', '8:00'],
  ['11:15', '11:15'],
  ['12:00', null],
  ['6:00', null],
  ['9:75', null],
  ['full', null],
  ['', null],
])('“%s” is the swing %s', (typed, swing) => {
  expect(readSwing(typed)).toBe(swing);
});
