import { expect, test } from 'vitest';
import type { Club } from '../../../../src/golf/club.ts';
import type { Shot } from '../../../../src/golf/shot.ts';
import { blankEntry } from '../../../../src/golf/shotEntry.ts';
import { clubsOfBag } from '../../../../src/screens/round/shot/clubsOfBag.ts';
import { enterDistance } from '../../../../src/screens/round/shot/enterDistance.ts';
import { ballPlayed } from '../../../../src/screens/round/shot/nextBall.ts';
import { draftOf, formOfDraft } from '../../../../src/screens/round/shot/shotDraft.ts';
import { newForm, openSlot } from '../../../../src/screens/round/shot/shotForm.ts';
import { shotLine } from '../../../../src/screens/round/shot/shotLine.ts';
import { metresFromYards, yards } from '../../../../src/units/yards.ts';
import { roundOf, shotOf } from '../../../golf/shotOf.ts';
import { clubs, on } from './golfer.ts';

const yd = (figure: number) => metresFromYards(yards(figure));

test('a draft comes back as the form it was', () => {
  const form = {
    ...newForm({ ...blankEntry(7, 2), lie: 'fairway' }, 'paced', on(4)),
    typed: '14',
    passed: ['lie'] as const,
  };
  const stored = JSON.parse(JSON.stringify(draftOf(form, 'r1')));
  const at = { roundId: 'r1', hole: 7, shotId: null, logged: [1] };
  expect(formOfDraft(stored, at)).toEqual(form);
  expect(formOfDraft(stored, { ...at, roundId: 'r2' })).toBeNull();
  expect(formOfDraft(stored, { ...at, hole: 8 })).toBeNull();
  expect(formOfDraft(stored, { ...at, shotId: 's1' })).toBeNull();
  expect(formOfDraft(null, at)).toBeNull();
});

test('a draft whose shot was logged before the app died is not entered twice', () => {
  const draft = draftOf(newForm(blankEntry(7, 2), 'laser', on(4)), 'r1');
  expect(formOfDraft(draft, { roundId: 'r1', hole: 7, shotId: null, logged: [1, 2] })).toBeNull();
});

const wedge = shotOf('s1', {
  clubId: '54-',
  swing: '9:00',
  lie: 'fairway',
  strike: 'solid',
  flag_m: yd(78),
  carry: { m: yd(74), by: 'laser', error_m: null },
  offline_m: yd(-3),
});

test('a casual round shows the carry of a shot; by the Rules only what was entered, until the round is over', () => {
  const line = (play: 'casual' | 'rules', closed = false) =>
    shotLine(wedge, clubs, 'yards', roundOf('r1', { play, closed }));
  expect(line('casual').what).toBe('54° at 9:00, fairway, solid');
  expect(line('casual').measured).toMatch(/^carry 74\u00a0yd ± \d$/);
  expect(line('rules').measured).toBe('flag 78\u00a0yd, 4 short, 3 left');
  expect(line('rules').measured).not.toContain('74');
  expect(line('rules', true).measured).toMatch(/^carry 74/);
});

test('bounds, totals and balls that are gone have their words', () => {
  const round = roundOf('r1', { play: 'rules' });
  const said = (slots: Parameters<typeof shotOf>[1]) => shotLine(shotOf('s2', slots), clubs, 'yards', round);
  expect(said({ clubId: 'driver', lie: 'tee', carryAtLeast_m: yd(238) })).toEqual({
    what: 'driver, tee',
    measured: 'cleared 238\u00a0yd',
  });
  expect(said({ clubId: null, total: { m: yd(200), by: 'typed', error_m: null } })).toEqual({
    what: 'club open, lie open',
    measured: 'total 200\u00a0yd',
  });
  expect(said({ clubId: 'driver', lie: 'tee', outcome: 'out of bounds' }).what).toBe('driver, tee, out of bounds');
});

