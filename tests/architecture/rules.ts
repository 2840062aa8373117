// Long because it is the list of house rules, one short function each, best read in one place.
import { posix } from 'node:path';
import {
  BANNED_NAMES,
  LAST_PURE_RANK,
  LOADS_THE_DEMO,
  MAY_SPEAK,
  PACKAGES,
  RANKS,
  ROOTS,
  SPOKEN_UNITS,
} from './house.ts';
import { exportsOf, importsOf, lineAt, type SourceText, sourceText } from './sourceText.ts';

/** Paths relative to the project's root (`src/golf/club.ts`) and what stands in them. */
export type Sources = ReadonlyMap<string, string>;

/** Breaches in words, each beginning with `path:line`. */
export type Rule = (sources: Sources) => string[];

interface SourceFile extends SourceText {
  readonly path: string;
  readonly text: string;
  /** The folder under src, or the file's own name for a loose file. */
  readonly place: string;
  readonly rank: number;
}

const takenApart = new Map<string, SourceText>();

function files(sources: Sources, under: string): SourceFile[] {
  return [...sources]
    .filter(([path]) => path.startsWith(under) && /\.tsx?$/.test(path))
    .map(([path, text]) => {
      const parts = takenApart.get(text) ?? sourceText(text);
      takenApart.set(text, parts);
      const place = path.split('/')[1];
      return { ...parts, path, text, place, rank: RANKS[place] ?? Number.POSITIVE_INFINITY };
    });
}

const src = (sources: Sources): SourceFile[] => files(sources, 'src/');
const pure = (sources: Sources): SourceFile[] => src(sources).filter((file) => file.rank <= LAST_PURE_RANK);
const isRelative = (from: string): boolean => from.startsWith('.');
const target = (path: string, from: string): string => posix.join(posix.dirname(path), from.replace(/\?.*$/, ''));

/** Every place a pattern matches in one view of the files. */
function found(list: SourceFile[], view: 'code' | 'bare' | 'comments', pattern: RegExp, why: string): string[] {
  return list.flatMap((file) =>
    [...file[view].matchAll(pattern)].map(
      (match) => `${file.path}:${lineAt(file[view], match.index)} ${match[0].trim()}: ${why}`,
    ),
  );
}

export const knownPlaces: Rule = (sources) =>
  src(sources)
    .filter(({ place }) => !(place in RANKS) && !(place in ROOTS))
    .map(({ path }) => `${path}:1 stands in no folder of the house, nor is it one of the composition roots`);

export const importsGoDown: Rule = (sources) =>
  src(sources).flatMap((file) =>
    importsOf(file)
      .filter(({ from }) => isRelative(from))
      .flatMap(({ from, line }) => {
        const to = target(file.path, from);
        const [top, place] = to.split('/');
        const at = `${file.path}:${line} imports ${from}`;
        if (top !== 'src') return [`${at}: outside src`];
        if (file.place === place && !(place in ROOTS)) return [];
        if (!(place in RANKS)) return [`${at}: composition roots are imported by nobody`];
        if (file.place in ROOTS) {
          return ROOTS[file.place].includes(place) ? [] : [`${at}: ${file.place} does not reach ${place}/`];
        }
        return RANKS[place] < file.rank ? [] : [`${at}: ${place}/ is not below ${file.place}/`];
      }),
  );

export const importsNameFiles: Rule = (sources) =>
  src(sources).flatMap((file) =>
    importsOf(file)
      .filter(({ from }) => isRelative(from))
      .filter(({ from }) => !sources.has(target(file.path, from)))
      .map(
        ({ from, line }) => `${file.path}:${line} imports ${from}: no such file (the extension is part of the name)`,
      ),
  );

export const allowedPackages: Rule = (sources) =>
  src(sources).flatMap((file) =>
    importsOf(file)
      .filter(({ from }) => !isRelative(from))
      .filter(
        ({ from }) =>
          !(PACKAGES[file.place] ?? []).some((name) => from === name || (name === 'node:' && from.startsWith(name))),
      )
      .map(({ from, line }) => `${file.path}:${line} imports ${from}: not a package of ${file.place}`),
  );

export const spokenUnitsAtTheEdges: Rule = (sources) =>
  src(sources)
    .filter(({ place }) => !MAY_SPEAK.includes(place))
    .flatMap((file) =>
      importsOf(file)
        .filter(
          ({ from }) => SPOKEN_UNITS.includes(posix.basename(from)) && target(file.path, from).startsWith('src/units/'),
        )
        .map(({ from, line }) => `${file.path}:${line} imports ${from}: SI inside, yards, °F and mph at the edges`),
    );

export const brandsOnlyInUnits: Rule = (sources) => {
  const brands = files(sources, 'src/units/').flatMap(({ bare }) =>
    [...bare.matchAll(/^export\s+type\s+(\w+)/gm)].map((match) => match[1]),
  );
  if (brands.length === 0) return [];
  const cast = new RegExp(`\\bas\\s+(?:readonly\\s+)?(?:Array<|ReadonlyArray<)?(?:${brands.join('|')})\\b`, 'g');
  return found(
    src(sources).filter(({ place }) => place !== 'units'),
    'bare',
    cast,
    'brands are given only in units/',
  );
};

