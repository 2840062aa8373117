import { expect, test } from 'vitest';
import {
  type Faces,
  meantKey,
  NOTHING_TYPED,
  type Typing,
  typeAhead,
} from '../../../../src/screens/round/shot/typeAhead.ts';

const row = ['Undo', 'More', 'Skip', 'Log it'];
const clubs: Faces = {
  pad: ['driver', '3 wood', '4 hybrid', '5 iron', '6 iron', '7 iron', 'PW', '50°', '54°', '58°', 'putter'],
  row,
};
const strikes: Faces = { pad: ['solid', 'thin', 'fat', 'heel', 'toe'], row };
const rests: Faces = { pad: ['fairway', 'light rough', 'lost', 'fairway bunker', 'penalty area', 'holed'], row };

/** Types a word letter by letter; the faces change to `then` once a key was pressed. Tells the faces pressed and what is left. */
function type(word: string, faces: Faces, then: Faces = faces, pause_ms = 100) {
  let typing: Typing = NOTHING_TYPED;
  const pressed: string[] = [];
  for (const [index, letter] of [...word].entries()) {
    const now = pressed.length > 0 ? then : faces;
    const { typing: next, press } = typeAhead(now, typing, letter, index * pause_ms);
    typing = next;
    if (press) pressed.push(now[press.of][press.index] ?? '');
  }
  return { pressed, typed: typing.typed };
}

test.each([
  ['7i', '7 iron'],
  ['dr', 'driver'],
  ['54', '54°'],
  ['pw', 'PW'],
  ['pu', 'putter'],
  ['4h', '4 hybrid'],
  ['3W', '3 wood'],
  ['5 i', '5 iron'],
  ['sk', 'Skip'],
] as const)('%s presses %s alone, and nothing of the pad after it', (word, face) => {
  expect(type(word, clubs, strikes)).toEqual({ pressed: [face], typed: '' });
});

test('a word typed to its end presses one key; after a pause its letters begin anew', () => {
  expect(type('solid', strikes, rests)).toEqual({ pressed: ['solid'], typed: '' });
  expect(type('putter', clubs, strikes)).toEqual({ pressed: ['putter'], typed: '' });
  expect(type('soli', strikes, rests, 1000).pressed).toEqual(['solid', 'light rough']);
});

test('a lone digit waits; Enter means the first that begins so, or the one typed in full', () => {
  expect(type('7', clubs)).toEqual({ pressed: [], typed: '7' });
  const meant = (faces: Faces, typed: string) => {
    const key = meantKey(faces, typed);
    return key && faces[key.of][key.index];
  };
  expect(meant(clubs, '7')).toBe('7 iron');
  expect(meant(clubs, '5')).toBe('5 iron');
  expect(meant(rests, 'fairway')).toBe('fairway');
  expect(meant({ pad: ['30', '3', '3 putts'], row: [] }, '3')).toBe('3');
  expect(meant(clubs, '')).toBeNull();
  expect(meant(clubs, 'x')).toBeNull();
});

test('words go by their first letters too, and a letter that fits nothing begins anew', () => {
  expect(type('lr', rests).pressed).toEqual(['light rough']);
  expect(type('fb', rests).pressed).toEqual(['fairway bunker']);
  expect(type('fh', rests).pressed).toEqual(['holed']);
  expect(type('x', rests)).toEqual({ pressed: [], typed: '' });
});
