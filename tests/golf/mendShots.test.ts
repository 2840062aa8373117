import { expect, test } from 'vitest';
import { joinShots } from '../../src/golf/joinShots.ts';
import { splitShot } from '../../src/golf/splitShot.ts';
import { swapClub } from '../../src/golf/swapClub.ts';
import { metres } from '../../src/units/metres.ts';
import { shotOf } from './shotOf.ts';

// How a round is put right afterwards is our own choice: common practice, no source. Clubs and figures are invented.

const carry = { m: metres(134), by: 'laser', error_m: null } as const;
const total = { m: metres(141), by: 'gnss', error_m: null } as const;
const here = { lat_deg: 50, lon_deg: 8, accuracy_m: metres(4), at: '2026-05-02T10:00:00.000Z' };

test('a club noted wrongly all day is exchanged where it was noted, and nowhere else', () => {
  const shots = [shotOf('a', { clubId: '7i' }), shotOf('b', { clubId: '8i' }), shotOf('c', { clubId: null })];
  expect(swapClub(shots, '7i', '6i')).toEqual([{ id: 'a', changes: { clubId: '6i' } }]);
  expect(swapClub(shots, null, '6i')).toEqual([{ id: 'c', changes: { clubId: '6i' } }]);
  expect(swapClub(shots, '7i', '7i')).toEqual([]);
});

test('an entry that was two shots: the flight stays with the first, the end goes to the second', () => {
  const entry = shotOf('a', { lie: 'fairway', flag_m: metres(150), strike: 'thin', carry, restLie: 'green' });
  const { first, second } = splitShot(entry);
  expect({ ...entry, ...first }).toMatchObject({
    clubId: 'c1',
    strike: 'thin',
    carry,
    restLie: null,
    outcome: 'in play',
  });
  expect(second).toMatchObject({ hole: 1, clubId: null, lie: null, flag_m: null, carry: null, restLie: 'green' });
  const wet = splitShot(shotOf('a', { outcome: 'penalty area', penalty: 1 }));
  expect([wet.first.outcome, wet.first.penalty]).toEqual(['in play', 0]);
  expect([wet.second.outcome, wet.second.penalty]).toEqual(['penalty area', 1]);
  const two = splitShot(shotOf('a', { outcome: 'provisional unused' }));
  expect([two.first.outcome, two.second.outcome]).toEqual(['provisional unused', 'provisional unused']);
});

test('a total taken to the mark of the rest goes with that mark; one that was typed stays', () => {
  const marks = { ball: here, pitch: null, rest: here };
  const walked = splitShot(shotOf('a', { total, marks } as never));
  expect(walked.first.total).toBeNull();
  expect(walked.first.marks).toMatchObject({ rest: null });
  expect(walked.first.marks?.ball).not.toBeNull();
  expect(walked.second.marks.rest).not.toBeNull();
  expect(splitShot(shotOf('a', { total })).first).not.toHaveProperty('total');
});

test('two entries that were one: what the first left open comes from the second, and the end is the second’s', () => {
  const first = shotOf('a', {
    clubId: null,
    lie: 'fairway',
    strike: 'solid',
    restLie: 'fairway',
    note: 'into the sun',
  });
  const second = shotOf('b', {
    number: 2,
    clubId: '9i',
    swing: '9:00',
    lie: 'bare',
    flag_m: metres(130),
    carry,
    restLie: 'green',
    tags: ['wet'],
  });
  const joined = { ...first, ...joinShots(first, second) };
  expect(joined).toMatchObject({ id: 'a', clubId: '9i', swing: '9:00', lie: 'fairway', strike: 'solid', carry });
  expect(joined).toMatchObject({ flag_m: 130, restLie: 'green', tags: ['wet'], note: 'into the sun' });
  expect(joinShots(second, first)).toMatchObject({ clubId: '9i', carry, restLie: 'fairway' });
  const open = shotOf('c', { number: 3 });
  expect(joinShots(second, open)).toMatchObject({ restLie: 'green', outcome: 'in play' });
  const lost = shotOf('d', { outcome: 'lost', penalty: 1 });
  expect(joinShots(second, lost)).toMatchObject({ restLie: null, outcome: 'lost', penalty: 1 });
});

test('splitting and joining again gives back what there was', () => {
  const entry = shotOf('a', {
    lie: 'fairway',
    flag_m: metres(150),
    carry,
    restLie: 'holed',
    outcome: 'holed',
    note: 'x',
  });
  const { first, second } = splitShot(entry);
  const parted = { ...entry, ...first };
  expect({ ...parted, ...joinShots(parted, { ...entry, ...second, id: 'b' }) }).toEqual(entry);
});
