import { expect, test } from 'vitest';
import type { Shot } from '../../../../src/golf/shot.ts';
import { blankEntry, type ShotChanges } from '../../../../src/golf/shotEntry.ts';
import { restedAt } from '../../../../src/screens/round/shot/restedAt.ts';
import {
  editForm,
  fill,
  knownBy,
  newForm,
  note,
  openSlot,
  pitch,
  reopened,
  type ShotForm,
  skip,
  typeDigit,
} from '../../../../src/screens/round/shot/shotForm.ts';
import type { Slot } from '../../../../src/screens/round/shot/slots.ts';
import { metres } from '../../../../src/units/metres.ts';
import { on } from './golfer.ts';

const at = (long: number, right: number) => ({ long_m: metres(long), right_m: metres(right) });
const form = (changes: ShotChanges, par: number | null = 4) =>
  newForm({ ...blankEntry(1, 2), ...changes }, 'laser', on(par));

/** Fills the slots one after the other and says which slot was open before each. */
function walked(first: ShotForm, steps: readonly ShotChanges[], par: number | null = 4): (Slot | null)[] {
  let now = first;
  return steps.map((changes) => {
    const { slot } = now;
    now = fill(now, changes, on(par));
    return slot;
  });
}

test('an approach is asked in the order it is lived: flag before, club and strike after impact, pitch at the green', () => {
  const first = form({ lie: 'fairway' });
  const steps: ShotChanges[] = [{ flag_m: metres(130) }, { clubId: '8-iron' }, { strike: 'thin' }];
  expect(walked(first, steps)).toEqual(['flag', 'club', 'strike']);
  const atGreen = steps.reduce((now, changes) => fill(now, changes, on(4)), first);
  expect(atGreen.slot).toBe('pitch');
  const done = pitch(atGreen, at(-4, -3), true, on(4));
  expect(done.slot).toBeNull();
  expect(done.entry).toMatchObject({ carry: { m: 126, by: 'laser' }, offline_m: -3, restLie: 'green' });
});

test('a pitch off the green leaves open where the ball lies now', () => {
  const hit = fill(form({ lie: 'fairway', flag_m: metres(130), clubId: '8-iron' }), { strike: 'fat' }, on(4));
  const short = pitch(hit, at(-25, 0), false, on(4));
  expect(short.slot).toBe('rest');
  expect(short.entry.restLie).toBeNull();
  expect(fill(short, restedAt(short.entry, 'greenside bunker'), on(4)).slot).toBeNull();
});

test('a wedge is asked for its swing, another club is full unless said otherwise', () => {
  const flagged = form({ lie: 'fairway', flag_m: metres(70) });
  const wedge = fill(flagged, { clubId: '54-' }, on(4));
  expect(wedge.slot).toBe('swing');
  expect(fill(wedge, { swing: '9:00' }, on(4))).toMatchObject({ slot: 'strike', entry: { swing: '9:00' } });
  const iron = fill(flagged, { clubId: '8-iron' }, on(4));
  expect(iron).toMatchObject({ slot: 'strike', entry: { swing: 'full' } });
  // Another wedge chosen later is asked anew.
  const changed = fill(openSlot(fill(wedge, { swing: '9:00' }, on(4)), 'club'), { clubId: '58-' }, on(4));
  expect(changed.slot).toBe('swing');
});

test('a tee shot is asked for a flag on a par 3 only, and never for what it carried', () => {
  expect(form({ lie: 'tee' }, 3).slot).toBe('flag');
  for (const par of [4, 5, null]) {
    const drive = form({ lie: 'tee' }, par);
    expect(walked(drive, [{ clubId: 'driver' }, { strike: 'solid' }, { restLie: 'fairway' }], par)).toEqual([
      'club',
      'strike',
      'rest',
    ]);
  }
});

