/**
 * `npm test`: format, lint and every compiler project, then unit, golfer and fault tests, then the build and what it must hold,
 * then the journeys in Chromium. Adds everything up and prints the counts as the last line.
 *
 * `--check` stops after the unit tests; `--prove` runs the same suites with full counts.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './bundle.mjs';
import { findChromium } from './chromium.mjs';

const onlyCheck = process.argv.includes('--check');
const results = join(root, 'test-results');
const total = { passed: 0, failed: 0, skipped: 0 };
const began = Date.now();

const env = { ...process.env, FORCE_COLOR: process.env.FORCE_COLOR ?? '0' };
if (env.FORCE_COLOR === '0') delete env.FORCE_COLOR;
if (process.argv.includes('--prove')) env.CARRYBOOK_PROVE = '1';

const bin = (path) => join('node_modules', path);

function add({ passed, failed, skipped }) {
  total.passed += passed;
  total.failed += failed;
  total.skipped += skipped;
}

/** Runs a Node program; loud ones speak as they go, quiet ones only when they fail. */
function node(args, loud) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      env,
      stdio: ['ignore', loud ? 'inherit' : 'pipe', loud ? 'inherit' : 'pipe'],
    });
    let said = '';
    child.stdout?.on('data', (text) => (said += text));
    child.stderr?.on('data', (text) => (said += text));
    child.on('error', (error) => resolve({ code: 1, said: String(error) }));
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
  });
}

/** One step that counts as one: it passes or it fails. */
async function step(name, args) {
  const since = Date.now();
  const { code, said } = await node(args, false);
  console.log(`${code === 0 ? '✓' : '✗'} ${name} (${((Date.now() - since) / 1000).toFixed(1)} s)`);
  if (code !== 0) console.log(said);
  add({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: 0 });
  return code === 0;
}

/** Counts of a runner's JSON; a file that is missing, or names no test at all, is a failure of its own. */
function counted(name, file, code, read) {
  let counts = { passed: 0, failed: 0, skipped: 0 };
  try {
    counts = read(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    console.log(`✗ ${name}: no result to read (${error.message})`);
  }
  if (counts.passed + counts.failed === 0) {
    console.log(`✗ ${name}: not one test ran`);
    counts.failed = 1;
  } else if (code !== 0 && counts.failed === 0) {
    console.log(`✗ ${name}: ended with code ${code} though no test failed`);
    counts.failed = 1;
  }
  add(counts);
}

async function vitest(name, projects) {
  const file = join(results, `${name}.json`);
  const { code } = await node(
    [
      bin('vitest/vitest.mjs'),
      'run',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ],
    true,
  );
  counted(name, file, code, (json) => ({
    passed: json.numPassedTests,
    // A file that does not even load has no tests to fail.
    failed:
      json.numFailedTests +
      json.testResults.filter((f) => f.status === 'failed' && f.assertionResults.length === 0).length,
    skipped: json.numPendingTests + json.numTodoTests,
  }));
}

async function journeys() {
  const file = join(results, 'journeys.json');
  env.CHROMIUM_PATH = (await findChromium()) ?? '';
  env.PLAYWRIGHT_JSON_OUTPUT_FILE = file;
  const { code } = await node(
    [bin('@playwright/test/cli.js'), 'test', '--config', 'tests/journeys/playwright.config.ts', '--reporter=list,json'],
    true,
  );
  counted('journeys', file, code, ({ stats, errors }) => ({
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + errors.length,
    skipped: stats.skipped,
  }));
}

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

const compilerProjects = JSON.parse(readFileSync(join(root, 'tsconfig.json'), 'utf8')).references.map(
  ({ path }) => path,
);
await step('format and lint', [bin('@biomejs/biome/bin/biome'), 'check', '--max-diagnostics=50', '.']);
await step('second lint', [bin('oxlint/bin/oxlint'), '--deny-warnings']);
await step('unused files and exports', [bin('knip/bin/knip.js'), '--no-progress', '--no-config-hints']);
for (const project of compilerProjects) {
  await step(`compile ${project}`, [bin('typescript/bin/tsc'), '--project', project, '--pretty', 'false']);
}

if (onlyCheck) {
  await vitest('unit', ['unit']);
} else {
  await vitest('unit', ['unit', 'golfers', 'faults']);
  if (await step('build', [bin('vite/bin/vite.js'), 'build'])) {
    await vitest('built', ['built']);
    await journeys();
  } else {
    console.log('✗ nothing built: neither its contents nor the journeys could be tried');
    add({ passed: 0, failed: 2, skipped: 0 });
  }
}

console.log(`\n${((Date.now() - began) / 1000).toFixed(0)} s`);
const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed > 0 || total.skipped > 0 || total.passed === 0 ? 1 : 0;
