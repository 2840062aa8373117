import { describe, expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { countedShots } from '../../src/book/countedShots.ts';
import { AS_OF, carried, logbookOf, ROUNDS, roundOf, shotOf } from './logbooks.ts';

// One way to be left out each; the wording is the golfer's.
const leftOut: [why: string, slots: object][] = [
  ['no club noted', { clubId: null }],
  ['its club was deleted', { clubId: 'gone' }],
  ['a putter has no carry', { clubId: 'pt' }],
  ['its round was deleted', { roundId: 'gone' }],
  ['knockdown: only normal swings feed the book', { intent: 'knockdown' }],
  ['recovery: only normal swings feed the book', { intent: 'recovery' }],
  ['chip: only normal swings feed the book', { intent: 'chip' }],
  ['hit after the day of this book', { at: '2026-07-01T09:00:00Z' }],
  ['carry under 3 m: topped or duffed', { carry: { m: 2 } }],
  ['no distance noted', { carry: null }],
  ['no distance noted', { carry: null, carryAtLeast_m: 1 }],
  ['total under 3 m: topped or duffed', { carry: null, total: { m: 2 } }],
  ['the bounds of its carry contradict each other', { carry: null, carryAtLeast_m: 150, carryAtMost_m: 140 }],
];

test.each(leftOut)('%s', (why, slots) => {
  const logbook = logbookOf({ shots: [carried('good', 130), carried('bad', 130, slots)] });
  const { counted, leftOut: found } = countedShots(logbook, AS_OF);
  expect(found).toEqual([{ shotId: 'bad', why }]);
  expect(counted.map(({ shot }) => shot.id)).toEqual(['good']);
  const book = composeBook(logbook, AS_OF);
  expect(book.leftOut).toEqual(found);
  expect(book.cells).toEqual(composeBook(logbookOf({ shots: [carried('good', 130)] }), AS_OF).cells);
});

describe('what counts', () => {
  test.each([
    ['a carry', { carry: { m: 130 } }],
    ['a total alone', { total: { m: 135 } }],
    ['a total beside a bound that says nothing', { total: { m: 135 }, carryAtLeast_m: 0 }],
    ['a bound from below', { carryAtLeast_m: 120 }],
    ['a bound from above', { carryAtMost_m: 140 }],
    ['two bounds that agree', { carryAtLeast_m: 120, carryAtMost_m: 140 }],
    ['two bounds at one place', { carryAtLeast_m: 130, carryAtMost_m: 130 }],
    ['a carry, whatever the bounds beside it say', { carry: { m: 130 }, carryAtLeast_m: 150, carryAtMost_m: 140 }],
    ['a ball that was lost but seen to pitch', { carry: { m: 130 }, outcome: 'lost' }],
  ])('%s', (_, slots) => {
    const logbook = logbookOf({ shots: [shotOf('s', slots)] });
    expect(countedShots(logbook, AS_OF).counted.length).toBe(1);
    const cell = composeBook(logbook, AS_OF).cells.find(({ shotIds }) => shotIds.includes('s'));
    expect(cell?.stock_m).toBeGreaterThan(100);
    expect(cell?.stock_m).toBeLessThan(160);
  });

  test('a shot without an instant was hit on the day of its round', () => {
    const rounds = [...ROUNDS, roundOf('later', '2026-07-04')];
    const shots = [carried('a', 130), carried('b', 130, { roundId: 'later' })];
    const { counted, leftOut: found } = countedShots(logbookOf({ rounds, shots }), AS_OF);
    expect(counted.map(({ when }) => when)).toEqual(['2026-05-02']);
    expect(found).toEqual([{ shotId: 'b', why: 'hit after the day of this book' }]);
  });

  test('both lists come in order of the ids', () => {
    const shots = ['d', 'b', 'c', 'a'].map((id) => carried(id, 130, { intent: id > 'b' ? 'chip' : 'normal' }));
    const { counted, leftOut: found } = countedShots(logbookOf({ shots }), AS_OF);
    expect(counted.map(({ shot }) => shot.id)).toEqual(['a', 'b']);
    expect(found.map(({ shotId }) => shotId)).toEqual(['c', 'd']);
  });
});
