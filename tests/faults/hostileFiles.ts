import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { smallFile } from '../fixtures/smallFile.ts';
import type { RandomNumbers } from '../golfers/randomNumbers.ts';

/** A text bent somewhere, and what was done to it. */
export interface Hostile {
  readonly text: string;
  readonly how: string;
}

type Node = Record<string | number, unknown>;

/** Texts that break what trusts them: markup, formulas, turned writing, lone halves, words that reach a prototype. */
const texts = [
  '',
  '__proto__',
  'constructor',
  'toString',
  'NaN',
  'Infinity',
  '1e999',
  '-0',
  'null',
  '\u202eevil\u2066',
  '\ud800',
  '\udc00\ud800',
  '\u0000\u0007\u001b[31m',
  '\ufeff',
  '\u0301'.repeat(70),
  '=HYPERLINK("x")',
  '@SUM(A1)',
  '\t+1',
  '<img src=x onerror=alert(1)>',
  '"><script>alert(1)</script>',
  '../../etc/passwd',
  '2026-02-30',
  '0000-00-00',
  '9999-12-31',
  '9999-12-31T23:59:59.999999999Z',
  '0000-01-01T00:00:00Z',
  '+275760-09-13T00:00:00Z',
  '12:60',
  '🏌️'.repeat(40),
  'x'.repeat(61),
  'x'.repeat(5000),
];

/** Numbers at and beyond every edge, also ones that a text of JSON can write and a computer cannot hold. */
const numbers = [
  '0',
  '-0',
  '-1',
  '0.1',
  '1e-320',
  '5e-324',
  '1e21',
  '1e308',
  '1e999',
  '-1e999',
  '9007199254740993',
  '54',
  '55',
  '600',
  '601',
  '1.5',
];

/** Keys that reach a prototype, that shadow a method, or that nobody knows. */
const keys = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'then',
  'length',
  'id',
  'key',
  '',
  ' ',
  '\u202ekey',
  '\ud800',
  'a.b',
  '0',
  'x'.repeat(3000),
];

/** A mark that is replaced by raw text after the value was written, for what no value can hold. */
const RAW = 'raw⟦';

const raw = (text: string): string => `${RAW}${text}⟧`;

function nested(levels: number, open: string, close: string): string {
  return `${open.repeat(levels)}1${close.repeat(levels)}`;
}

/** Every place of a value where something else could stand. */
function places(value: unknown): { at: Node; key: string | number }[] {
  const found: { at: Node; key: string | number }[] = [];
  const walk = (at: unknown): void => {
    if (typeof at !== 'object' || at === null) return;
    const names = Array.isArray(at) ? at.map((_, index) => index) : Object.keys(at);
    for (const key of names) {
      found.push({ at: at as Node, key });
      walk((at as Node)[key]);
    }
  };
  walk(value);
  return found;
}

function anyValue(random: RandomNumbers): unknown {
  return random.choice<() => unknown>([
    () => random.choice(texts),
    () => raw(random.choice(numbers)),
    () => null,
    () => random.chance(0.5),
    () => [],
    () => ({}),
    () => raw(nested(random.choice([3, 15, 17, 400, 20_000]), '[', ']')),
    () => raw(nested(random.choice([3, 15, 17, 400]), '{"a":', '}')),
    () => Array.from({ length: random.choice([1, 55, 101, 3000]) }, () => 0),
    () => raw(`[${'0,'.repeat(random.choice([100, 20_001]))}0]`),
    () => raw(`{${Array.from({ length: random.choice([65, 2100]) }, (_, i) => `"k${i}":${i}`).join(',')}}`),
    () => 'y'.repeat(random.choice([61, 2001, 25_000])),
  ])();
}

