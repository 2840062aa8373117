import { expect, test } from 'vitest';
import { blankEntry, type ShotChanges } from '../../../../src/golf/shotEntry.ts';
import { sentenceParts, sentenceText, type Writing } from '../../../../src/screens/round/shot/sentenceParts.ts';
import { newForm, openSlot, type ShotForm } from '../../../../src/screens/round/shot/shotForm.ts';
import { metresFromYards, yards } from '../../../../src/units/yards.ts';
import { on } from './golfer.ts';

const yd = (figure: number) => metresFromYards(yards(figure));
const of = (changes: ShotChanges) => newForm({ ...blankEntry(1, 2), ...changes }, 'laser', on(4));
const text = (form: ShotForm, writing: Partial<Writing> = {}) =>
  sentenceText(sentenceParts(form, { club: null, unit: 'yards', asking: on(4), ...writing }));

const wedge: ShotChanges = {
  clubId: '54-',
  swing: '9:00',
  lie: 'fairway',
  flag_m: yd(78),
  strike: 'solid',
  carry: { m: yd(74), by: 'laser', error_m: null },
  offline_m: yd(-3),
  restLie: 'green',
};

test('a shot with every slot filled reads as a sentence', () => {
  expect(text(of(wedge), { club: '54°' })).toBe(
    '54° at 9:00 from fairway, flag 78 by laser, struck solid, pitched 4 short, 3 left, now on the green.',
  );
});

test('what was not said stands open, and the slot being filled asks', () => {
  const form = of({ lie: 'fairway' });
  expect(text(form)).toBe('… from fairway, flag how far, struck …, now ….');
  expect(text({ ...form, typed: '14' })).toBe('… from fairway, flag 14_, struck …, now ….');
  const slots = sentenceParts(form, { club: null, unit: 'yards', asking: on(4) }).filter(
    (part) => part.kind === 'slot',
  );
  expect(slots.map(({ slot, isOpen, isActive }) => [slot, isOpen, isActive])).toEqual([
    ['club', true, false],
    ['lie', false, false],
    ['flag', true, true],
    ['strike', true, false],
    ['rest', true, false],
  ]);
});

test('a tee shot names no flag, and says what it cleared, or how far it went in all', () => {
  const drive: ShotChanges = { lie: 'tee', clubId: 'driver', strike: 'toe', restLie: 'light rough' };
  expect(text(of({ ...drive, carryAtLeast_m: yd(238) }), { club: 'driver' })).toBe(
    'Driver full from tee, struck toe, cleared 238, now in light rough.',
  );
  expect(text(of({ ...drive, total: { m: yd(251), by: 'typed', error_m: null } }), { club: 'driver' })).toBe(
    'Driver full from tee, struck toe, in all 251, now in light rough.',
  );
});

test('a tee shot of a hole whose par nobody noted can have a flag', () => {
  expect(text(of({ lie: 'tee' }), { asking: on(null) })).toContain('from tee, flag …, struck');
  expect(text(of({ lie: 'tee' }), { asking: on(4) })).not.toContain('flag');
});

test('a carry that was typed is no pitch, and both units speak', () => {
  const typed = of({ ...wedge, offline_m: null });
  expect(text(typed, { club: '54°' })).toContain(', struck solid, carried 74, now');
  expect(text(typed, { club: '54°', unit: 'metres' })).toContain(', carried 68, now');
});

test('drop, provisional, intent, tags, aim and note have their words', () => {
  const form = of({
    ...wedge,
    swing: 'full',
    intent: 'knockdown',
    tags: ['flier', 'wet'],
    fromDrop: true,
    outcome: 'provisional unused',
    aim: { long_m: yd(0), right_m: yd(-5) },
    note: 'ball in a divot',
  });
  expect(text(form, { club: '54°' })).toBe(
    'Provisional ball: 54° full (knockdown) from a drop, fairway (flier, wet), flag 78 by laser, aimed pin high, 5 left, struck solid, pitched 4 short, 8 left, now on the green. Note: ball in a divot',
  );
  expect(text(of({ ...wedge, restLie: null, outcome: 'out of bounds' }))).toContain(', now out of bounds.');
});

test('a slot that is opened appears even when the shot has not filled it', () => {
  expect(text(openSlot(of({ lie: 'tee' }), 'total'))).toBe('… from tee, struck …, in all how far, now ….');
});
