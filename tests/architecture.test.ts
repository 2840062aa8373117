import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { LAST_PURE_RANK, LOADS_THE_DEMO, RANKS } from './architecture/house.ts';
import { RULES, type Sources } from './architecture/rules.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

function read(folder: string): [string, string][] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [relative(root, path).split(sep).join('/'), readFileSync(path, 'utf8')];
    });
}

const house: Sources = new Map([...read('src'), ...read('tests')]);
const sourcesOf = (files: Readonly<Record<string, string>>): Sources => new Map(Object.entries(files));

describe('the house keeps its own rules', () => {
  test('there is a house to look at', () => {
    expect([...house.keys()].filter((path) => path.startsWith('src/units/')).length).toBeGreaterThan(5);
  });

  test.each(Object.keys(RULES))('%s', (name) => {
    expect(RULES[name](house)).toEqual([]);
  });

  test('the top level holds only what belongs there', () => {
    const allowed =
      /^(?:README\.md|DEVELOPERS\.md|LICENSE|package(?:-lock)?\.json|tsconfig\.json|index\.html|src|tests|public|demo|node_modules|dist|test-results|coverage|\..+|(?:vite|vitest)\.config\.ts|(?:biome|knip)\.json)$/;
    expect(readdirSync(root).filter((name) => !allowed.test(name))).toEqual([]);
  });
});

const units = {
  'src/units/metres.ts': 'export type Metres = number & { m: 1 };\nexport const metres = (n: number) => n as Metres;\n',
};
const lines = (count: number): string => Array.from({ length: count }, (_, n) => `// ${n}`).join('\n');

/** For each rule: small houses it must refuse, with where, and houses it must let stand. */
const planted: Readonly<
  Record<string, { refused: [string, Record<string, string>, string][]; stands: Record<string, string>[] }>