test('the keys of the bag stand in loft order, driver first, wedges and putter last', () => {
  const shuffled = [...clubs].reverse();
  const names = clubsOfBag(shuffled, roundOf('r1', { bag: [] })).map((club) => club.name);
  expect(names.slice(0, 2)).toEqual(['driver', '3 wood']);
  expect(names.slice(-3)).toEqual(['54°', '58°', 'putter']);
  const started = { bag: ['driver', 'putter'] };
  const carried = (closed: boolean, now: readonly Club[]) =>
    clubsOfBag(now, roundOf('r1', { ...started, closed })).map((club) => club.id);
  expect(carried(true, clubs)).toEqual(['driver', 'putter']);
  // A club that came into the bag since the start is carried too, and one taken out can still be named.
  const now = clubs.map((club) => ({ ...club, inBag: ['3-wood', 'putter'].includes(club.id) }));
  expect(carried(false, now)).toEqual(['driver', '3-wood', 'putter']);
});

// Source: R&A and USGA, Rules of Golf (2023), Rules 16, 17.1, 18.2 and 19.
test('another ball: free relief costs nothing, an unplayable ball one stroke, a lost one stroke and distance', () => {
  const onHole = [shotOf('a', { number: 1, lie: 'tee', restLie: null }), shotOf('b', { number: 2, lie: 'fairway' })];
  expect(ballPlayed({ kind: 'drop', strokes: 0 }, 1, onHole)).toMatchObject({ edits: [], entry: { fromDrop: true } });
  expect(ballPlayed({ kind: 'drop', strokes: 1 }, 1, onHole)).toMatchObject({
    edits: [{ id: 'b', changes: { penalty: 1 } }],
    entry: { fromDrop: true, number: 3 },
  });
  expect(ballPlayed({ kind: 'same place' }, 1, onHole)).toMatchObject({
    edits: [{ id: 'b', changes: { penalty: 1 } }],
    entry: { lie: 'fairway' },
  });
  expect(ballPlayed({ kind: 'ended', outcome: 'lost' }, 1, onHole)).toMatchObject({
    edits: [{ id: 'b', changes: { outcome: 'lost', penalty: 1 } }],
    entry: null,
  });
  expect(ballPlayed({ kind: 'provisional' }, 1, onHole)).toMatchObject({
    edits: [],
    entry: { outcome: 'provisional unused', lie: 'fairway' },
  });
});

// Source: R&A and USGA, Rules of Golf (2023), Rules 17.1d and 18.2b: one stroke in all, however the ball comes back.
// Local Rule E-5, from memory: a drop for a ball lost or out of bounds, two strokes in all.
test('what a lost ball or a penalty area cost is not counted once more, nor a key tapped twice', () => {
  const after = (outcome: Shot['outcome'], penalty: number, ball: Parameters<typeof ballPlayed>[0]) =>
    ballPlayed(ball, 1, [shotOf('a', { number: 1, lie: 'tee', restLie: null, outcome, penalty })]).edits;
  expect(after('penalty area', 1, { kind: 'drop', strokes: 0 })).toEqual([]);
  expect(after('penalty area', 1, { kind: 'same place' })).toEqual([]);
  expect(after('lost', 1, { kind: 'same place' })).toEqual([]);
  expect(after('out of bounds', 1, { kind: 'drop', strokes: 1 })).toEqual([{ id: 'a', changes: { penalty: 2 } }]);
  expect(after('lost', 2, { kind: 'drop', strokes: 1 })).toEqual([]);
  expect(after('in play', 1, { kind: 'drop', strokes: 1 })).toEqual([]);
  expect(after('in play', 1, { kind: 'same place' })).toEqual([]);
  expect(after('in play', 1, { kind: 'drop', strokes: 0 })).toEqual([{ id: 'a', changes: { penalty: 0 } }]);
});

test('digits become the distance of the open slot in the golfer’s unit, and only the flag is lasered', () => {
  const flag = newForm({ ...blankEntry(1, 2), lie: 'fairway' }, 'laser', on(4));
  expect(enterDistance(flag, '147', 'yards', on(4))).toMatchObject({
    kind: 'entered',
    form: { slot: 'club', entry: { flag_m: 147 * 0.9144 } },
  });
  const total = openSlot(flag, 'total');
  expect(enterDistance(total, '210', 'metres', on(4))).toMatchObject({
    kind: 'entered',
    form: { entry: { total: { m: 210, by: 'typed' } } },
  });
  expect(enterDistance(total, '999', 'yards', on(4))).toEqual({ kind: 'outside' });
  expect(enterDistance(openSlot(flag, 'club'), '10', 'yards', on(4))).toEqual({ kind: 'outside' });
});