/** Bends a value in one place. Gives the raw text where it must be written by hand. */
function bendOnce(root: { value: unknown }, random: RandomNumbers): string {
  const all = places(root);
  if (all.length === 0) return 'nothing left';
  const { at, key } = random.choice(all);
  const where = String(key);
  const others = all.filter((each) => each.at !== at);
  return random.choice<() => string>([
    () => {
      at[key] = anyValue(random);
      return `${where} = anything`;
    },
    () => {
      at[key] = anyValue(random);
      return `${where} = anything`;
    },
    () => {
      if (Array.isArray(at)) at.splice(Number(key), 1);
      else delete at[key];
      return `${where} gone`;
    },
    () => {
      const name = random.choice(keys);
      if (Array.isArray(at)) return `${where} as it was`;
      // A literal key, as assigning __proto__ would reach the prototype of the test's own object.
      Object.defineProperty(at, name, {
        value: anyValue(random),
        enumerable: true,
        configurable: true,
        writable: true,
      });
      return `a key ${JSON.stringify(name)}`;
    },
    () => {
      const from = others.length > 0 ? random.choice(others) : { at, key };
      at[key] = structuredClone(from.at[from.key]);
      return `${where} = ${String(from.key)}`;
    },
    () => {
      if (Array.isArray(at)) at.push(...at.slice(0, 3).map((each) => structuredClone(each)));
      else at[`${key}2`] = structuredClone(at[key]);
      return `${where} twice`;
    },
    () => {
      if (typeof at[key] === 'number') at[key] = raw(random.choice(numbers));
      else if (typeof at[key] === 'string') at[key] = random.choice(texts);
      else at[key] = anyValue(random);
      return `${where} at its edge`;
    },
    () => {
      if (!Array.isArray(at)) return `${where} as it was`;
      for (let i = at.length - 1; i > 0; i--) {
        const j = random.whole(0, i);
        [at[i], at[j]] = [at[j], at[i]];
      }
      return `${where} in another order`;
    },
  ])();
}

/** Bends a text itself, as a bad transfer or a clumsy hand would, or one who knows how readers are written. */
function bendText(text: string, random: RandomNumbers): string {
  const at = random.whole(0, text.length);
  const piece = random.choice([
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '"',
    '\\',
    '\u0000',
    '1e',
    'NaN',
    '\ufeff',
    '//',
    "'",
    '\ud83c',
  ]);
  return random.choice<() => string>([
    () => text.slice(0, at),
    () => text.slice(at),
    () => text.slice(0, at) + piece + text.slice(at),
    () => text.slice(0, at) + text.slice(at + random.whole(1, 40)),
    () => text.slice(0, at) + text.slice(0, at).slice(-random.whole(1, 200)) + text.slice(at),
    () => text.replace(/"([a-z]\w*)":/i, (whole, name) => `"${name}":0,${whole}`),
    () => text + text,
    () => `\ufeff${text}`,
  ])();
}

function written(value: unknown): string {
  return JSON.stringify(value).replace(/"raw⟦((?:[^⟧\\]|\\.)*)⟧"/g, (_, text) => JSON.parse(`"${text}"`));
}

/** A value bent in one to four places, written, and at times the text bent as well. */
export function bent(value: unknown, random: RandomNumbers): Hostile {
  const root = { value: structuredClone(value) };
  const how = Array.from({ length: random.choice([1, 1, 1, 2, 4]) }, () => bendOnce(root, random));
  const text = written(root.value ?? null) ?? 'null';
  if (!random.chance(0.15)) return { text, how: how.join(', ') };
  return { text: bendText(text, random), how: `${how.join(', ')}, text bent` };
}

/** A text bent in a few places, for formats that are no JSON. */
export function bentText(text: string, random: RandomNumbers): Hostile {
  let bentOne = text;
  for (let i = random.whole(1, 4); i > 0; i--) {
    const at = random.whole(0, bentOne.length);
    bentOne = random.chance(0.5)
      ? bendText(bentOne, random)
      : bentOne.slice(0, at) +
        random.choice([...texts, ...numbers, '|', ';', ',', '\n']) +
        bentOne.slice(at + random.whole(0, 8));
  }
  return { text: bentOne, how: 'text bent' };
}

/** One invented golfer's file, a team of two and a coach's reviews: what the hostile ones are made from. */
export function wholeFiles() {
  const demo = (name: string) =>
    JSON.parse(readFileSync(fileURLToPath(new URL(`../../demo/${name}`, import.meta.url)), 'utf8'));
  const coach = demo('season-coach.json');
  const small = smallFile();
  return {
    carrybook: small,
    team: {
      format: 'carrybook-team',
      version: 1,
      logbooks: [small, { ...smallFile(), player: { id: 'p2', name: 'Teal' } }],
    },
    review: { format: 'carrybook-review', version: 1, playerId: 'p1', reviews: small.reviews },
    coach,
  };
}