> = {
  knownPlaces: {
    refused: [
      ['a folder of its own', { 'src/shots/shot.ts': '' }, 'src/shots/shot.ts:1'],
      ['a loose file', { 'src/extra.ts': '' }, 'src/extra.ts:1'],
    ],
    stands: [{ 'src/golf/shot.ts': '', 'src/main.tsx': '' }],
  },
  importsGoDown: {
    refused: [
      ['upwards', { 'src/golf/club.ts': "import { a } from '../flight/air.ts';" }, 'src/golf/club.ts:1'],
      [
        'upwards, types only',
        { 'src/golf/club.ts': "\nimport type { A } from '../book/book.ts';" },
        'src/golf/club.ts:2',
      ],
      [
        'upwards over several lines',
        { 'src/units/a.ts': "import {\n  a,\n  b,\n} from '../golf/club.ts';" },
        'src/units/a.ts:1',
      ],
      ['sideways', { 'src/golf/club.ts': "import '../statistics/normal.ts';" }, 'src/golf/club.ts:1'],
      ['exported on', { 'src/flight/air.ts': "export * from '../yardages/gaps.ts';" }, 'src/flight/air.ts:1'],
      ['at run time', { 'src/worker/a.ts': "const m = await import('../logbook/a.ts');" }, 'src/worker/a.ts:1'],
      ['as a worker', { 'src/book/a.ts': "new URL('../worker/entry.ts', import.meta.url)" }, 'src/book/a.ts:1'],
      ['as the type of a module', { 'src/golf/a.ts': "type A = import('../book/book.ts').Book;" }, 'src/golf/a.ts:1'],
      ['a composition root', { 'src/screens/a.ts': "import '../main.tsx';" }, 'src/screens/a.ts:1'],
      ['the report reaching the screens', { 'src/report.ts': "import './screens/words.ts';" }, 'src/report.ts:1'],
      ['outside src', { 'src/golf/a.ts': "import '../../tests/a.ts';" }, 'src/golf/a.ts:1'],
    ],
    stands: [
      { 'src/book/a.ts': "import { a } from '../flight/air.ts';\nimport './b.ts';\n// import '../screens/x.ts'" },
      { 'src/main.tsx': "import './screens/App.tsx';" },
      { 'src/golf/a.ts': 'const text = "import \'../screens/x.ts\'";' },
    ],
  },
  importsNameFiles: {
    refused: [
      ['no extension', { 'src/golf/a.ts': "import './b';", 'src/golf/b.ts': '' }, 'src/golf/a.ts:1'],
      ['no such file', { 'src/golf/a.ts': "import './c.ts';" }, 'src/golf/a.ts:1'],
    ],
    stands: [{ 'src/worker/a.ts': "import b from './b.ts?worker&url';", 'src/worker/b.ts': '' }],
  },
  allowedPackages: {
    refused: [
      ['a database outside the logbook', { 'src/actions/a.ts': "import Dexie from 'dexie';" }, 'src/actions/a.ts:1'],
      ['the large zod', { 'src/golf/a.ts': "import * as z from 'zod';" }, 'src/golf/a.ts:1'],
      ['any package in statistics', { 'src/statistics/a.ts': "import 'jstat';" }, 'src/statistics/a.ts:1'],
      ['Node in pure code', { 'src/flight/a.ts': "import { readFileSync } from 'node:fs';" }, 'src/flight/a.ts:1'],
      [
        'the page in the worker',
        { 'src/worker/a.ts': "import { signal } from '@preact/signals';" },
        'src/worker/a.ts:1',
      ],
    ],
    stands: [
      { 'src/golf/a.ts': "import * as z from 'zod/mini';", 'src/logbook/a.ts': "import Dexie from 'dexie';" },
      { 'src/report.ts': "import { readFileSync } from 'node:fs';" },
    ],
  },
  spokenUnitsAtTheEdges: {
    refused: [
      ['yards inside', { 'src/yardages/a.ts': "import { yards } from '../units/yards.ts';" }, 'src/yardages/a.ts:1'],
    ],
    stands: [
      { 'src/screens/a.ts': "import { yards } from '../units/yards.ts';", 'src/units/b.ts': "import './yards.ts';" },
    ],
  },
  brandsOnlyInUnits: {
    refused: [
      ['a cast', { ...units, 'src/golf/a.ts': 'export const a = 3 as Metres;' }, 'src/golf/a.ts:1'],
      [
        'a cast in two steps',
        { ...units, 'src/screens/a.tsx': '\nexport const a = b as unknown as Metres;' },
        'src/screens/a.tsx:2',
      ],
      [
        'a cast of a list',
        { ...units, 'src/golf/a.ts': 'export const a = [3] as readonly Metres[];' },
        'src/golf/a.ts:1',
      ],
      [
        'a cast of a list by name',
        { ...units, 'src/golf/a.ts': 'export const a = [3] as Array<Metres>;' },
        'src/golf/a.ts:1',
      ],
    ],
    stands: [
      units,
      { ...units, 'src/golf/a.ts': "// as Metres\nexport const a: Metres = metres(3); const t = 'as Metres';" },
    ],
  },
  pureRanks: {
    refused: [
      ['the clock', { 'src/book/a.ts': 'const t = Date.now();' }, 'src/book/a.ts:1'],
      ['today', { 'src/golf/a.ts': 'const t = new Date();' }, 'src/golf/a.ts:1'],
      ['today without brackets', { 'src/golf/a.ts': 'const t = new Date;' }, 'src/golf/a.ts:1'],
      ['today as text', { 'src/golf/a.ts': 'const t = Date();' }, 'src/golf/a.ts:1'],
      ['chance', { 'src/yardages/a.ts': 'const t = Math.random();' }, 'src/yardages/a.ts:1'],
      ['the stopwatch', { 'src/flight/a.ts': '\nconst t = performance.now();' }, 'src/flight/a.ts:2'],
      ['a way around', { 'src/statistics/a.ts': "const t = globalThis['Date'];" }, 'src/statistics/a.ts:1'],
    ],
    stands: [
      { 'src/golf/a.ts': "const t = new Date('2026-05-01'); // not Date.now()\nconst u = Date.parse(x);" },
      { 'src/actions/a.ts': 'const t = Date.now();' },
    ],
  },
  namesSaySomething: {
    refused: [
      ['a grab-bag', { 'src/golf/utils.ts': '' }, 'src/golf/utils.ts:1'],
      ['a grab-bag folder', { 'src/screens/common/Card.tsx': '' }, 'src/screens/common/Card.tsx:1'],
      ['a barrel', { 'src/golf/index.ts': '' }, 'src/golf/index.ts:1'],
      ['types apart', { 'tests/types.ts': '' }, 'tests/types.ts:1'],
    ],
    stands: [{ 'src/golf/club.ts': '', 'src/units/quantity.ts': '' }],
  },
  shortFiles: {
    refused: [
      ['over 400 lines', { 'src/golf/a.ts': `// Long because\n${lines(401)}` }, 'src/golf/a.ts:1'],
      ['over 250 without a reason', { 'src/golf/a.ts': lines(251) }, 'src/golf/a.ts:1'],
      ['a long test', { 'tests/golf/a.test.ts': lines(401) }, 'tests/golf/a.test.ts:1'],
    ],
    stands: [
      { 'src/golf/a.ts': lines(250) },
      { 'src/golf/a.ts': `// Long because it is a table\n${lines(300)}` },
      { 'tests/reference/a.ts': lines(900) },
    ],
  },
  namedAfterAnExport: {
    refused: [
      ['another name', { 'src/golf/club.ts': 'export const putter = 1;' }, 'src/golf/club.ts:1'],
      ['nothing', { 'src/golf/club.ts': 'const club = 1;' }, 'src/golf/club.ts:1'],
    ],
    stands: [
      { 'src/golf/club.ts': 'export const clubSchema = 1;', 'src/golf/lie.ts': 'const lie = 1;\nexport { lie };' },
      { 'src/yardages/ordering.ts': 'export function orderedCarries() {}' },
      { 'src/screens/Card.tsx': 'export function Card() {}', 'src/book/book.ts': 'export interface Book {}' },
    ],
  },
  domainFunctionsSayWhatTheyReturn: {
    refused: [
      ['a function', { 'src/golf/a.ts': 'export function a() {}' }, 'src/golf/a.ts:1'],
      [
        'an arrow',
        { 'src/book/a.ts': '/** b */\nexport const b = 1;\nexport const a = (x: number): number => x;' },
        'src/book/a.ts:3',
      ],
      ['an ordinary comment', { 'src/flight/a.ts': '/* air */\nexport function a() {}' }, 'src/flight/a.ts:2'],
    ],
    stands: [
      { 'src/golf/a.ts': '/** The club. */\nexport function a() {}\nfunction b() {}\nexport const C = 3;' },
      {
        'src/golf/a.ts':
          '/**\n * The club.\n */\nexport function a(x: 1): 1;\nexport function a(x: 2): 2;\nexport function a(x: number) {}',
      },
      { 'src/actions/a.ts': 'export function a() {}' },
    ],
  },
  nothingSilenced: {
    refused: [
      ['the compiler', { 'src/golf/a.ts': '// @ts-ignore\nconst a = 1;' }, 'src/golf/a.ts:1'],
      ['the compiler, for a file', { 'tests/a.test.ts': '/* @ts-nocheck */' }, 'tests/a.test.ts:1'],
      ['an expected error in the app', { 'src/golf/a.ts': '// @ts-expect-error later' }, 'src/golf/a.ts:1'],
      ['unfinished work', { 'src/golf/a.ts': '\n// TODO: the rest' }, 'src/golf/a.ts:2'],
      ['a test', { 'tests/a.test.ts': "test.skip('a', () => {});" }, 'tests/a.test.ts:1'],
      ['all other tests', { 'tests/a.test.ts': "describe.only('a', () => {});" }, 'tests/a.test.ts:1'],
      ['a test not written', { 'tests/a.test.ts': "test.todo('a');" }, 'tests/a.test.ts:1'],
      [
        'a test on some machines',
        { 'tests/a.journey.ts': "test.concurrent.skipIf(ci)('a', () => {});" },
        'tests/a.journey.ts:1',
      ],
    ],
    stands: [{ 'tests/a.test.ts': "// @ts-expect-error yards are no metres\ntest('skip', () => { test.each; });" }],
  },
  noEmptyCatch: {
    refused: [
      ['a block', { 'src/golf/a.ts': 'try { a(); } catch {}' }, 'src/golf/a.ts:1'],
      [
        'a block with excuses',
        { 'src/golf/a.ts': 'try { a(); }\ncatch (error) {\n  // never mind\n}' },
        'src/golf/a.ts:2',
      ],
      ['a promise', { 'src/actions/a.ts': 'void a().catch(() => {});' }, 'src/actions/a.ts:1'],
    ],
    stands: [{ 'src/golf/a.ts': 'try { a(); } catch (error) { throw new RangeError(String(error)); }' }],
  },
  nothingLeavesThePhone: {
    refused: [
      ['a request', { 'src/actions/a.ts': "void fetch('/a');" }, 'src/actions/a.ts:1'],
      ['a request by another name', { 'src/screens/App.tsx': "void window.fetch('/a');" }, 'src/screens/App.tsx:1'],
      ['a socket', { 'src/screens/a.ts': "new WebSocket('wss://a');" }, 'src/screens/a.ts:1'],
      ['a beacon', { 'src/main.tsx': "navigator.sendBeacon('/a');" }, 'src/main.tsx:1'],
    ],
    stands: [
      {
        [LOADS_THE_DEMO]: "await fetch('./demo/a.json');",
        'src/logbook/a.ts': 'await table.fetch(1); prefetch();',
      },
    ],
  },
};

