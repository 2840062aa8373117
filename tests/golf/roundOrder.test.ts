import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bagGate } from '../../src/golf/bagGate.ts';
import { rememberedStart, startingHoles } from '../../src/golf/newRound.ts';
import { puttsByCount } from '../../src/golf/putts.ts';
import { holeAfter, holeBefore, holeNumbers, roundOrder } from '../../src/golf/roundOrder.ts';
import { holeInPlay, scoreRound } from '../../src/golf/scoreRound.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { metres } from '../../src/units/metres.ts';
import { roundOf, shotOf } from './shotOf.ts';

test('eighteen holes go round from the first; nine stay on their loop', () => {
  expect(holeNumbers(18, 7)).toEqual([7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 1, 2, 3, 4, 5, 6]);
  expect(holeNumbers(9, 5)).toEqual([5, 6, 7, 8, 9, 1, 2, 3, 4]);
  expect(holeNumbers(9, 10)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18]);
  expect(holeNumbers(9, 27)).toEqual([27, 19, 20, 21, 22, 23, 24, 25, 26]);
  expect(() => holeNumbers(9, 0)).toThrow(RangeError);
  expect(() => holeNumbers(18, 55)).toThrow(RangeError);
});

test('from any start each hole is played once, and the round tells the same order', () => {
  fc.assert(
    fc.property(fc.constantFrom<9 | 18>(9, 18), fc.integer({ min: 1, max: 54 }), (count, startHole) => {
      const numbers = holeNumbers(count, startHole);
      expect(new Set(numbers).size).toBe(count);
      expect(numbers[0]).toBe(startHole);
      const start = { ...rememberedStart([]), holes: count, startHole };
      const round = roundOf('r', { startHole, holes: startingHoles(start, []) });
      expect(roundOrder(round)).toEqual(numbers);
      expect(holeAfter(round, numbers[0])).toBe(numbers[1]);
      expect(holeBefore(round, numbers[1])).toBe(numbers[0]);
      expect(holeAfter(round, numbers[count - 1])).toBeNull();
      expect(holeBefore(round, startHole)).toBeNull();
    }),
  );
});

test('the score of a round counts the holes that are over, and the hole in play is the next', () => {
  const round = roundOf('r1', { startHole: 17 });
  const holes = round.holes.map((hole) => (hole.number === 17 ? { ...hole, putts: puttsByCount(2, null) } : hole));
  const shots = [
    shotOf('1', { hole: 17 }),
    shotOf('2', { hole: 17, number: 2, restLie: 'green' }),
    shotOf('3', { hole: 18 }),
  ];
  const score = scoreRound({ ...round, holes }, shots);
  expect(score).toMatchObject({ strokes: 4, par: 4, toPar: 0, putts: 2, complete: false });
  expect(score.holes[0].number).toBe(17);
  expect(holeInPlay({ ...round, holes }, shots)).toBe(18);
  expect(() => holeInPlay({ ...round, holes: [] }, [])).toThrow(RangeError);
});

test('a hole picked up gives no complete round, an unknown par no score to par', () => {
  const holes = [1, 2].map((number) => ({ ...roundOf('r').holes[number - 1], strokes: 5 }));
  expect(scoreRound(roundOf('r1', { holes }), [])).toMatchObject({ strokes: 10, toPar: 2, complete: true });
  const picked = holes.map((hole) => (hole.number === 2 ? { ...hole, result: 'picked up' as const } : hole));
  expect(scoreRound(roundOf('r1', { holes: picked }), [])).toMatchObject({ strokes: 5, toPar: 1, complete: false });
  const noPar = holes.map((hole) => ({ ...hole, par: null }));
  expect(scoreRound(roundOf('r1', { holes: noPar }), [])).toMatchObject({ par: null, toPar: null });
});

test('a course played before gives the pars and lengths last noted on those tees', () => {
  const hole = (par: number | null, length: number | null) => [
    { ...roundOf('r').holes[0], par, length_m: length === null ? null : metres(length), strokes: 5 },
  ];
  const played = { course: 'Larch Hill (invented)', tees: 'white', closed: true };
  const earlier = [
    roundOf('b', { ...played, date: '2026-05-03', holes: hole(5, null) }),
    roundOf('a', { ...played, date: '2026-05-01', holes: hole(4, 480) }),
    roundOf('c', { ...played, tees: 'red', date: '2026-05-04', holes: hole(3, 150) }),
  ];
  const remembered = rememberedStart(earlier);
  expect(remembered).toMatchObject({ course: 'Larch Hill (invented)', tees: 'red', holes: 18 });
  const holes = startingHoles({ ...remembered, tees: 'white' }, earlier);
  expect(holes).toHaveLength(18);
  expect(holes[0]).toMatchObject({ par: 5, length_m: 480, strokes: null });
  expect(startingHoles({ ...remembered, course: '' }, [roundOf('x', { holes: hole(4, 300) })])[0].par).toBeNull();
  expect(startingHoles({ ...remembered, play: 'practice ground' }, earlier)).toHaveLength(1);
});

// Source: R&A and USGA, Rules of Golf (2023), Rule 4.1b(1): not more than fourteen clubs.
test('fourteen clubs pass the gate, fifteen do not, and a club out of the bag does not count', () => {
  const clubs = (count: number) => Array.from({ length: count }, () => ({ inBag: true }));
  expect(bagGate([...clubs(14), { inBag: false }])).toEqual({ kind: 'within', clubs: 14 });
  expect(bagGate(clubs(15))).toEqual({ kind: 'too many', clubs: 15, over: 1 });
});

test('the typical bag has thirteen clubs, one of them the putter, lofts rising', () => {
  const bag = typicalBag();
  const lofts = bag.filter((club) => club.kind !== 'putter').map((club) => club.spec.loft_deg);
  expect(bag).toHaveLength(13);
  expect(lofts).toHaveLength(12);
  expect(lofts).toEqual([...lofts].sort((one, other) => one - other));
});
