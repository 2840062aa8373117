import { expect, test } from 'vitest';
import { readSummary } from '../../src/exchange/bookSummary.ts';
import { readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { readAnyFile } from '../../src/exchange/readAnyFile.ts';
import { type Reading, refusalSentence } from '../../src/exchange/refusal.ts';
import { readReviewFile } from '../../src/exchange/reviewFile.ts';
import { readTeamFile } from '../../src/exchange/teamFile.ts';
import { cleanText } from '../../src/golf/text.ts';

/** Longest that a refusal may take, in milliseconds of the processor. */
const LONGEST_MS = 1000;
/** How often one is measured: the quickest counts, as the others waited for the rest of the machine. */
const TRIES = 3;

interface Bomb {
  readonly name: string;
  readonly make: () => string;
  /** Part of the sentence that refuses it. */
  readonly says: string;
  readonly read?: (text: string) => Reading<unknown>;
}

const HEAD = '"format":"carrybook","player":{"id":"p"}';
const ROUND = '{"id":"r","date":"2026-05-02"}';
const SHOT = '{"id":"a","roundId":"r","hole":1,"clubId":null}';
const list = (each: string, count: number): string => `${`${each},`.repeat(count - 1)}${each}`;
const keyed = (objects: number, keys: number): string =>
  Array.from(
    { length: objects },
    (_, i) => `{${Array.from({ length: keys }, (_, j) => `"k${i}_${j}":0`).join(',')}}`,
  ).join(',');

/**
 * Files made to keep a reader busy, to fill its memory or its stack. Most are near the 20 MB that one may have;
 * three are smaller, as parsing JSON, or reading so many good shots to the end, is itself longer than a second there.
 */
const bombs: readonly Bomb[] = [
  {
    name: '200,000 shots that are none',
    make: () => `{${HEAD},"shots":[${list('0', 200_000)}]}`,
    says: 'shots[0]: expected an object',
  },
  {
    name: '200,001 shots',
    make: () => `{${HEAD},"rounds":[${ROUND}],"shots":[${list(SHOT, 200_001)}]}`,
    says: 'at most 200000 shots',
  },
  {
    name: '20,000 shots of one id',
    make: () => `{${HEAD},"rounds":[${ROUND}],"shots":[${list(SHOT, 20_000)}]}`,
    says: 'shots[1].id: expected an id of its own',
  },
  {
    name: '20,000 shots of no round',
    make: () =>
      `{${HEAD},"shots":[${Array.from({ length: 20_000 }, (_, i) => `{"id":"${i}","roundId":"r","hole":1,"clubId":null}`).join(',')}]}`,
    says: 'shots[0].roundId: expected the id of a round',
  },
  {
    name: 'ten million clubs',
    make: () => `{${HEAD},"clubs":[${list('0', 9_900_000)}]}`,
    says: 'at most 200000 in a list',
  },
  {
    name: 'half a million clubs',
    make: () => `{${HEAD},"clubs":[${list('0', 500_000)}]}`,
    says: 'at most 200000 clubs',
  },
  {
    name: 'ten million clubs in one bag',
    make: () => `{${HEAD},"rounds":[{"id":"r","date":"2026-05-02","bag":[${list('0', 9_900_000)}]}]}`,
    says: 'at most 200000 in a list',
  },
  {
    name: '900 clubs with 10,000 builds each',
    make: () => `{${HEAD},"clubs":[${list(`{"id":"c","kind":"iron","specPeriods":[${list('0', 10_000)}]}`, 900)}]}`,
    says: 'clubs[0].specPeriods',
  },
  { name: 'a million unknown keys', make: () => `{${HEAD},${keyed(1, 1_000_000).slice(1)}`, says: 'at most 2000 keys' },
  {
    name: '400,000 unknown keys in 40,000 objects',
    make: () => `{${HEAD},"x":[${keyed(40_000, 10)}]}`,
    says: 'unknown keys with 20000 bytes',
  },
  { name: 'open brackets only', make: () => '['.repeat(19_900_000), says: 'at most 16 levels' },
  { name: 'open objects only', make: () => '{"a":'.repeat(3_900_000), says: 'at most 16 levels' },
  {
    name: 'ten million levels',
    make: () => `${'['.repeat(9_900_000)}${']'.repeat(9_900_000)}`,
    says: 'at most 16 levels',
  },
  {
    name: '90,000 levels',
    make: () => `{${HEAD},"x":${'['.repeat(90_000)}${']'.repeat(90_000)}}`,
    says: 'at most 16 levels',
  },
  {
    name: '20 MB in a name',
    make: () => `{"format":"carrybook","player":{"id":"p","name":"${'x'.repeat(19_900_000)}"}}`,
    says: 'player.name: expected a text of at most 60',
  },
  {
    name: '20 MB in an id',
    make: () => `{"format":"carrybook","player":{"id":"${'x'.repeat(19_900_000)}"}}`,
    says: 'player.id: expected an id',
  },
  {
    name: '20 MB in an instant',
    make: () =>
      `{"format":"carrybook","player":{"id":"p","changedAt":"2026-01-01T00:00:00.${'0'.repeat(19_900_000)}Z"}}`,
    says: 'player.changedAt: expected an instant',
  },
  { name: '20 MB in the format', make: () => `{"format":"${'\u202e'.repeat(6_600_000)}"}`, says: 'format: expected' },
  {
    name: '20 MB of digits',
    make: () => `{${HEAD},"x":${'9'.repeat(19_900_000)}}`,
    says: 'x: expected a finite number',
  },
  {
    name: '20 MB of escapes',
    make: () => `"${'\\\\'.repeat(9_900_000)}`,
    says: 'line 1, column 1: expected a text closed',
  },
  { name: '20 MB of blanks', make: () => ' '.repeat(19_900_000), says: 'expected a value, found the end' },
  { name: '20 million lines', make: () => `${'\n'.repeat(19_900_000)}x`, says: 'line 19900001, column 1' },
  {
    name: 'ten million reviews',
    make: () => `{"format":"carrybook-review","playerId":"p","reviews":[${list('0', 9_900_000)}]}`,
    says: 'in a list',
    read: readReviewFile,
  },
  {
    name: '200,000 reviews that are none',
    make: () => `{"format":"carrybook-review","playerId":"p","reviews":[${list('0', 200_000)}]}`,
    says: 'reviews[0]: expected an object',
    read: readReviewFile,
  },
  {
    name: 'a team of 200,000',
    make: () => `{"format":"carrybook-team","logbooks":[${list('0', 200_000)}]}`,
    says: 'at most 1000 logbooks',
    read: readTeamFile,
  },
  {
    name: 'a team of one, 11 million levels deep',
    make: () => `{"format":"carrybook-team","logbooks":[{"a":${'['.repeat(11_000_000)}${']'.repeat(11_000_000)}}]}`,
    says: 'at most 16 levels',
    read: readTeamFile,
  },
  {
    name: 'a summary of a million lines',
    make: () => `CARRYBOOK-SUMMARY 1\np|y|2026-01-01T00:00:00Z|n\n${'a\n'.repeat(1_000_000)}`,
    says: 'characters of a summary',
    read: readSummary,
  },
];

test.each(bombs)('$name: refused within a second', { timeout: 60_000 }, ({ make, says, read }) => {
  const text = make();
  for (const reader of read ? [read] : [readCarrybookFile, readAnyFile]) {
    let quickest_ms = Number.POSITIVE_INFINITY;
    for (let i = 0; i < TRIES && quickest_ms > LONGEST_MS; i++) {
      const since = process.cpuUsage();
      const outcome = reader(text);
      const { user, system } = process.cpuUsage(since);
      quickest_ms = Math.min(quickest_ms, (user + system) / 1000);
      if (outcome.kind === 'read') throw new Error('it was read');
      const [refusal] = outcome.refusals;
      const sentence = refusalSentence(refusal);
      if (reader !== readAnyFile || !sentence.startsWith('the file: expected an object'))
        expect(sentence).toContain(says);
      expect(sentence).toBe(cleanText(sentence));
      expect(sentence.length).toBeLessThan(400);
    }
    console.log(`${quickest_ms.toFixed(0)} ms`);
    expect(quickest_ms).toBeLessThanOrEqual(LONGEST_MS);
  }
});

test('a team above 20 MB with one logbook nested without end: that one is broken, the other reads', {
  timeout: 60_000,
}, () => {
  const deep = `{"a":${'['.repeat(90_000)}${']'.repeat(90_000)}}`;
  const filler = `{"format":"carrybook","player":{"id":"q"},"x":"${'y'.repeat(21_000_000)}"}`;
  const outcome = readTeamFile(`{"format":"carrybook-team","logbooks":[${deep},${filler},{${HEAD}}]}`);
  if (outcome.kind === 'refused') throw new Error(refusalSentence(outcome.refusals[0]));
  expect(outcome.value.members.map(({ file }) => file.player.id)).toEqual(['p']);
  expect(outcome.value.broken.map(({ refusals }) => refusals[0].expected)).toEqual([
    'at most 16 levels',
    'at most 20 MB',
  ]);
});

test('of a key written twice the last counts, wherever it is read', () => {
  const twice = `{"format":"other","format":"carrybook","player":{"id":"x"},"player":{"id":"p","name":"a","name":"b"}}`;
  for (const reader of [readCarrybookFile, (text: string) => readAnyFile(text)]) {
    const outcome = reader(twice);
    expect(JSON.stringify(outcome)).toContain('"id":"p","name":"b"');
    expect(JSON.stringify(outcome)).not.toMatch(/"id":"x"|other/);
  }
});

test('an unknown key called as something that every object has is kept and written', () => {
  const names = ['valueOf', 'toString', 'hasOwnProperty', 'isPrototypeOf'];
  const text = `{${HEAD},${names.map((name) => `"${name}":{"${name}":1}`).join(',')}}`;
  const outcome = readCarrybookFile(text);
  if (outcome.kind === 'refused') throw new Error(refusalSentence(outcome.refusals[0]));
  const written = JSON.parse(writeCarrybookFile(outcome.value));
  for (const name of names) expect(written[name]).toEqual({ [name]: 1 });
});
