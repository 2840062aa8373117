import fc from 'fast-check';
import { expect, test } from 'vitest';
import { composeBook } from '../../src/book/composeBook.ts';
import { logbookOf, readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { mergeLogbooks } from '../../src/exchange/merge.ts';
import { type ShareChoices, shareFile, usualShare } from '../../src/exchange/shareFile.ts';
import { sharePreview } from '../../src/exchange/sharePreview.ts';
import { AS_OF, carried, logbookOf as invented, solidShots } from '../book/logbooks.ts';
import { smallFile } from '../fixtures/smallFile.ts';
import { logbookArbitrary } from './logbookArbitrary.ts';
import { readValue } from './reading.ts';

const AT = '2026-06-02T09:00:00Z';

function told() {
  const file = smallFile();
  file.shots[0].carry = { m: 137.2, by: 'gnss' };
  file.shots[0].marks.pitch = { lat_deg: 0.001, lon_deg: 0, accuracy_m: 12, at: '2026-05-02T09:13:00Z' };
  file.shots[0].note = 'by the oak at home';
  file.shots[0].phoneOwner = 'a full name';
  file.clubs[0].specPeriods[0].note = 'lent by an aunt';
  file.rounds[0].frozenBook = { at: '2026-05-02T08:00:00Z', hash: 'abc', book: { cells: [] } };
  file.address = 'somewhere';
  return logbookOf(readValue(readCarrybookFile(JSON.stringify(file))));
}

test('by default a nickname goes, and neither marks, notes nor anything this version cannot name', () => {
  const shared = shareFile(told(), usualShare('Wren'), AT);
  const text = writeCarrybookFile(shared);
  expect(shared.scope).toBe('share');
  expect(shared.player.name).toBe('Wren');
  for (const kept of ['oak', 'aunt', 'full name', 'somewhere', 'lat_deg', 'accuracy_m', '"cells"'])
    expect(text).not.toContain(kept);
  expect(text).toContain('Invented Links');
  expect(readValue(readCarrybookFile(text)).shots).toHaveLength(4);
  // Two fixes of 4 m and 12 m: √(4² + 12²)/2.448. Source: the Rayleigh distribution's 95 % quantile.
  expect(shared.shots[0].carry?.error_m).toBeCloseTo(Math.hypot(4, 12) / 2.448, 3);
  const bare = shareFile(told(), { ...usualShare(''), courses: false }, AT);
  expect(bare.player.name).toBe('');
  expect(writeCarrybookFile(bare)).not.toContain('Invented Links');
});

test('what was chosen goes', () => {
  const text = writeCarrybookFile(shareFile(told(), { nickname: 'W', marks: true, notes: true, courses: true }, AT));
  for (const gone of ['oak', 'aunt', 'lat_deg']) expect(text).toContain(gone);
  expect(text).not.toContain('full name');
});

test('the preview names every field of the very file, and no field that is not in it', () => {
  const shared = shareFile(told(), usualShare('Wren'), AT);
  const written = JSON.parse(writeCarrybookFile(shared));
  const preview = sharePreview(written);
  const paths = preview.map(({ path }) => path);
  expect(paths).toContain('player.name');
  expect(paths).toContain('shots[].carry.m');
  expect(paths.filter((path) => /note|marks|lat_deg/.test(path))).toEqual([]);
  expect(preview.find(({ path }) => path === 'shots[].id')).toEqual({ path: 'shots[].id', count: 4, example: 's1' });
  // Counted another way: every primitive in the text that says something.
  let leaves = 0;
  JSON.stringify(written, (_key, value) => {
    if (value !== null && typeof value !== 'object' && value !== '') leaves += 1;
    return value;
  });
  expect(preview.reduce((sum, { count }) => sum + count, 0)).toBe(leaves);
});

test('the coach sees the numbers that the player sees', () => {
  const marks = (accuracy_m: number) => ({
    ball: { lat_deg: 0, lon_deg: 0, accuracy_m },
    pitch: { lat_deg: 0.001, lon_deg: 0, accuracy_m: accuracy_m + 3 },
  });
  const gnss = Array.from({ length: 8 }, (_, i) =>
    carried(`g${i}`, 140 + i, {
      clubId: 'i7',
      carry: { m: 140 + i, by: 'gnss', error_m: null },
      marks: marks(2 + 3 * i),
      note: 'n',
    }),
  );
  const logbook = invented({ shots: [...gnss, ...solidShots('gw', 95, 10)] });
  const shared = shareFile(logbook, usualShare('Wren'), AT);
  expect(composeBook(shared, AS_OF)).toEqual(composeBook(logbook, AS_OF));
});

test('shares merge as the logbooks do, whatever was chosen', () => {
  const choices: fc.Arbitrary<ShareChoices> = fc.record({
    nickname: fc.constantFrom('', 'Wren'),
    marks: fc.boolean(),
    notes: fc.boolean(),
    courses: fc.boolean(),
  });
  fc.assert(
    fc.property(logbookArbitrary, logbookArbitrary, choices, (one, other, chosen) => {
      const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
      const shares = [one, other].map((logbook) => logbookOf(shareFile(logbook, chosen, AT)));
      const merged = mergeLogbooks(shares[0], shares[1]);
      const whole = mergeLogbooks(one, other);
      expect(ids(merged.shots)).toEqual(ids(whole.shots));
      expect(ids(merged.clubs)).toEqual(ids(whole.clubs));
      expect(merged.rounds.map(({ id, holes }) => [id, holes.map((hole) => hole.number)])).toEqual(
        whole.rounds.map(({ id, holes }) => [id, holes.map((hole) => hole.number)]),
      );
    }),
    { numRuns: 200 },
  );
});
