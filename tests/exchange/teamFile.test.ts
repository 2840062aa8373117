import { describe, expect, test } from 'vitest';
import { readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { readAnyFile } from '../../src/exchange/readAnyFile.ts';
import { refusalSentence } from '../../src/exchange/refusal.ts';
import { readReviewFile, writeReviewFile } from '../../src/exchange/reviewFile.ts';
import { readTeamFile, writeTeamFile } from '../../src/exchange/teamFile.ts';
import { smallFile } from '../fixtures/smallFile.ts';
import { readValue, refusalsOf } from './reading.ts';

function member(id: string, name: string): ReturnType<typeof smallFile> {
  const file = smallFile();
  Object.assign(file.player, { id, name });
  return file;
}

const team = (logbooks: unknown, rest = {}): string =>
  JSON.stringify({ format: 'carrybook-team', version: 1, logbooks, ...rest });

describe('a team file', () => {
  test('reads one file a golfer', () => {
    const read = readValue(readTeamFile(team([member('p2', 'Moss'), member('p1', 'Wren')])));
    expect(read.members.map(({ index, file }) => [index, file.player.name])).toEqual([
      [0, 'Moss'],
      [1, 'Wren'],
    ]);
    expect(read.broken).toEqual([]);
  });

  test('names a broken logbook and the place in it, and reads the others', () => {
    const broken = member('p3', 'Fern\u202E');
    broken.shots[0].carry.m = '140';
    const nobody = { format: 'carrybook', version: 3 };
    const read = readValue(readTeamFile(team([member('p2', 'Moss'), broken, null, nobody, member('p1', 'Wren')])));
    expect(read.members.map(({ index }) => index)).toEqual([0, 4]);
    expect(read.broken.map(({ index, name }) => [index, name])).toEqual([
      [1, 'Fern'],
      [2, ''],
      [3, ''],
    ]);
    expect(read.broken.map(({ refusals }) => refusals.map(refusalSentence))).toEqual([
      ['logbooks[1].shots[0].carry.m: expected a number from 0 to 600, found the text "140"'],
      ['logbooks[2]: expected an object, found null'],
      [
        'logbooks[3].version: expected version 1, the newest that this Carrybook reads (a newer Carrybook is needed), found version 3',
      ],
    ]);
  });

  test('measures depth from each logbook and refuses keys that reach a prototype', () => {
    const deep = member('p2', 'Moss');
    let inside: unknown = 1;
    for (let level = 0; level < 15; level++) inside = [inside];
    deep.ours = inside;
    expect(readValue(readTeamFile(team([deep]))).broken).toEqual([]);
    deep.ours = [inside];
    expect(readValue(readTeamFile(team([deep]))).broken[0].refusals[0].path).toBe(
      `logbooks[0].ours${'[0]'.repeat(15)}`,
    );
    const text = team([member('p1', 'Wren')]).replace('"name":"Wren"', '"name":"Wren","__proto__":{"x":1}');
    expect(readValue(readTeamFile(text)).broken[0].refusals[0].path).toBe('logbooks[0].player.__proto__');
  });

  test('may be above 20 MB while no logbook in it is', () => {
    const big = member('p2', 'Moss');
    big.shots = Array.from({ length: 600 }, (_, n) => ({ ...big.shots[1], id: `s${n}`, ours: 'x'.repeat(19_900) }));
    const one = JSON.stringify(big).length;
    expect(one).toBeGreaterThan(11_000_000);
    expect(readValue(readTeamFile(team([big, member('p1', 'Wren'), big]))).broken).toEqual([]);
    big.shots.push(...big.shots.map((shot: object, n: number) => ({ ...shot, id: `t${n}` })));
    const read = readValue(readTeamFile(team([member('p1', 'Wren'), big])));
    expect(read.members.map(({ index }) => index)).toEqual([0]);
    expect(read.broken[0].refusals.map(refusalSentence)).toEqual([
      expect.stringMatching(/^logbooks\[1\]: expected at most 20 MB, found 2\d\.\d MB$/),
    ]);
  });

  test('is refused as a whole when it is no team file', () => {
    expect(refusalsOf(readTeamFile(team({})))[0].path).toBe('logbooks');
    expect(refusalsOf(readTeamFile(team(undefined)))[0].found).toBe('nothing');
    expect(refusalsOf(readTeamFile(team([], { version: 2 })))[0].path).toBe('version');
    expect(refusalsOf(readTeamFile(team([], { format: 'carrybook' })))[0].path).toBe('format');
    expect(refusalsOf(readTeamFile(team([]).slice(0, -1)))[0].path).toMatch(/^line 1/);
  });

  test('is written by players’ ids and reads back', () => {
    const files = [member('p2', 'Moss'), member('p1', 'Wren')].map((file) =>
      readValue(readCarrybookFile(JSON.stringify(file))),
    );
    const read = readValue(readTeamFile(writeTeamFile(files)));
    expect(read.members.map(({ file }) => writeCarrybookFile(file))).toEqual(
      files.toReversed().map(writeCarrybookFile),
    );
    expect(readValue(readTeamFile(writeTeamFile([]))).members).toEqual([]);
  });
});

describe('a review file', () => {
  const review = (rest = {}): string =>
    JSON.stringify({
      format: 'carrybook-review',
      version: 1,
      playerId: 'p1',
      reviews: [
        { id: 'v2', note: 'ladder' },
        { id: 'v1', task: { balls: 20 } },
      ],
      ...rest,
    });

  test('reads, and is written the same each time', () => {
    const read = readValue(readReviewFile(review({ ours: 1 })));
    const written = writeReviewFile(read);
    expect(JSON.parse(written).reviews.map(({ id }: { id: string }) => id)).toEqual(['v1', 'v2']);
    expect(JSON.parse(written).ours).toBe(1);
    expect(writeReviewFile(readValue(readReviewFile(written)))).toBe(written);
  });

  test.each([
    ['playerId', { playerId: undefined }],
    ['reviews[0].task.balls', { reviews: [{ id: 'v1', task: { balls: -1 } }] }],
    ['reviews[1].id', { reviews: [{ id: 'v1' }, { id: 'v1' }] }],
    ['reviews[0]', { reviews: [{ id: 'v1', ours: 'x'.repeat(20_001) }] }],
    ['the file', { ours: 'x'.repeat(20_001) }],
    ['version', { version: 2 }],
    ['format', { format: 'carrybook' }],
  ])('is refused at %s', (path, rest) => {
    expect(refusalsOf(readReviewFile(review(rest)))[0].path).toBe(path);
  });
});

describe('any file', () => {
  test('is told by its format', () => {
    const kind = (file: unknown): string => readValue(readAnyFile(JSON.stringify(file))).kind;
    expect(kind(smallFile())).toBe('carrybook');
    expect(kind({ format: 'carrybook-team', logbooks: [smallFile()] })).toBe('team');
    expect(kind({ format: 'carrybook-review', playerId: 'p1' })).toBe('review');
  });

  test('of no format is refused', () => {
    expect(refusalsOf(readAnyFile('{}')).map(refusalSentence)).toEqual([
      'format: expected "carrybook", "carrybook-team" or "carrybook-review", found nothing',
    ]);
  });

  test('of one golfer above 20 MB is refused', () => {
    const file = JSON.stringify({ ...smallFile(), ours: 'x'.repeat(20_000_000) });
    expect(refusalsOf(readAnyFile(file))[0].path).toBe('the file');
  });
});
