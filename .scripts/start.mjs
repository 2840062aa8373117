/** Builds the app when its sources changed and serves the built app on this machine. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, preview } from 'vite';
import { cache, hashOf, root } from './bundle.mjs';

const stampFile = join(cache, 'built');
const sources = hashOf(['src', 'public', 'demo', 'index.html', 'vite.config.ts', 'package-lock.json']);
const built = existsSync(join(root, 'dist', 'index.html')) && existsSync(stampFile) && readFileSync(stampFile, 'utf8');

if (built !== sources) {
  console.log('Building …');
  await build({ root, logLevel: 'warn' });
  mkdirSync(cache, { recursive: true });
  writeFileSync(stampFile, sources);
}

const port = Number(process.env.PORT ?? 4173);
const server = await preview({ root, preview: { port, strictPort: false } });
const [address] = server.resolvedUrls.local;
console.log(`
Carrybook is open at ${address}

To look around, choose “A player’s season” or “A coach’s season” there: both are invented.
Stop it with Ctrl+C. Nothing you enter leaves this browser.
`);
