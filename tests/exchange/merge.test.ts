import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../src/exchange/canonicalJson.ts';
import {
  type CarrybookFile,
  carrybookFileOf,
  logbookOf,
  readCarrybookFile,
  writeCarrybookFile,
} from '../../src/exchange/carrybookFile.ts';
import { changedRecord } from '../../src/exchange/changedRecord.ts';
import { mergeLogbooks, settledLogbook } from '../../src/exchange/merge.ts';
import { mergeReport } from '../../src/exchange/mergeReport.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { smallFile } from '../fixtures/smallFile.ts';
import { fileArbitrary } from './fileArbitrary.ts';
import { logbookArbitrary } from './logbookArbitrary.ts';
import { readValue } from './reading.ts';

const said = (logbook: Logbook): string => canonicalJson(logbook);

/** The small file, changed, as a logbook. */
function small(change: (file: ReturnType<typeof smallFile>) => void = () => undefined): Logbook {
  const file = smallFile();
  change(file);
  return logbookOf(readValue(readCarrybookFile(JSON.stringify(file))));
}

describe('any order of imports gives the same', () => {
  test('two either way round', () => {
    fc.assert(
      fc.property(logbookArbitrary, logbookArbitrary, (a, b) => {
        expect(said(mergeLogbooks(a, b))).toBe(said(mergeLogbooks(b, a)));
      }),
      { numRuns: 400 },
    );
  });

  test('three however grouped', () => {
    fc.assert(
      fc.property(logbookArbitrary, logbookArbitrary, logbookArbitrary, (a, b, c) => {
        expect(said(mergeLogbooks(mergeLogbooks(a, b), c))).toBe(said(mergeLogbooks(a, mergeLogbooks(b, c))));
      }),
      { numRuns: 1500 },
    );
  });

  test('many in any order, some of them twice', () => {
    const many = fc.array(logbookArbitrary, { minLength: 2, maxLength: 6 });
    const run = many.chain((set) =>
      fc.tuple(fc.constant(set), fc.shuffledSubarray([...set, ...set], { minLength: 2 * set.length })),
    );
    fc.assert(
      fc.property(run, ([set, shuffled]) => {
        expect(said(shuffled.reduce(mergeLogbooks))).toBe(said(set.reduce(mergeLogbooks)));
      }),
      { numRuns: 200 },
    );
  });

  test('merging twice changes nothing', () => {
    fc.assert(
      fc.property(logbookArbitrary, logbookArbitrary, (a, b) => {
        const once = mergeLogbooks(a, b);
        expect(said(mergeLogbooks(once, b))).toBe(said(once));
        expect(said(mergeLogbooks(once, a))).toBe(said(once));
        expect(said(mergeLogbooks(once, once))).toBe(said(once));
        expect(said(settledLogbook(once))).toBe(said(once));
      }),
      { numRuns: 400 },
    );
  });

  test('a merge of files that read is written as a file that reads, with the same in it', () => {
    fc.assert(
      fc.property(fileArbitrary, fileArbitrary, (a, b) => {
        const [ours, theirs] = [a, b].map((file) => logbookOf(readValue(readCarrybookFile(JSON.stringify(file)))));
        const merged = mergeLogbooks(ours, theirs);
        const file = carrybookFileOf(merged, '2026-06-01T18:00:00Z', 'backup');
        const back = readValue(readCarrybookFile(writeCarrybookFile(file)));
        expect(said(settledLogbook(logbookOf(back)))).toBe(said(merged));
      }),
      { numRuns: 100 },
    );
  });
});

