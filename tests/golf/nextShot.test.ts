import fc from 'fast-check';
import { expect, test } from 'vitest';
import { endedAs, penaltyStrokes } from '../../src/golf/endedAs.ts';
import { lies } from '../../src/golf/lie.ts';
import { nextShot, type PlayedFrom } from '../../src/golf/nextShot.ts';
import { missingSlots, openShots } from '../../src/golf/openShots.ts';
import { provisionalEntry, provisionalInPlay } from '../../src/golf/provisional.ts';
import { outcomeField, type Shot } from '../../src/golf/shot.ts';
import { blankEntry, entryOf, type ShotEntry } from '../../src/golf/shotEntry.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { shotOf } from './shotOf.ts';

const mark = { lat_deg: degrees(50), lon_deg: degrees(8), accuracy_m: metres(4), at: null };
const restOn = (slots: Partial<Shot>) => shotOf('1', { marks: { ball: null, pitch: null, rest: mark }, ...slots });

function entryAfter(shots: readonly Shot[], from?: PlayedFrom): ShotEntry {
  const next = nextShot(1, shots, from);
  if (next.kind !== 'shot') throw new Error(`${next.kind} is no shot`);
  return next.entry;
}

test('the first shot of a hole is a full swing from the tee, club and flag open', () => {
  expect(entryAfter([shotOf('x', { hole: 2, restLie: 'fairway' })])).toMatchObject({
    hole: 1,
    number: 1,
    lie: 'tee',
    swing: 'full',
    clubId: null,
    flag_m: null,
    fromDrop: false,
  });
});

test('the next ball lies where the last came to rest, and its mark is that of the rest', () => {
  const entry = entryAfter([restOn({ restLie: 'light rough', number: 1.5 })]);
  expect(entry).toMatchObject({ number: 2, lie: 'light rough' });
  expect(entry.marks.ball).toEqual(mark);
  expect(entryAfter([restOn({ restLie: null })]).lie).toBeNull();
});

test('on the green comes a putt; a ball holed or conceded ends the hole', () => {
  expect(nextShot(1, [shotOf('1', { restLie: 'green' })]).kind).toBe('putt');
  expect(nextShot(1, [shotOf('1', { restLie: 'holed' })]).kind).toBe('holed');
  expect(nextShot(1, [shotOf('1', { outcome: 'holed' })]).kind).toBe('holed');
  expect(nextShot(1, [shotOf('1', { outcome: 'conceded' })]).kind).toBe('holed');
});

// Source: R&A and USGA, Rules of Golf (2023), Rule 18.2b: stroke and distance, played again from where
// the last stroke was made; Rule 17.1d: relief by a drop.
test('a lost ball is played again from its place; a penalty area is followed by a drop', () => {
  expect(entryAfter([restOn({ lie: 'tee', outcome: 'lost' })])).toMatchObject({ lie: 'tee', fromDrop: false });
  expect(entryAfter([restOn({ lie: 'fairway', outcome: 'out of bounds' })])).toMatchObject({
    lie: 'fairway',
    fromDrop: true,
  });
  expect(entryAfter([restOn({ outcome: 'penalty area' })])).toMatchObject({ lie: null, fromDrop: true });
});

test('a drop or a replay breaks the chain of marks', () => {
  for (const from of ['drop', 'same place'] as const) {
    expect(entryAfter([restOn({ restLie: 'fairway' })], from).marks.ball).toBeNull();
  }
  expect(entryAfter([restOn({ restLie: 'green' })], 'drop').fromDrop).toBe(true);
});

test('an entry holds what a shot may hold, whatever was played before', () => {
  const shots = fc.array(
    fc.record({
      outcome: fc.constantFrom(...outcomeField.options),
      lie: fc.constantFrom(...lies, null),
      restLie: fc.constantFrom(...lies, 'green' as const, 'holed' as const, null),
    }),
    { maxLength: 6 },
  );
  fc.assert(
    fc.property(shots, (slots) => {
      const played = slots.map((slot, index) => shotOf(`${index}`, { ...slot, number: index + 1 }));
      const next = nextShot(1, played);
      if (next.kind === 'shot') expect(next.entry.number).toBe(played.length + 1);
      const provisional = provisionalEntry(1, played);
      expect(provisional).toMatchObject({ outcome: 'provisional unused', number: played.length + 1 });
    }),
  );
});