describe('every rule can fail', () => {
  test('no rule is left untried', () => {
    expect(Object.keys(planted).sort()).toEqual(Object.keys(RULES).sort());
  });

  const refused = Object.entries(planted).flatMap(([rule, { refused: cases }]) =>
    cases.map(([what, files, where]) => ({ rule, what, files, where })),
  );
  test.each(refused)('$rule refuses $what', ({ rule, files, where }) => {
    const breaches = RULES[rule](sourcesOf(files));
    expect(breaches).toHaveLength(1);
    expect(breaches[0].split(' ')[0]).toBe(where);
  });

  const standing = Object.entries(planted).flatMap(([rule, { stands }]) => stands.map((files) => ({ rule, files })));
  test.each(standing)('$rule lets stand what keeps it: $files', ({ rule, files }) => {
    expect(RULES[rule](sourcesOf(files))).toEqual([]);
  });
});

describe('the compiler keeps the rules it is set for', () => {
  const from = '../../../src';
  const cases: Record<string, { source: string; errors: RegExp | undefined }> = {
    clean: {
      source: `import { metres, type Metres } from '${from}/units/metres.ts';\nexport const a: Metres = metres(3);`,
      errors: undefined,
    },
    page: { source: 'export const a = document.title;', errors: /TS2584|TS2304/ },
    timer: { source: 'setTimeout(() => 1, 2);', errors: /TS2304/ },
    node: { source: "import 'node:fs';", errors: /TS2882|TS2307|TS2591/ },
    yardsForMetres: {
      source: `import { yards } from '${from}/units/yards.ts';\nimport type { Metres } from '${from}/units/metres.ts';\nexport const a: Metres = yards(3);`,
      errors: /TS2322/,
    },
    numberForMetres: {
      source: `import type { Metres } from '${from}/units/metres.ts';\nexport const a: Metres = 3;`,
      errors: /TS2322/,
    },
    throughAGeneric: {
      source: `import { yards } from '${from}/units/yards.ts';\nimport { metres } from '${from}/units/metres.ts';\nimport type { Quantity } from '${from}/units/quantity.ts';\nfunction sum<U extends string>(a: Quantity<U>, b: Quantity<U>): number { return a + b; }\nexport const a = sum(yards(1), metres(1));`,
      errors: /TS2345/,
    },
    notErasable: { source: 'export enum Lie { tee }', errors: /TS1294/ },
  };

  mkdirSync(join(root, 'node_modules', '.cache'), { recursive: true });
  const folder = mkdtempSync(join(root, 'node_modules', '.cache', 'planted-'));
  for (const [name, { source }] of Object.entries(cases)) writeFileSync(join(folder, `${name}.ts`), source);
  const tsconfig = {
    extends: `${from}/tsconfig.pure.json`,
    include: [],
    files: Object.keys(cases).map((name) => `${name}.ts`),
  };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(tsconfig));
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const said = spawnSync(process.execPath, [tsc, '--project', folder, '--pretty', 'false'], {
    encoding: 'utf8',
  }).stdout;
  rmSync(folder, { recursive: true });

  test.each(Object.entries(cases))('%s', (name, { errors }) => {
    const about = said.split('\n').filter((line) => new RegExp(`(?:^|/)${name}\\.ts\\(`).test(line));
    if (errors === undefined) expect(about).toEqual([]);
    else expect(about.join('\n')).toMatch(errors);
  });

  test('every folder of ranks 0–3 is compiled without a browser', () => {
    const { include } = JSON.parse(readFileSync(join(root, 'src', 'tsconfig.pure.json'), 'utf8')) as {
      include: string[];
    };
    const pureFolders = Object.keys(RANKS).filter((folder) => RANKS[folder] <= LAST_PURE_RANK);
    expect(include.toSorted()).toEqual(pureFolders.toSorted());
  });

  test('every file of ours is compiled by a project, and no project compiles nothing', () => {
    const { references } = JSON.parse(readFileSync(join(root, 'tsconfig.json'), 'utf8')) as {
      references: { path: string }[];
    };
    const compiled = references.map(({ path }) => {
      const listed = spawnSync(process.execPath, [tsc, '--project', join(root, path), '--listFilesOnly'], {
        encoding: 'utf8',
      });
      return listed.stdout
        .split('\n')
        .map((file) => relative(root, file.trim()).split(sep).join('/'))
        .filter((file) => /^(?:src|tests|demo)\//.test(file));
    });
    expect(references.filter((_, n) => compiled[n].length === 0)).toEqual([]);
    const all = new Set(compiled.flat());
    const ours = [...house.keys(), ...read('demo').map(([path]) => path)].filter((path) => /\.tsx?$/.test(path));
    expect(ours.filter((path) => !all.has(path))).toEqual([]);
  });
});
