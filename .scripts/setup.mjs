/**
 * Makes a fresh clone ready: installs the packages when they are missing or the lock file changed, and with `--browser` finds
 * Chromium for the journeys or installs it. Says nothing when there is nothing to do; whatever it says goes to stderr, so that a
 * command's own output stays clean. Imports nothing but Node itself: nothing else may be there yet.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const stampFile = join(root, 'node_modules', '.carrybook-setup');

function stop(message) {
  console.error(message);
  process.exit(1);
}

function run(command, args, env = {}) {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ['ignore', 2, 2],
  });
  return error === undefined && status === 0;
}

function stamp() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  return `${createHash('sha256').update(lock).digest('hex')} ${process.platform}-${process.arch}\n`;
}

/** Whether packages put there by hand (`npm ci`, `npm install`) are already the ones of the lock file. */
function alreadyInstalled() {
  const installedFile = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installedFile)) return false;
  const installed = JSON.parse(readFileSync(installedFile, 'utf8')).packages;
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === '' || optional === true || installed[path]?.version === version,
  );
}

/** Installs the packages of the lock file unless they are there. */
export function installPackages() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    stop(`Carrybook needs Node 20.19 or newer; this is ${process.versions.node}.`);
  }
  const wanted = stamp();
  const found = existsSync(stampFile) ? readFileSync(stampFile, 'utf8') : undefined;
  if (found === wanted) return;
  if (found !== undefined || !alreadyInstalled()) {
    console.error('Installing packages (a minute or two, once) …');
    const npm = process.env.npm_execpath;
    const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
    const done = npm === undefined ? run('npm', args) : run(process.execPath, [npm, ...args]);
    if (!done) stop('`npm ci` failed: see above. Is the package registry within reach?');
  }
  writeFileSync(stampFile, wanted);
}

const hasPdftotext = () => spawnSync('pdftotext', ['-v'], { stdio: 'ignore' }).error === undefined;

/** Finds what the journeys need, Chromium and pdftotext, or installs it where that is possible without asking. */
async function provideBrowser() {
  const wanted = [
    ...((await findChromium()) === undefined ? ['chromium', 'fonts-dejavu-core'] : []),
    ...(hasPdftotext() ? [] : ['poppler-utils']),
  ];
  if (wanted.length === 0) return;
  const instructions =
    'The journeys need Chromium and pdftotext, and not both were found. Install them (Debian: `apt-get install ' +
    'chromium poppler-utils`; Chromium anywhere: `npx playwright install chromium`), or say where the browser is: ' +
    '`CHROMIUM_PATH=/path/to/chromium npm test`.';
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !existsSync('/usr/bin/apt-get')) stop(instructions);
  console.error(`Installing ${wanted.join(', ')} (once) …`);
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['-qq', 'update'], quiet);
  run('apt-get', ['-qq', 'install', '-y', '--no-install-recommends', ...wanted], quiet);
  if ((await findChromium()) === undefined || !hasPdftotext()) stop(instructions);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  installPackages();
  if (process.argv.includes('--browser')) await provideBrowser().catch((error) => stop(error.message));
}
