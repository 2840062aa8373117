import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
export const cache = join(root, 'node_modules', '.cache', 'carrybook');

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.name !== 'node_modules')
    .flatMap((entry) => filesUnder(join(path, entry.name)));
}

/** One hash over names and contents of files and folders, given relative to the root. */
export function hashOf(paths) {
  const hash = createHash('sha256');
  for (const file of paths.flatMap((path) => filesUnder(join(root, path))).sort()) {
    hash
      .update(`${relative(root, file)}\0`)
      .update(readFileSync(file))
      .update('\0');
  }
  return hash.digest('hex').slice(0, 24);
}

/**
 * Makes one plain Node file of a TypeScript file and all it imports, and keeps it until a source changes.
 *
 * @param {string} entry the TypeScript file, relative to the root.
 * @returns {Promise<string>} the path of the file to run.
 */
export async function bundle(entry) {
  const source = join(root, entry);
  if (!existsSync(source)) throw new Error(`There is no ${entry}`);
  const sources = entry.startsWith('src/') ? ['src'] : ['src', 'demo', 'tests'];
  const key = hashOf([...sources, 'package-lock.json', '.scripts/bundle.mjs']);
  const name = `${basename(entry).replace(/\.tsx?$/, '')}-${key}.mjs`;
  const out = join(cache, name);
  if (existsSync(out)) return out;
  const { build } = await import('vite');
  const folder = join(cache, `making-${process.pid}`);
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: source,
      target: 'node20',
      outDir: folder,
      emptyOutDir: true,
      minify: false,
      rolldownOptions: { output: { entryFileNames: name, codeSplitting: false } },
    },
  });
  mkdirSync(cache, { recursive: true });
  for (const old of readdirSync(cache)) {
    // Another run may just be using a recent one.
    const outdated = old.endsWith('.mjs') && Date.now() - statSync(join(cache, old)).mtimeMs > 24 * 3600 * 1000;
    if (outdated) rmSync(join(cache, old));
  }
  renameSync(join(folder, name), out);
  rmSync(folder, { recursive: true });
  return out;
}
