import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Hole } from '../../src/golf/hole.ts';
import { holeScore } from '../../src/golf/holeScore.ts';
import { blankHole } from '../../src/golf/newRound.ts';
import { puttsByCount } from '../../src/golf/putts.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { shotOf } from './shotOf.ts';

const hole = (slots: Partial<Hole> = {}): Hole => ({ ...blankHole(1), ...slots });

/**
 * Scores of invented holes. Source of the counting: R&A and USGA, Rules of Golf (2023), as named.
 */
const rows: { what: string; hole: Hole; shots: Shot[]; kind: string; strokes: number; source: string }[] = [
  { what: 'nothing played', hole: hole(), shots: [], kind: 'not started', strokes: 0, source: 'by definition' },
  {
    what: 'two shots and two putts',
    hole: hole({ putts: puttsByCount(2, null) }),
    shots: [shotOf('1'), shotOf('2', { number: 2, restLie: 'green' })],
    kind: 'holed',
    strokes: 4,
    source: 'Rule 3.3c',
  },
  {
    what: 'a ball lost off the tee and the hole finished with the third stroke',
    hole: hole(),
    shots: [shotOf('1', { outcome: 'lost', penalty: 1 }), shotOf('2', { number: 2, outcome: 'holed' })],
    kind: 'holed',
    strokes: 3,
    source: 'Rule 18.2b: stroke and distance',
  },
  {
    what: 'relief from a penalty area',
    hole: hole({ putts: puttsByCount(1, null) }),
    shots: [shotOf('1', { outcome: 'penalty area', penalty: 1 }), shotOf('2', { number: 2, fromDrop: true })],
    kind: 'holed',
    strokes: 4,
    source: 'Rule 17.1d: one penalty stroke',
  },
  {
    what: 'a provisional ball that was not needed',
    hole: hole({ putts: puttsByCount(2, null) }),
    shots: [shotOf('1'), shotOf('2', { number: 2, outcome: 'provisional unused', penalty: 1 })],
    kind: 'holed',
    strokes: 3,
    source: 'Rule 18.3c(3)',
  },
  {
    what: 'a conceded stroke, logged',
    hole: hole(),
    shots: [shotOf('1'), shotOf('2', { number: 2, outcome: 'conceded' })],
    kind: 'conceded',
    strokes: 2,
    source: 'Rule 3.2b(2): the score includes the conceded stroke',
  },
  {
    what: 'a conceded stroke, not logged',
    hole: hole({ result: 'conceded' }),
    shots: [shotOf('1'), shotOf('2', { number: 2, restLie: 'green' })],
    kind: 'conceded',
    strokes: 3,
    source: 'Rule 3.2b(2)',
  },
  {
    what: 'picked up',
    hole: hole({ result: 'picked up' }),
    shots: [shotOf('1')],
    kind: 'picked up',
    strokes: 1,
    source: 'Rule 3.3c: no score for the hole',
  },
];

for (const row of rows) {
  test(`${row.what}: ${row.kind}, ${row.strokes} (${row.source})`, () => {
    const score = holeScore(row.hole, row.shots);
    expect([score.kind, score.strokes]).toEqual([row.kind, row.strokes]);
  });
}

test('the score noted beyond what was logged counts as strokes not logged, and the other way round', () => {
  const shots = [shotOf('1'), shotOf('2', { number: 2 })];
  expect(holeScore(hole({ strokes: 6, putts: puttsByCount(2, null) }), shots)).toMatchObject({
    strokes: 6,
    notLogged: 2,
    overLogged: 0,
  });
  expect(holeScore(hole({ strokes: 3, putts: puttsByCount(2, null) }), shots)).toMatchObject({
    strokes: 3,
    notLogged: 0,
    overLogged: 1,
  });
});

test('the parts add up to the score', () => {
  const outcomes = fc.constantFrom<Shot['outcome']>('in play', 'lost', 'penalty area', 'provisional unused');
  const slots = fc.record({ outcome: outcomes, penalty: fc.integer({ min: 0, max: 2 }) });
  fc.assert(
    fc.property(
      fc.array(slots, { maxLength: 8 }),
      fc.integer({ min: 0, max: 4 }),
      fc.option(fc.integer({ min: 1, max: 20 })),
      fc.integer({ min: 0, max: 3 }),
      fc.constantFrom<Hole['result']>('played', 'picked up', 'conceded'),
      (shots, putts, strokes, penalties, result) => {
        const logged = shots.map((slot, index) => shotOf(`${index}`, { ...slot, number: index + 1 }));
        const score = holeScore(hole({ putts: puttsByCount(putts, null), strokes, penalties, result }), logged);
        const counted = score.shots + score.putts + score.penalties;
        expect(score.strokes).toBe(counted + score.notLogged - score.overLogged);
        expect(Math.min(score.notLogged, score.overLogged)).toBe(0);
      },
    ),
  );
});

test('putts by count: only the last is holed; a count that no hole holds is an error', () => {
  expect(puttsByCount(3, 'p').map((putt) => putt.holed)).toEqual([false, false, true]);
  expect(puttsByCount(0, null)).toEqual([]);
  expect(() => puttsByCount(1.5, null)).toThrow(RangeError);
  expect(() => puttsByCount(51, null)).toThrow(RangeError);
});