describe('of two states of one record', () => {
  const renamed = (name: string, changedAt: string, device = 'd1'): Logbook =>
    small((f) => Object.assign(f.clubs[0], { name, changedAt, device }));
  const nameOf = (a: Logbook, b: Logbook): string =>
    mergeLogbooks(a, b).clubs.find(({ id }) => id === 'c7')?.name ?? '';

  test('the later change stays', () => {
    const early = renamed('early', '2026-05-21T08:00:00Z');
    const late = renamed('late', '2026-05-21T08:00:00.001Z');
    expect(nameOf(early, late)).toBe('late');
    expect(nameOf(late, early)).toBe('late');
  });

  test('at one instant the larger device name stays, then the larger JSON', () => {
    const at = '2026-05-21T08:00:00Z';
    expect(nameOf(renamed('z', at, 'd1'), renamed('a', at, 'd2'))).toBe('a');
    expect(nameOf(renamed('z', at, 'd1'), renamed('a', at, 'd1'))).toBe('z');
    expect(nameOf(renamed('a', at, 'd1'), renamed('z', at, 'd1'))).toBe('z');
  });

  test('instants are compared as moments, not as texts', () => {
    expect(nameOf(renamed('early', '2026-05-21T08:00:00Z'), renamed('late', '2026-05-21T08:00:00.5Z'))).toBe('late');
  });

  test('one without changedAt is older than any other', () => {
    const never = small((f) => {
      f.clubs[0].name = 'never';
      delete f.clubs[0].changedAt;
    });
    expect(nameOf(never, renamed('once', '1970-01-02T00:00:00Z'))).toBe('once');
  });

  test('the player changed later stays', () => {
    const other = small((f) => Object.assign(f.player, { name: 'Wren II', changedAt: '2026-05-03T08:00:00Z' }));
    expect(mergeLogbooks(other, small()).player.name).toBe('Wren II');
    expect(mergeLogbooks(small(), other).player.name).toBe('Wren II');
  });

  test('a task done twice was done at the later moment', () => {
    const again = small((f) => Object.assign(f.done[0], { at: '2026-05-13T18:00:00Z' }));
    expect(mergeLogbooks(again, small()).done).toEqual([{ reviewId: 'v1', at: '2026-05-13T18:00:00Z' }]);
  });
});

describe('a deleted record', () => {
  const dead = (at: string): Logbook =>
    small((f) => {
      f.shots = f.shots.filter(({ id }: { id: string }) => id !== 's1');
      f.deleted.push({ id: 's1', of: 'shot', at, device: 'd2' });
    });
  const shotOf = (a: Logbook, b: Logbook): boolean => mergeLogbooks(a, b).shots.some(({ id }) => id === 's1');

  test('stays deleted when it was changed before or at that instant', () => {
    expect(shotOf(small(), dead('2026-05-02T09:12:11Z'))).toBe(false);
    expect(shotOf(dead('2026-05-02T09:12:10Z'), small())).toBe(false);
  });

  test('comes back when it was changed later, and an old copy does not bring back an old state', () => {
    expect(shotOf(small(), dead('2026-05-02T09:12:09.999Z'))).toBe(true);
    const old = small((f) => Object.assign(f.shots[0], { note: 'old', changedAt: '2026-05-02T09:12:01Z' }));
    const merged = mergeLogbooks(mergeLogbooks(small(), dead('2026-05-02T09:12:05Z')), old);
    expect(merged.shots.find(({ id }) => id === 's1')?.note).toBe('');
    expect(merged.deleted.map(({ id }) => id)).toContain('s1');
  });

  test('of another kind with the same id is another record', () => {
    const other = small((f) => f.deleted.push({ id: 's1', of: 'review', at: '2026-06-01T00:00:00Z', device: 'd2' }));
    expect(shotOf(small(), other)).toBe(true);
  });

  test('is left out of a file that still lists it', () => {
    const both = small((f) => f.deleted.push({ id: 's1', of: 'shot', at: '2026-06-01T00:00:00Z', device: 'd2' }));
    expect(settledLogbook(both).shots.map(({ id }) => id)).toEqual(['s2', 's3', 's4']);
  });
});

describe('holes', () => {
  const scored = (number: number, strokes: number, changedAt: string, device = 'd1'): Logbook =>
    small((f) => Object.assign(f.rounds[0], { holes: [{ number, strokes }], changedAt, device }));
  const holes = (logbook: Logbook) => logbook.rounds[0].holes.map(({ number, strokes }) => [number, strokes]);

  test('that only one round has are kept', () => {
    const merged = mergeLogbooks(scored(1, 4, '2026-05-03T08:00:00Z'), scored(2, 5, '2026-05-04T08:00:00Z'));
    expect(holes(merged)).toEqual([
      [1, 4],
      [2, 5],
    ]);
  });

  test('that both have are those of the later round, however many merges lie between', () => {
    const [first, second, third] = ['2026-05-03', '2026-05-04', '2026-05-05'].map((day, n) =>
      scored(n === 1 ? 2 : 1, 4 + n, `${day}T08:00:00Z`),
    );
    const late = mergeLogbooks(mergeLogbooks(first, third), second);
    expect(holes(late)).toEqual([
      [1, 6],
      [2, 5],
    ]);
    // A round that is newer as a whole but took hole 1 from an older one does not make hole 1 newer.
    const middle = scored(1, 9, '2026-05-03T12:00:00Z');
    expect(holes(mergeLogbooks(mergeLogbooks(first, second), middle))).toEqual([
      [1, 9],
      [2, 5],
    ]);
  });

  test('edited after a merge are as new as the edit', () => {
    const merged = mergeLogbooks(scored(1, 4, '2026-05-03T08:00:00Z'), scored(2, 5, '2026-05-04T08:00:00Z'));
    const [round] = merged.rounds;
    const edited = { ...round, holes: round.holes.map((hole) => (hole.number === 1 ? { ...hole, strokes: 7 } : hole)) };
    const ours: Logbook = { ...merged, rounds: [changedRecord(edited, '2026-05-06T08:00:00Z', 'd1')] };
    expect(holes(mergeLogbooks(ours, scored(1, 9, '2026-05-05T08:00:00Z')))).toEqual([
      [1, 7],
      [2, 5],
    ]);
  });
});

