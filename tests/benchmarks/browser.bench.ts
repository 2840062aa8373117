import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Page, test } from '@playwright/test';
import { logbookOf, readCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { readValue } from '../exchange/reading.ts';
import { openPhone } from '../journeys/phoneBrowser.ts';
import { arithmeticOf, floorRun, medianOf } from './arithmeticFloor.ts';
import { buildEmptyPage } from './emptyPage.ts';
import { longLogbookText } from './longLogbook.ts';
import { serve } from './staticServer.ts';
import { type Seen, watchPage } from './watchPage.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const dist = process.env.CARRYBOOK_DIST ?? join(root, 'dist');
const SHOTS = 20_000;
const SLOWED = 4;
const STARTS = Number(process.env.CARRYBOOK_STARTS ?? 9);
const LOGGED = Number(process.env.CARRYBOOK_LOGGED ?? 12);
const REFITS = Number(process.env.CARRYBOOK_REFITS ?? 5);
/** Refits that only warm both up. */
const WARM_UP = 1;
const PATIENCE_MS = 20_000;
/** Taps closer in time on one spot count once. */
const BETWEEN_TAPS_MS = 360;
const AS_OF = '2026-11-01T12:00:00.000Z';

interface Row {
  readonly what: string;
  readonly ms: number;
  readonly besides: string;
  readonly besides_ms: number;
  readonly goal: number;
}

const seenOf = (page: Page): Promise<Seen> => page.evaluate(() => (globalThis as unknown as { seen: Seen }).seen);

async function slowed(page: Page, rate = SLOWED) {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  return session;
}

/** Keeps a page offline: it is there without its host from now on. */
async function keepOffline(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** One cold start: no page, no service worker running, no host. */
async function start(page: Page, url: string): Promise<Seen> {
  const fresh = await page.context().newPage();
  try {
    const session = await slowed(fresh);
    await session.send('ServiceWorker.enable');
    await session.send('ServiceWorker.stopAllWorkers');
    await fresh.addInitScript(watchPage, true);
    await fresh.goto(url, { waitUntil: 'commit' });
    await fresh.waitForFunction(() => (globalThis as unknown as { seen?: Seen }).seen?.responding, null, {
      timeout: 60_000,
    });
    await fresh.waitForTimeout(1500);
    return await seenOf(fresh);
  } finally {
    await fresh.close();
  }
}

/** One put into a store with nothing else in it, as durable as the app's. */
function barePut(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('bare');
      opening.onupgradeneeded = () => opening.result.createObjectStore('shots', { keyPath: 'id' });
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const shot = {
      id: crypto.randomUUID(),
      roundId: 'r',
      hole: 1,
      number: 1,
      clubId: 'c7',
      carry: { m: 140, by: 'laser' },
      note: 'x'.repeat(400),
    };
    const since = performance.now();
    await new Promise<void>((resolve, reject) => {
      const writing = db.transaction('shots', 'readwrite', { durability: 'strict' });
      writing.oncomplete = () => resolve();
      writing.onabort = () => reject(writing.error);
      writing.objectStore('shots').put(shot);
    });
    const ms = performance.now() - since;
    db.close();
    return ms;
  });
}

/** Answers what the page asks until one more shot is saved. */
async function logShot(page: Page): Promise<void> {
  const lines = page.locator('li[data-shot]');
  const before = await page.locator('li[data-shot]:not(:has(em))').count();
  const face = (name: string | RegExp) =>
    page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name }).first();
  for (let step = 0; step < 10 && (await lines.count()) <= before; step++) {
    const asked = (await page.locator('section[aria-label] h2').textContent()) ?? '';
    if (asked.startsWith('How far is the flag')) await face('Skip').click();
    else if (asked.startsWith('Which club')) await page.locator('[data-pad] button').nth(2).click();
    else if (asked.startsWith('How far back')) await face('full').click();
    else if (asked.startsWith('How was it struck')) await face('solid').click();
    else if (asked.startsWith('Where did it pitch')) await face('Skip').click();
    else if (asked.startsWith('Where is the ball now')) await face('fairway').click();
    else throw new Error(`the page asks “${asked}”`);
    await page.waitForTimeout(BETWEEN_TAPS_MS);
  }
  await page.waitForFunction(
    (before) => document.querySelectorAll('li[data-shot]:not(:has(em))').length > before,
    before,
  );
}

