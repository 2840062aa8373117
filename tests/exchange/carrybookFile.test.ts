import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latestInstant, logbookOf, readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { utf8Bytes } from '../../src/exchange/documentText.ts';
import { readAnyFile } from '../../src/exchange/readAnyFile.ts';
import { REFUSAL_LIMIT, refusalSentence } from '../../src/exchange/refusal.ts';
import { brokenFiles } from '../fixtures/brokenFiles.ts';
import { smallFile } from '../fixtures/smallFile.ts';
import { fileArbitrary } from './fileArbitrary.ts';
import { readValue, refusalsOf } from './reading.ts';

const text = (file: unknown): string => JSON.stringify(file);

describe('a broken file', () => {
  test.each(brokenFiles.map((file) => [file.name, file] as const))('%s is refused with the place', (_, file) => {
    const refusals = refusalsOf(readCarrybookFile(file.text));
    expect(refusals[0].path).toBe(file.path);
    expect(refusals.length).toBeLessThanOrEqual(REFUSAL_LIMIT);
    // A deeply nested list has no format, so it is told by that where any file may be read.
    const any = refusalsOf(readAnyFile(file.text));
    if (!file.name.startsWith('nested ten'))
      expect(any[0].path).toMatch(file.name === 'wrong format word' ? 'format' : file.path);
    for (const refusal of refusals) expect(refusalSentence(refusal)).not.toMatch(/undefined|\[object/);
  });

  test('above 20 MB is refused before it is parsed', () => {
    const [refusal] = refusalsOf(readCarrybookFile(`{"format":"${'é'.repeat(10_000_000)}`));
    expect(refusalSentence(refusal)).toBe('the file: expected at most 20 MB, found 20.0 MB');
  });

  test('reads as one plain sentence', () => {
    const sentence = (change: (file: ReturnType<typeof smallFile>) => void): string => {
      const file = smallFile();
      change(file);
      return refusalSentence(refusalsOf(readCarrybookFile(text(file)))[0]);
    };
    expect(sentence((f) => Object.assign(f.shots[0].carry, { m: '140' }))).toBe(
      'shots[0].carry.m: expected a number from 0 to 600, found the text "140"',
    );
    expect(sentence((f) => Object.assign(f.shots[0], { hole: 1.5 }))).toBe(
      'shots[0].hole: expected a whole number from 1 to 54, found 1.5',
    );
    expect(sentence((f) => Object.assign(f.shots[0], { strike: 'shank' }))).toBe(
      'shots[0].strike: expected "solid", "thin", "fat", "heel" or "toe" or null, found the text "shank"',
    );
    expect(sentence((f) => Object.assign(f.rounds[0], { date: '2026-02-30' }))).toBe(
      'rounds[0].date: expected a day that exists, such as 2026-05-02, found the text "2026-02-30"',
    );
    expect(sentence((f) => Object.assign(f, { version: 7 }))).toBe(
      'version: expected version 1, the newest that this Carrybook reads (a newer Carrybook is needed), found version 7',
    );
    expect(sentence((f) => Object.assign(f.shots[2], { id: 's1' }))).toBe(
      'shots[2].id: expected an id of its own, found s1, which shots[0] has already',
    );
    expect(sentence((f) => Object.assign(f.shots[0], { clubId: 'c99' }))).toBe(
      'shots[0].clubId: expected the id of a club of this file or null, found the text "c99"',
    );
  });

  test('names what breaks JSON', () => {
    const sentence = (broken: string): string => refusalSentence(refusalsOf(readCarrybookFile(broken))[0]);
    expect(sentence('{"a": 1 "b": 2}')).toBe('line 1, column 9: expected a comma or }, found "b": 2}');
    expect(sentence('{"a" 1}')).toBe('line 1, column 6: expected a colon after the key, found 1}');
    expect(sentence('[1,\n 2')).toBe('line 2, column 3: expected a comma or ], found the end of the file');
    expect(sentence('{"a": "b\u0001"}')).toBe('line 1, column 7: expected a text closed by a double quote, found "b"}');
    expect(sentence('{"a": 01}')).toBe('line 1, column 8: expected a comma or }, found 1}');
    expect(sentence('{a: 1}')).toBe('line 1, column 2: expected a key in double quotes, found a: 1}');
  });

  test('quotes nothing that could turn or break the line', () => {
    const file = smallFile();
    file.shots[0].swing = `\u202E9:00\u0007\nx\uD800${'y'.repeat(500)}`;
    const sentence = refusalSentence(refusalsOf(readCarrybookFile(text(file)))[0]);
    expect(sentence).toMatch(/^[^\p{Cc}\p{Bidi_Control}\p{Surrogate}]{40,200}$/u);
  });

  test('gives its first reasons, in the order of the file', () => {
    const file = smallFile();
    file.shots = Array.from({ length: 50 }, (_, n) => ({ ...file.shots[1], id: `s${n}`, number: -1 }));
    const refusals = refusalsOf(readCarrybookFile(text(file)));
    expect(refusals.map(({ path }) => path)).toEqual(Array.from({ length: 20 }, (_, n) => `shots[${n}].number`));
  });
});

test('ids that lead nowhere are told for the first places only', () => {
  const file = smallFile();
  file.shots = Array.from({ length: 50 }, (_, n) => ({ ...file.shots[1], id: `s${n}`, clubId: 'c99' }));
  const refusals = refusalsOf(readCarrybookFile(text(file)));
  expect(refusals.map(({ path }) => path)).toEqual(Array.from({ length: 20 }, (_, n) => `shots[${n}].clubId`));
});

test('bytes are counted as UTF-8 has them', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom('a', '\uD83D', '\uDE00') }),
      (a, b) => {
        expect(utf8Bytes(a + b)).toBe(Buffer.byteLength(a + b));
      },
    ),
  );
});