test('a spec period that only the earlier state of a club has is kept: shots stand in it', () => {
  const bent = small((f) => f.clubs[1].specPeriods.push({ id: 'w52b', from: '2026-05-05', loft_deg: 54 }));
  const renamed = small((f) => Object.assign(f.clubs[1], { name: 'gap', changedAt: '2026-05-06T08:00:00Z' }));
  const wedge = mergeLogbooks(bent, renamed).clubs.find(({ id }) => id === 'w52');
  expect(wedge?.name).toBe('gap');
  expect(wedge?.specPeriods.map(({ id }) => id)).toEqual(['w52a', 'w52b']);
});

test('a club always keeps a spec period, whatever stamps stand in a file', () => {
  fc.assert(
    fc.property(logbookArbitrary, logbookArbitrary, (a, b) => {
      for (const club of mergeLogbooks(a, b).clubs) expect(club.specPeriods.length).toBeGreaterThan(0);
    }),
    { numRuns: 400 },
  );
  const stamped = small((f) => {
    Object.assign(f.clubs[1], { changedAt: '2026-05-09T08:00:00Z' });
    Object.assign(f.clubs[1].specPeriods[0], { changedAt: '2026-05-01T08:00:00Z', device: 'd1' });
    f.deleted.push({ id: 'w52', of: 'club', at: '2026-05-05T08:00:00Z' });
  });
  expect(settledLogbook(stamped).clubs.find(({ id }) => id === 'w52')?.specPeriods).toHaveLength(1);
});

test('of an unknown key of the logbook the larger JSON stays', () => {
  const [one, two] = ['one', 'two'].map((ours) => small((f) => Object.assign(f, { ours })));
  for (const merged of [mergeLogbooks(one, two), mergeLogbooks(two, one), mergeLogbooks(small(), two)]) {
    expect((merged as unknown as { ours: string }).ours).toBe('two');
  }
});

test('the report of a merge counts what an import does', () => {
  const theirs = small((f) => {
    f.shots[1].changedAt = '2026-05-03T08:00:00Z';
    f.shots[1].note = 'changed';
    f.shots.push({ id: 's5', roundId: 'r1', hole: 2, clubId: 'c7', specId: 'c7a' });
    f.shots = f.shots.filter(({ id }: { id: string }) => id !== 's3');
    f.deleted.push({ id: 's3', of: 'shot', at: '2026-05-04T08:00:00Z', device: 'd2' });
    f.clubs[0].changedAt = '2026-05-01T08:00:00Z';
    f.clubs[0].name = 'older';
  });
  const { merged, report } = mergeReport(small(), theirs);
  expect(report).toEqual({
    clubs: { new: 0, changed: 0, same: 3, removed: 0 },
    rounds: { new: 0, changed: 0, same: 1, removed: 0 },
    shots: { new: 1, changed: 1, same: 2, removed: 1 },
    reviews: { new: 0, changed: 0, same: 1, removed: 0 },
  });
  expect(mergeReport(merged, theirs).report.shots).toEqual({ new: 0, changed: 0, same: 4, removed: 0 });
});

test('the head of a file is no part of its logbook', () => {
  const file: CarrybookFile = readValue(readCarrybookFile(JSON.stringify(smallFile())));
  expect(Object.keys(mergeLogbooks(logbookOf(file), logbookOf(file)))).not.toContain('exportedAt');
});