/** How long the worker takes for the book it was last asked for, asked again. */
async function refit(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const { worker, request, seen } = globalThis as unknown as { worker: Worker; request: { id: number }; seen: Seen };
    const count = seen.asked.length;
    worker.postMessage({ ...request, id: -1 - count });
    while (seen.asked.length === count) await new Promise((resolve) => setTimeout(resolve, 5));
    return seen.asked[count].ms;
  });
}

test('in Chromium', async () => {
  const empty = await serve(await buildEmptyPage());
  const app = await serve(dist);
  const profile = mkdtempSync(join(tmpdir(), 'carrybook-bench-'));
  const text = longLogbookText(SHOTS);
  const phone = await openPhone(profile);
  const rows: Row[] = [];
  const say: string[] = [];
  try {
    const { page } = phone;
    await keepOffline(page, empty.url);
    await keepOffline(page, app.url);
    await page.evaluate(() => {
      location.hash = '#/more/restore';
    });
    const file = join(profile, 'long.json');
    writeFileSync(file, text);
    await page.locator('#backup-file').waitFor({ state: 'attached' });
    const session = await page.context().newCDPSession(page);
    const { root: tree } = await session.send('DOM.getDocument');
    const { nodeId } = await session.send('DOM.querySelector', { nodeId: tree.nodeId, selector: '#backup-file' });
    await session.send('DOM.setFileInputFiles', { nodeId, files: [file] });
    await page.getByRole('button', { name: 'Bring it back' }).waitFor({ timeout: 120_000 });
    const since = Date.now();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await page.getByRole('link', { name: 'To the yardages' }).waitFor({ timeout: 120_000 });
    say.push(
      `a backup of ${SHOTS} shots (${(text.length / 1e6).toFixed(1)} MB) restored in ${((Date.now() - since) / 1000).toFixed(1)} s, processor not slowed`,
    );
    await page.goto(`${app.url}#/round`);
    await page.locator('[data-pad] button').first().waitFor();
    await empty.close();
    await app.close();
    await page.close({ runBeforeUnload: false }).catch(() => {});
    const context = page.context();
    const blank = await context.newPage();

    const starts: Seen[] = [];
    const bares: Seen[] = [];
    for (let i = 0; i < STARTS; i++) {
      bares.push(await start(blank, empty.url));
      starts.push(await start(blank, app.url));
      console.error(
        `start ${i + 1}: ${starts[i].responding.toFixed(0)} ms, empty page ${bares[i].responding.toFixed(0)} ms`,
      );
    }
    rows.push({
      what: 'cold start, offline, to the first shot key that answers',
      ms: medianOf(starts.map(({ responding }) => responding)),
      besides: 'empty Preact page',
      besides_ms: medianOf(bares.map(({ responding }) => responding)),
      goal: 2.5,
    });
    const long = starts.flatMap(({ longTasks }) => longTasks);
    say.push(
      `first key on the page after ${medianOf(starts.map(({ shown }) => shown)).toFixed(0)} ms (empty page ${medianOf(bares.map(({ shown }) => shown)).toFixed(0)} ms)`,
    );
    say.push(
      `tasks over 50 ms in a start and the 1.5 s after it: ${(long.length / STARTS).toFixed(1)} a start (empty page ${(bares.flatMap(({ longTasks }) => longTasks).length / STARTS).toFixed(1)}); of the last: ${starts
        .at(-1)
        ?.longTasks.map(({ at, ms }) => `${ms.toFixed(0)} ms at ${at.toFixed(0)}`)
        .join(', ')}`,
    );

    const round = await context.newPage();
    await round.addInitScript(watchPage, false);
    round.setDefaultTimeout(PATIENCE_MS);
    // A hole that the starts have not touched.
    await round.goto(`${app.url}#/round/log/open-round/9`);
    await round.locator('[data-pad] button').first().waitFor();
    await round.waitForTimeout(2000);
    await slowed(round);
    const puts: number[] = [];
    for (let i = 0; i < LOGGED; i++) {
      await logShot(round);
      console.error(`shot ${i + 1}`);
      puts.push(await barePut(round));
    }
    const seen = await seenOf(round);
    rows.push({
      what: 'tap that logs a shot to “saved” on the screen',
      ms: medianOf(seen.saves),
      besides: 'bare strict put',
      besides_ms: medianOf(puts),
      goal: 1.5,
    });
    const taps = [...seen.taps].sort((a, b) => a - b);
    say.push(
      `tap → visible: median ${medianOf(taps).toFixed(0)} ms, p95 ${taps[Math.floor(taps.length * 0.95)].toFixed(0)} ms over ${taps.length} taps (budget p95 100 ms)`,
    );
    const saves = [...seen.saves].sort((a, b) => a - b);
    say.push(
      `saved: p95 ${saves[Math.floor(saves.length * 0.95)].toFixed(0)} ms over ${saves.length} shots (budget p95 200 ms)`,
    );
    say.push(
      `tasks over 50 ms while ${LOGGED} shots were logged: ${seen.longTasks.length}: ${seen.longTasks.map(({ ms }) => `${ms.toFixed(0)}`).join(', ')} ms`,
    );

    await slowed(round, 1);
    await round.evaluate(() => {
      location.hash = '#/yardages';
    });
    await round.locator('[data-stock]').first().waitFor({ timeout: 120_000 });
    await round.waitForTimeout(1000);
    const refits: number[] = [];
    const floors: number[] = [];
    const arithmetic = arithmeticOf(logbookOf(readValue(readCarrybookFile(text))), AS_OF);
    await round.evaluate(`globalThis.floorRun = ${floorRun.toString()}`);
    for (let i = 0; i < REFITS + WARM_UP; i++) {
      const ms = await refit(round);
      console.error(`refit ${ms.toFixed(0)} ms`);
      const floor = await round.evaluate((arithmetic) => {
        const since = performance.now();
        const sum = (globalThis as unknown as { floorRun: typeof floorRun }).floorRun(arithmetic);
        return Number.isFinite(sum) ? performance.now() - since : Number.NaN;
      }, arithmetic);
      if (i < WARM_UP) continue;
      refits.push(ms);
      floors.push(floor);
    }
    rows.push({
      what: `book of ${SHOTS} shots refitted in the worker, the records sent there included, processor not slowed`,
      ms: medianOf(refits),
      besides: 'arithmetic floor',
      besides_ms: medianOf(floors),
      goal: 3,
    });
    const version = await round.evaluate(() => /Chrome\/([\d.]+)/.exec(navigator.userAgent)?.[1] ?? 'unknown');
    say.push(
      `Chromium ${version}, ${cpus().length} cores, ${STARTS} starts of each page in turn, ${LOGGED} shots, ${REFITS} refits; ${new Date().toISOString().slice(0, 10)}`,
    );
  } catch (error) {
    say.push(`the bench stopped: ${(error as Error).stack}`);
  } finally {
    await phone.kill();
    await Promise.all([empty.close(), app.close()]);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
  const table = [
    '| what | median | beside | its median | ratio | goal |',
    '|---|--:|---|--:|--:|--:|',
    ...rows.map(
      (row) =>
        `| ${row.what} | ${row.ms.toFixed(row.ms < 20 ? 1 : 0)} ms | ${row.besides} | ${row.besides_ms.toFixed(row.besides_ms < 20 ? 1 : 0)} ms | ${(row.ms / row.besides_ms).toFixed(1)} | ${row.goal} |`,
    ),
    '',
    ...say.map((line) => `- ${line}`),
  ].join('\n');
  mkdirSync(join(root, 'test-results'), { recursive: true });
  writeFileSync(join(root, 'test-results', 'budgets.md'), `${table}\n`);
  console.log(`\n${table}`);
});
