/** Runs a TypeScript file with Node: `node .scripts/run.mjs FILE.ts [ARGUMENTS]`, from any folder. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { installPackages } from './setup.mjs';

/** Bundles a file, runs it with these arguments and gives its exit code. */
export async function run(entry, args) {
  installPackages();
  const { bundle } = await import('./bundle.mjs');
  const { status, signal } = spawnSync(process.execPath, ['--enable-source-maps', await bundle(entry), ...args], {
    stdio: 'inherit',
  });
  if (signal !== null) console.error(`${entry} was ended by ${signal}`);
  return status ?? 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [entry, ...args] = process.argv.slice(2);
  if (entry === undefined) {
    console.error('Usage: node .scripts/run.mjs FILE.ts [ARGUMENTS]');
    process.exit(2);
  }
  process.exitCode = await run(entry, args);
}