test('a chip is asked neither flag nor swing', () => {
  const chip = fill(form({ lie: 'light rough' }), { intent: 'chip' }, on(4));
  expect(walked(chip, [{ clubId: '58-' }, { strike: 'solid' }, { restLie: 'green' }])).toEqual([
    'club',
    'strike',
    'rest',
  ]);
  expect(form({ lie: 'light rough', intent: 'chip' }).slot).toBe('club');
});

test('an unknown lie comes first, and a slot skipped is not asked again', () => {
  const unknown = form({});
  expect(unknown.slot).toBe('lie');
  let now = unknown;
  const asked: (Slot | null)[] = [];
  while (now.slot !== null) {
    asked.push(now.slot);
    now = skip(now, on(4));
  }
  expect(asked).toEqual(['lie', 'flag', 'club', 'strike', 'rest']);
  expect(now.entry).toEqual(unknown.entry);
});

test('a flag or an aim put right takes the pitch along', () => {
  const pitched = pitch(form({ lie: 'fairway', flag_m: metres(100), clubId: '50-' }), at(-5, 4), true, on(4));
  const flag = fill(openSlot(pitched, 'flag'), { flag_m: metres(110) }, on(4));
  expect(flag.entry).toMatchObject({ carry: { m: 105 }, offline_m: 4 });
  const aimed = fill(openSlot(flag, 'aim'), { aim: { long_m: metres(0), right_m: metres(6) } }, on(4));
  expect(aimed.entry).toMatchObject({ carry: { m: 105 }, offline_m: -2 });
  expect(knownBy(openSlot(aimed, 'flag by'), 'paced', on(4)).entry.carry).toMatchObject({ m: 105, by: 'paced' });
});

test('a tag, an intent or a note leaves the slot where it is', () => {
  const more = openSlot(form({ lie: 'fairway' }), 'more');
  expect(note(more, { tags: ['flier'] })).toMatchObject({ slot: 'more', entry: { tags: ['flier'] } });
});

test('digits go into a number slot only, three at most, and no nought before', () => {
  const flag = form({ lie: 'fairway' });
  const typed = (digits: readonly (string | null)[], from = flag) => digits.reduce(typeDigit, from).typed;
  expect(typed(['1', '4', '7'])).toBe('147');
  expect(typed(['1', '4', '7', '9'])).toBe('147');
  expect(typed(['0', '9'])).toBe('9');
  expect(typed(['1', '4', null])).toBe('1');
  expect(typed(['x'])).toBe('');
  expect(typed(['1'], openSlot(flag, 'club'))).toBe('');
});

test('a shot taken back opens on the slot that logged it, and filling that logs it again', () => {
  const entry = { ...blankEntry(1, 1), lie: 'tee' as const, clubId: 'driver', restLie: 'fairway' as const };
  const again = reopened(entry, 'laser');
  expect(again.slot).toBe('rest');
  expect(fill(again, { restLie: 'light rough' }, on(4)).slot).toBeNull();
});

test('a logged shot opened again asks first for what is missing', () => {
  const entry = { ...blankEntry(1, 1), lie: 'fairway' as const, clubId: '54-', flag_m: metres(70) };
  expect(editForm('s1', entry, 'laser', on(4)).slot).toBe('strike');
  expect(editForm('s1', { ...entry, clubId: null }, 'laser', on(4)).slot).toBe('club');
});

// Source: R&A and USGA, Rules of Golf (2023), Rule 18.3c: a provisional ball counts only once the first is given up.
test('a provisional ball stays provisional wherever it lies, and any other ball comes to rest in play', () => {
  const provisional = { ...blankEntry(1, 2), outcome: 'provisional unused' as const };
  expect({ ...provisional, ...restedAt(provisional, 'fairway') }).toMatchObject({
    outcome: 'provisional unused',
    restLie: 'fairway',
  });
  const lost: Pick<Shot, 'outcome' | 'penalty'> = { outcome: 'lost', penalty: 1 };
  const found = { ...blankEntry(1, 2), ...lost };
  expect({ ...found, ...restedAt(found, 'heavy rough') }).toMatchObject({ outcome: 'in play', penalty: 0 });
});
