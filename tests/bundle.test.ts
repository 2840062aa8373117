import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { foreignAddresses, inlineCode, staticImports } from './architecture/builtPage.ts';

const dist = fileURLToPath(new URL('../dist', import.meta.url));
if (!existsSync(dist)) throw new Error('There is no dist: run `npm run build` first');

const built = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(dist, join(entry.parentPath, entry.name)).split(sep).join('/'));
const read = (path: string): string => readFileSync(join(dist, path), 'utf8');
const gzipped = (paths: Iterable<string>): number =>
  [...paths].reduce((sum, path) => sum + gzipSync(readFileSync(join(dist, path)), { level: 9 }).length, 0);

const page = read('index.html');
const entries = [...page.matchAll(/<script[^>]*\ssrc="\.\/([^"]+)"/g)].map((match) => match[1]);

/** The entry and everything it must load before it runs. */
function firstLoad(): Set<string> {
  const reached = new Set<string>();
  const visit = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    for (const from of staticImports(read(path))) visit(join(path, '..', from).split(sep).join('/'));
  };
  for (const entry of entries) visit(entry);
  return reached;
}

const KILO = 1000;

describe('the built app stays small', () => {
  test('the entry and its static imports are at most 60 kB gzipped', () => {
    expect(entries).toHaveLength(1);
    const size = gzipped(firstLoad());
    console.log(`entry: ${(size / KILO).toFixed(1)} kB gzipped in ${firstLoad().size} file(s)`);
    expect(size).toBeLessThanOrEqual(60 * KILO);
  });

  test('all scripts together are at most 220 kB gzipped', () => {
    const scripts = built.filter((path) => path.endsWith('.js'));
    const size = gzipped(scripts);
    console.log(`all scripts: ${(size / KILO).toFixed(1)} kB gzipped in ${scripts.length} files`);
    expect(scripts.length).toBeGreaterThan(1);
    expect(size).toBeLessThanOrEqual(220 * KILO);
  });
});

describe('the built app keeps to itself', () => {
  test('the page has no inline script, style or handler, and carries the policy before any script', () => {
    expect(inlineCode(page)).toEqual([]);
    const policy = page.indexOf('Content-Security-Policy');
    expect(policy).toBeGreaterThan(0);
    expect(policy).toBeLessThan(page.indexOf('<script'));
    expect(page).toContain('default-src &#39;none&#39;');
    expect(page).not.toContain('unsafe-');
  });

  test.each(built.filter((path) => /\.(?:js|css|html|webmanifest)$/.test(path)))('%s names no other host', (path) => {
    expect(foreignAddresses(read(path))).toEqual([]);
  });

  test('everything the page could ask for is kept for offline', () => {
    const worker = read('sw.js');
    const kept = built.filter((path) => path !== 'sw.js');
    expect(kept.filter((path) => !worker.includes(`"${path}"`))).toEqual([]);
    expect(kept.filter((path) => path.startsWith('demo/')).length).toBeGreaterThan(0);
    expect(worker).toContain('SKIP_WAITING');
    expect(worker).not.toMatch(/importScripts\(/);
  });

  test('the manifest names icons that are there, maskable one included', () => {
    const { icons } = JSON.parse(read('manifest.webmanifest')) as {
      icons: { src: string; sizes: string; purpose: string }[];
    };
    expect(icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`)).toEqual([
      '192x192 any',
      '512x512 any',
      '512x512 maskable',
    ]);
    for (const { src, sizes } of icons) {
      // Width and height stand big-endian at bytes 16 and 20. Source: W3C PNG specification, IHDR.
      const png = readFileSync(join(dist, src));
      expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
    }
  });
});

describe('what the checks above look for, they find', () => {
  test('inline code', () => {
    expect(inlineCode('<script>a()</script><style>a{}</style><p style="a" onclick="b()">')).toHaveLength(4);
    expect(inlineCode('<script type="module" src="./a.js"></script><p class="style">only = style</p>')).toEqual([]);
  });

  test('other hosts', () => {
    expect(foreignAddresses('fetch("https://example.org/a")')).toEqual(['https://example.org/a']);
    expect(foreignAddresses('url(//cdn.example.org/a.woff2)')).toEqual(['//cdn.example.org/a.woff2']);
    expect(foreignAddresses('createElementNS("http://www.w3.org/2000/svg")')).toEqual([]);
  });

  test('static imports, not those at run time', () => {
    expect(staticImports('import{a}from"./a.js";import"./b.js";export*from"./c.js";import("./d.js")')).toEqual([
      './a.js',
      './c.js',
      './b.js',
    ]);
  });
});
