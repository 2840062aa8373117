import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placesAfterMove } from '../../src/golf/moveInOrder.ts';
import { inOrder, numberAfterLast, numberBetween, playingNumbers, shotsOfHole } from '../../src/golf/shotOrder.ts';
import { shotOf } from './shotOf.ts';

const shotsArbitrary = fc
  .uniqueArray(
    fc.record({
      id: fc.integer({ min: 0, max: 999 }).map((id) => `s${id}`),
      hole: fc.integer({ min: 1, max: 3 }),
      number: fc.constantFrom(0, 0.5, 1, 1.5, 2, 3, 999),
    }),
    { selector: (shot) => shot.id, minLength: 1, maxLength: 12 },
  )
  .map((slots) => slots.map(({ id, ...rest }) => shotOf(id, rest)));

test('shots stand by hole, then number, whatever order they come in', () => {
  const shots = [shotOf('c', { hole: 2 }), shotOf('b', { number: 2 }), shotOf('a', { number: 1.5 }), shotOf('d')];
  expect(inOrder(shots).map((shot) => shot.id)).toEqual(['d', 'a', 'b', 'c']);
});

test('of two shots with one number the earlier stands first, then the smaller id', () => {
  const later = shotOf('a', { at: '2026-05-02T10:05:00Z' });
  const earlier = shotOf('b', { at: '2026-05-02T10:00:00Z' });
  expect(inOrder([later, earlier]).map((shot) => shot.id)).toEqual(['b', 'a']);
  const halfSecond = shotOf('c', { at: '2026-05-02T10:00:00.500Z' });
  expect(inOrder([halfSecond, earlier]).map((shot) => shot.id)).toEqual(['b', 'c']);
  expect(inOrder([shotOf('y'), shotOf('x')]).map((shot) => shot.id)).toEqual(['x', 'y']);
});

test('every phone orders the same shots the same', () => {
  fc.assert(
    fc.property(
      shotsArbitrary.chain((shots) =>
        fc.tuple(fc.constant(shots), fc.shuffledSubarray(shots, { minLength: shots.length })),
      ),
      ([shots, shuffled]) => {
        expect(inOrder(shuffled)).toEqual(inOrder(shots));
      },
    ),
  );
});

// Source: R&A and USGA, Rules of Golf (2023), Rules 17.1d and 18.3: a ball lost off the tee makes the
// provisional the third stroke; a provisional that is not put in play is no stroke.
test('after a tee shot lost, the next is the third; an unused provisional has no number', () => {
  const lost = [shotOf('1', { outcome: 'lost', penalty: 1 }), shotOf('2', { number: 2 }), shotOf('3', { number: 3 })];
  expect([...playingNumbers(lost).values()]).toEqual([1, 3, 4]);
  const found = [shotOf('1'), shotOf('2', { number: 2, outcome: 'provisional unused' }), shotOf('3', { number: 3 })];
  expect([...playingNumbers(found).values()]).toEqual([1, null, 2]);
});

test('each hole counts from one', () => {
  const shots = [shotOf('a'), shotOf('b', { number: 2 }), shotOf('c', { hole: 2 })];
  expect(playingNumbers(shots).get('c')).toBe(1);
});

test('the number after the last is whole, and never beyond what a shot may hold', () => {
  expect(numberAfterLast([])).toBe(1);
  expect(numberAfterLast([{ number: 2.5 }, { number: 1 }])).toBe(3);
  expect(numberAfterLast([{ number: 999 }])).toBe(999);
});

test('a number between two lies between them until there is no room', () => {
  let [low, high] = [1, 2];
  let steps = 0;
  for (;;) {
    const between = numberBetween(low, high);
    if (between.kind === 'no room') break;
    expect(between.number).toBeGreaterThan(low);
    expect(between.number).toBeLessThan(high);
    if (steps % 2 === 0) high = between.number;
    else low = between.number;
    steps += 1;
  }
  expect(steps).toBeGreaterThan(20);
  expect(numberBetween(999, null).kind).toBe('no room');
});

test('a moved shot stands where it was put, and the others keep their order', () => {
  fc.assert(
    fc.property(shotsArbitrary, fc.nat(), fc.integer({ min: 1, max: 3 }), fc.nat(), (shots, which, hole, place) => {
      const { id } = shots[which % shots.length];
      const others = shotsOfHole(shots, hole).filter((shot) => shot.id !== id);
      const index = place % (others.length + 1);
      const places = placesAfterMove(shots, id, { hole, after: others[index - 1]?.id ?? null });
      const moved = shots.map((shot) => ({ ...shot, ...places.get(shot.id) }));
      const expected = others.map((shot) => shot.id).toSpliced(index, 0, id);
      expect(shotsOfHole(moved, hole).map((shot) => shot.id)).toEqual(expected);
    }),
  );
});

test('a move after a shot that is not on the hole goes to its end; an unknown shot is an error', () => {
  const shots = [shotOf('a'), shotOf('b', { number: 2 }), shotOf('c', { hole: 2 })];
  expect(placesAfterMove(shots, 'c', { hole: 1, after: 'nobody' }).get('c')).toEqual({ hole: 1, number: 3 });
  expect(() => placesAfterMove(shots, 'x', { hole: 1, after: null })).toThrow(RangeError);
});