test('a provisional ball is from the same place and is passed over until the first is lost', () => {
  const first = shotOf('1', { lie: 'tee', restLie: 'heavy rough' });
  const entry = provisionalEntry(1, [first]);
  expect(entry).toMatchObject({ lie: 'tee', number: 2, outcome: 'provisional unused' });
  const provisional = shotOf('2', { ...entry, clubId: 'c1', restLie: 'fairway' });
  expect(provisionalEntry(1, [first, provisional])).toMatchObject({ lie: 'fairway', number: 3 });
  expect(entryAfter([first, provisional]).lie).toBe('heavy rough');

  const edits = provisionalInPlay([first, provisional], '1', 'lost');
  expect(edits.map((edit) => edit.id)).toEqual(['1', '2']);
  const after = [first, provisional].map((shot, index) => shotOf(shot.id, { ...shot, ...edits[index].changes }));
  expect(after.map((shot) => [shot.outcome, shot.penalty])).toEqual([
    ['lost', 1],
    ['in play', 0],
  ]);
  expect(entryAfter(after).lie).toBe('fairway');
  expect(() => provisionalInPlay([first], 'x', 'lost')).toThrow(RangeError);
});

test('an outcome brings its penalty stroke and takes it away again', () => {
  expect(endedAs('penalty area')).toEqual({ outcome: 'penalty area', penalty: 1, restLie: null });
  expect(endedAs('in play')).toEqual({ outcome: 'in play', penalty: 0 });
  expect(endedAs('holed')).toEqual({ outcome: 'holed', penalty: 0, restLie: 'holed' });
  expect(outcomeField.options.filter((outcome) => penaltyStrokes(outcome) === 1)).toEqual([
    'penalty area',
    'out of bounds',
    'lost',
  ]);
});

test('open shots: a measure is asked for only where the book would use it', () => {
  const bare = shotOf('1', { clubId: null });
  expect(missingSlots(bare)).toEqual(['club', 'lie', 'measure']);
  const measured = { lie: 'tee', carry: { m: metres(200), by: 'typed', error_m: null } } as const;
  expect(missingSlots(shotOf('1', measured))).toEqual([]);
  expect(missingSlots(shotOf('1', { lie: 'tee', carryAtLeast_m: metres(210) }))).toEqual([]);
  expect(missingSlots(shotOf('1', { lie: 'tee', outcome: 'lost' }))).toEqual([]);
  expect(missingSlots(shotOf('1', { lie: 'bare', intent: 'chip' }))).toEqual([]);
  expect(missingSlots(shotOf('1', { outcome: 'conceded', clubId: null }))).toEqual([]);
  const shots = [shotOf('b', { hole: 2 }), shotOf('a', measured), shotOf('c', { lie: 'fairway', number: 2 })];
  expect(openShots(shots).map((open) => open.shot.id)).toEqual(['c', 'b']);
});

test('open shots: a tee shot may stay unmeasured once its club is noted, unless it was played at a flag', () => {
  expect(missingSlots(shotOf('1', { lie: 'tee', strike: 'solid' }))).toEqual([]);
  expect(missingSlots(shotOf('1', { lie: 'tee' }))).toEqual([]);
  expect(missingSlots(shotOf('1', { lie: 'tee', flag_m: metres(150) }))).toEqual(['measure']);
  expect(missingSlots(shotOf('1', { lie: 'tee', clubId: null }))).toEqual(['club', 'measure']);
  expect(missingSlots(shotOf('1', { lie: 'fairway', strike: 'solid' }))).toEqual(['measure']);
});

test('an entry is the shot without what the logbook gave it', () => {
  const { id: _id, roundId: _roundId, changedAt: _changedAt, device: _device, ...slots } = shotOf('1', { hole: 3 });
  expect(entryOf(shotOf('1', { hole: 3 }))).toEqual(slots);
  expect(blankEntry(3, 2)).toMatchObject({ hole: 3, number: 2, clubId: null });
  expect(() => blankEntry(55, 1)).toThrow(RangeError);
});