export const pureRanks: Rule = (sources) =>
  found(
    pure(sources),
    'bare',
    /\bDate\.now\b|\bnew\s+Date\s*(?:\(\s*\)|(?![\s(]))|(?<!new\s+|[\w.])Date\(|\bMath\.random\b|\bperformance\s*\.|\bglobalThis\b/g,
    'ranks 0–3 know no clock, no chance and no surroundings',
  );

export const namesSaySomething: Rule = (sources) =>
  [...sources.keys()].flatMap((path) =>
    path
      .split('/')
      .filter((name) => BANNED_NAMES.includes(name.replace(/\..*$/, '').toLowerCase()))
      .map((name) => `${path}:1 is called ${name}: name it after what it holds`),
  );

export const shortFiles: Rule = (sources) =>
  [...files(sources, 'src/'), ...files(sources, 'tests/')].flatMap(({ path, text }) => {
    const lines = text.trimEnd().split('\n');
    if (/^tests\/(?:reference|fixtures)\//.test(path)) return [];
    if (lines.length > 400) return [`${path}:1 has ${lines.length} lines: never over 400`];
    const reason = lines.slice(0, 3).some((line) => /\/\/ Long because \S+/.test(line));
    return path.startsWith('src/') && lines.length > 250 && !reason
      ? [`${path}:1 has ${lines.length} lines: over 250 needs “// Long because …” on top`]
      : [];
  });

/** Words of a camelCase name, cut to a stem, so that `ordering` and `orderedCarries` agree. */
const stems = (name: string): string[] =>
  (name.match(/[A-Z]?[a-z0-9]+|[A-Z]+/g) ?? []).map((word) => word.toLowerCase().replace(/s$/, '').slice(0, 5));

export const namedAfterAnExport: Rule = (sources) =>
  src(sources)
    .filter(({ path, place }) => !(place in ROOTS) && path !== 'src/worker/entry.ts' && !path.endsWith('.d.ts'))
    .filter((file) => {
      const named = stems(posix.basename(file.path).replace(/\.tsx?$/, ''));
      return !exportsOf(file).some((exported) => stems(exported).some((stem) => named.includes(stem)));
    })
    .map((file) => `${file.path}:1 is named after none of its exports (${exportsOf(file).join(', ') || 'none'})`);

export const domainFunctionsSayWhatTheyReturn: Rule = (sources) =>
  pure(sources).flatMap((file) =>
    [
      ...file.bare.matchAll(
        /^export\s+(?:async\s+)?(?:function\*?\s+(\w+)|const\s+(\w+)(?:\s*:[^=\n]+)?\s*=\s*(?:async\s*)?(?:<[^>]*>)?\([^)]*\)[^=\n;]*=>)/gm,
      ),
    ]
      .filter((match) => {
        const name = match[1] ?? match[2];
        const before = file.text.slice(0, match.index).trimEnd();
        const overload = new RegExp(`export\\s+(?:async\\s+)?function\\s+${name}\\b[^{}]*;$`).test(before);
        return !overload && !(before.endsWith('*/') && /\/\*\*(?:(?!\*\/)[\s\S])*\*\/$/.test(before));
      })
      .map((match) => `${file.path}:${lineAt(file.text, match.index)} ${match[1] ?? match[2]} has no docstring`),
  );

export const nothingSilenced: Rule = (sources) => [
  ...found(
    [...files(sources, 'src/'), ...files(sources, 'tests/')],
    'comments',
    /@ts-(?:ignore|nocheck)\b|\b(?:TODO|FIXME|XXX)\b/g,
    'finish it or leave it out',
  ),
  ...found(src(sources), 'comments', /@ts-expect-error\b/g, 'belongs to tests of types'),
  ...found(
    files(sources, 'tests/'),
    'bare',
    /\b(?:test|it|describe|suite|bench)(?:\.\w+)*\.(?:skip|only|todo|skipIf|runIf|fails|fail|fixme)\b|\b(?:xit|xtest|xdescribe)\b/g,
    'every test runs and every test can fail',
  ),
];

export const noEmptyCatch: Rule = (sources) =>
  found(
    src(sources),
    'bare',
    /\bcatch\s*(?:\([^)]*\)\s*)?\{\s*\}|\.catch\(\s*\(\s*\w*\s*\)\s*=>\s*\{\s*\}\s*\)/g,
    'an error is told, not dropped',
  );

export const nothingLeavesThePhone: Rule = (sources) =>
  found(
    src(sources).filter(({ path }) => path !== LOADS_THE_DEMO),
    'bare',
    /(?<![.\w])fetch\s*\(|\b(?:window|self|globalThis)\.fetch\b|\b(?:XMLHttpRequest|WebSocket|EventSource|RTCPeerConnection|sendBeacon|importScripts)\b/g,
    'only the demo season is loaded, and by the screens',
  );

export const RULES: Readonly<Record<string, Rule>> = {
  knownPlaces,
  importsGoDown,
  importsNameFiles,
  allowedPackages,
  spokenUnitsAtTheEdges,
  brandsOnlyInUnits,
  pureRanks,
  namesSaySomething,
  shortFiles,
  namedAfterAnExport,
  domainFunctionsSayWhatTheyReturn,
  nothingSilenced,
  noEmptyCatch,
  nothingLeavesThePhone,
};