describe('any bytes at all', () => {
  test('are read or refused, never thrown', () => {
    const json = text(smallFile());
    const cut = fc.tuple(fc.nat(json.length), fc.nat(json.length), fc.string({ maxLength: 5 }));
    fc.assert(
      fc.property(cut, ([from, size, put]) => {
        const broken = json.slice(0, from) + put + json.slice(from + size);
        const reading = readAnyFile(broken);
        if (reading.kind === 'refused') expect(reading.refusals.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  test('that are no JSON are refused where they stop being it: all before that is a beginning of JSON', () => {
    const values = ['{', '}', '[', ']', ',', ':', '"a"', '1', 'null', ' ', '\n'];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...values), { maxLength: 12 }), (pieces) => {
        const broken = pieces.join('');
        const [refusal] = refusalsOf(readCarrybookFile(broken));
        const place = /^line (\d+), column (\d+)$/.exec(refusal.path);
        let isJson = true;
        try {
          JSON.parse(broken);
        } catch {
          isJson = false;
        }
        expect(place === null).toBe(isJson);
      }),
      { numRuns: 500 },
    );
  });
});

describe('reading', () => {
  test('fills every default, and the writer writes every key', () => {
    const file = readValue(
      readCarrybookFile('{"format":"carrybook","player":{"id":"p1"},"exportedAt":"2026-06-01T18:00:00Z"}'),
    );
    expect(JSON.parse(writeCarrybookFile(file))).toEqual({
      format: 'carrybook',
      version: 1,
      exportedAt: '2026-06-01T18:00:00Z',
      scope: 'backup',
      player: {
        id: 'p1',
        name: '',
        hand: 'right',
        units: 'yards',
        swings: [],
        changedAt: '1970-01-01T00:00:00.000Z',
        device: '',
      },
      clubs: [],
      rounds: [],
      shots: [],
      reviews: [],
      done: [],
      deleted: [],
    });
  });

  test('cleans texts of control and direction marks and lone surrogates', () => {
    const file = smallFile();
    file.player.name = 'W\u0007r\u202Een\uD83D';
    file.shots[0].note = 'two\nlines\u0000';
    const read = readValue(readCarrybookFile(text(file)));
    expect(read.player.name).toBe('Wren');
    expect(read.shots[0].note).toBe('two\nlines');
  });

  test('passes over a byte order mark', () => {
    expect(readCarrybookFile(`\uFEFF${text(smallFile())}`).kind).toBe('read');
  });

  test('without exportedAt takes the latest moment of the file', () => {
    const file = smallFile();
    delete file.exportedAt;
    expect(readValue(readCarrybookFile(text(file))).exportedAt).toBe('2026-05-20T08:00:00Z');
    file.shots[2].at = '2026-05-20T08:00:00.001Z';
    expect(readValue(readCarrybookFile(text(file))).exportedAt).toBe('2026-05-20T08:00:00.001Z');
    file.rounds[0].date = '2026-05-21';
    expect(readValue(readCarrybookFile(text(file))).exportedAt).toBe('2026-05-21T23:59:59.999Z');
    const empty = readValue(readCarrybookFile('{"format":"carrybook","player":{"id":"p1"}}'));
    expect(latestInstant(empty)).toBe('1970-01-01T00:00:00.000Z');
  });

  test('keeps the book that was frozen for a round, however large a book is', () => {
    const file = smallFile();
    const book = {
      cells: Array.from({ length: 40 }, (_, n) => ({ clubId: `c${n}`, next_m: Array(19).fill(123.456789012) })),
    };
    file.rounds[0].frozenBook = { at: '2026-05-02T08:00:00Z', hash: 'abc', book };
    expect(JSON.stringify(book).length).toBeGreaterThan(10_000);
    expect(readValue(readCarrybookFile(text(file))).rounds[0].frozenBook?.book).toEqual(book);
    file.rounds[0].frozenBook.book = 'x'.repeat(500_001);
    expect(refusalsOf(readCarrybookFile(text(file)))[0].path).toBe('rounds[0].frozenBook');
  });

  test('leaves no trace of a refused file in the prototypes', () => {
    for (const { text: broken } of brokenFiles) readAnyFile(broken);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});

describe('writing', () => {
  test('a file read and written again is the same text, whatever is in it', () => {
    fc.assert(
      fc.property(fileArbitrary, (file) => {
        const first = writeCarrybookFile(readValue(readCarrybookFile(text(file))));
        expect(writeCarrybookFile(readValue(readCarrybookFile(first)))).toBe(first);
      }),
      { numRuns: 150 },
    );
  });

  test('nothing that was in the file is lost on the way', () => {
    fc.assert(
      fc.property(fileArbitrary, (file) => {
        const written = JSON.parse(writeCarrybookFile(readValue(readCarrybookFile(text(file)))));
        expect(holds(written, JSON.parse(text(file)))).toBe('');
      }),
      { numRuns: 150 },
    );
  });

  test('the order of records and keys in the source makes no difference', () => {
    fc.assert(
      fc.property(fileArbitrary, (file) => {
        const turned = turnedRound(JSON.parse(text(file)));
        const written = writeCarrybookFile(readValue(readCarrybookFile(text(turned))));
        expect(written).toBe(writeCarrybookFile(readValue(readCarrybookFile(text(file)))));
      }),
      { numRuns: 100 },
    );
  });

  test('keys stand in the order of the schema and unknown ones sorted after them', () => {
    const file = smallFile();
    file.zeta = 1;
    file.alpha = { b: 1, a: [{ d: 1, c: 2 }] };
    file.player = { zeta: 1, alpha: 2, ...file.player };
    const written = writeCarrybookFile(readValue(readCarrybookFile(text(file))));
    const back = JSON.parse(written);
    expect(Object.keys(back).slice(-3)).toEqual(['deleted', 'alpha', 'zeta']);
    expect(JSON.stringify(back.alpha)).toBe('{"a":[{"c":2,"d":1}],"b":1}');
    expect(Object.keys(back.player)).toEqual([
      'id',
      'name',
      'hand',
      'units',
      'swings',
      'changedAt',
      'device',
      'alpha',
      'zeta',
    ]);
    expect(written.split('\n').filter((line) => line.includes('"id":"s1"'))).toHaveLength(1);
  });

  test('the logbook of a file carries its unknown keys and not its head', () => {
    const file = { ...smallFile(), alpha: 1 };
    const logbook = logbookOf(readValue(readCarrybookFile(text(file))));
    expect(Object.keys(logbook).sort()).toEqual(
      ['alpha', 'clubs', 'deleted', 'done', 'player', 'reviews', 'rounds', 'shots'].sort(),
    );
  });
});

/** Where `written` lacks something of `source`, or an empty text. Lists of records are compared by id. */
function holds(written: unknown, source: unknown, path = ''): string {
  if (Array.isArray(source)) {
    const others = written as unknown[];
    if (others.length !== source.length) return `${path} has ${others.length}`;
    const sorted = (list: unknown[]): unknown[] =>
      path.match(/^\.(clubs|rounds|shots|reviews|done|deleted)$|holes$/) ? list.toSorted(byKey) : list;
    const theirs = sorted(others);
    return sorted(source)
      .map((each, index) => holds(theirs[index], each, `${path}[${index}]`))
      .join('');
  }
  if (typeof source !== 'object' || source === null) return Object.is(written, source) ? '' : `${path}: ${written}`;
  return Object.entries(source)
    .map(([key, value]) => holds((written as Record<string, unknown>)?.[key], value, `${path}.${key}`))
    .join('');
}

function byKey(a: unknown, b: unknown): number {
  const key = (each: unknown): string => {
    const record = each as { id?: string; of?: string; reviewId?: string; number?: number };
    return `${record.of ?? 'shot'} ${record.id ?? record.reviewId ?? String(record.number).padStart(3, '0')}`;
  };
  return key(a) < key(b) ? -1 : 1;
}

/** Keys of objects the other way round, and the lists of records too. */
function turnedRound(file: Record<string, unknown>): unknown {
  const keys = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(keys);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .toReversed()
        .map(([key, each]) => [key, keys(each)]),
    );
  };
  const turned = keys(file) as Record<string, unknown[]>;
  for (const list of ['clubs', 'rounds', 'shots', 'reviews', 'done', 'deleted']) turned[list]?.reverse();
  for (const round of turned.rounds) (round as { holes?: unknown[] }).holes?.reverse();
  return turned;
}
