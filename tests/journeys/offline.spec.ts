import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { watchRequests } from './ownRequests.ts';
import { type SwitchableServer, switchableServer } from './switchableServer.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'carrybook-builds-'));
const builds = { one: join(folder, 'one'), two: join(folder, 'two') };
let host: SwitchableServer;

function build(version: string, outDir: string): void {
  execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--outDir', outDir, '--logLevel', 'warn'], {
    cwd: root,
    env: { ...process.env, CARRYBOOK_VERSION: version },
    stdio: 'pipe',
  });
}

test.beforeAll(() => {
  test.setTimeout(180_000);
  build('test-one', builds.one);
  build('test-two', builds.two);
});
test.afterAll(() => rmSync(folder, { recursive: true }));

test.beforeEach(async () => {
  host = await switchableServer(builds.one);
});
test.afterEach(() => host.stop());

/** Opens the app and waits until all of it is kept and every request goes through what is kept. */
async function firstVisit(page: Page): Promise<void> {
  await page.goto(host.address);
  await page.getByRole('button', { name: 'Start from typical lofts' }).waitFor();
  await page.waitForFunction(async () => {
    const { active } = await navigator.serviceWorker.ready;
    return active?.state === 'activated' && navigator.serviceWorker.controller !== null;
  });
}

async function bagOfThirteen(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.getByRole('button', { name: 'Not now' }).click();
  await page.getByRole('list', { name: 'In the bag' }).waitFor();
}

/** A shot with its club chosen and nothing more, in a casual round. */
async function halfEnteredShot(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.locator('[data-pad]').getByRole('button', { name: 'driver', exact: true }).click();
  await expect(page.locator('section[aria-label] h2')).toHaveText(/How was it struck/);
}

/** Looks for a new version until it is there: a look of the browser's own may still be under way with the old files. */
async function findNewVersion(page: Page): Promise<void> {
  await page.goto(`${host.address}#/more`);
  await expect(async () => {
    const look = page.getByRole('button', { name: 'Look for a new version' });
    if (await look.isVisible()) await look.click();
    await expect(page.getByText('A new version is ready.')).toBeVisible({ timeout: 3_000 });
  }).toPass();
}

test('with the server gone the second visit works, every place of it, and the demo season too', async ({
  page,
  context,
}) => {
  const watched = watchRequests(context, host.address);
  await firstVisit(page);
  await bagOfThirteen(page);
  await host.stop();
  try {
    await page.reload();
    await expect(page.getByRole('list', { name: 'In the bag' }).locator('li')).toHaveCount(13);
    await page.getByRole('link', { name: 'Yardages' }).click();
    await expect(page.locator('[data-stock]').first()).toBeVisible();
    await page.getByRole('link', { name: 'Round', exact: true }).click();
    await expect(page.getByRole('button', { name: 'Start the round' })).toBeVisible();
    await page.getByRole('link', { name: 'More' }).click();
    await page.getByRole('button', { name: 'A player’s season' }).click();
    await expect(page.getByText('This is the demo season')).toBeVisible();
    await page.getByRole('link', { name: 'More' }).click();
    await page.getByRole('button', { name: 'Look for a new version' }).click();
    await expect(page.getByText('No new version could be looked for')).toBeVisible();
    expect(watched.foreign()).toEqual([]);
    expect(watched.requests.length).toBeGreaterThan(10);
  } finally {
    await host.start();
  }
});

test('a new version waits while a round is open, and keeps the half-entered shot when it is taken', async ({
  page,
}) => {
  await firstVisit(page);
  await bagOfThirteen(page);
  await halfEnteredShot(page);
  host.serve(builds.two);
  await findNewVersion(page);
  await expect(page.getByText('It waits until the round is over')).toBeVisible();
  await expect(page.getByText('Version test-one')).toBeVisible();
  for (const place of ['Round', 'Yardages', 'Bag']) {
    await page.getByRole('link', { name: place, exact: true }).click();
    await page.locator('main h1, main [data-pad]').first().waitFor();
    await expect(page.getByText('A new version is ready')).toHaveCount(0);
  }
  // A reload by itself changes nothing either: the waiting version goes on waiting.
  await page.reload();
  await page.getByRole('link', { name: 'More' }).click();
  await expect(page.getByText('Version test-one')).toBeVisible();
  await page.getByRole('button', { name: 'Take the new version' }).click();
  await expect(page.getByText('Version test-two')).toBeVisible();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await expect(page.locator('section[aria-label] h2')).toHaveText(/How was it struck/);
  await expect(page.locator('main')).toContainText('Driver full from tee');
});

test('between rounds a line tells of the new version; it can wait, and another tab is not pulled along', async ({
  page,
  context,
}) => {
  await firstVisit(page);
  await bagOfThirteen(page);
  const other = await context.newPage();
  await other.goto(`${host.address}#/bag`);
  await other.getByRole('list', { name: 'In the bag' }).waitFor();
  host.serve(builds.two);
  await findNewVersion(page);
  await page.getByRole('link', { name: 'Bag' }).click();
  const line = page.getByRole('status').filter({ hasText: 'A new version is ready.' });
  await expect(line).toBeVisible();
  await line.getByRole('button', { name: 'Later' }).click();
  await expect(line).toHaveCount(0);
  await page.getByRole('link', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Take the new version' }).click();
  await expect(page.getByText('Version test-two')).toBeVisible();

  await expect(other.getByRole('list', { name: 'In the bag' }).locator('li')).toHaveCount(13);
  await other.getByRole('link', { name: 'More' }).click();
  await expect(other.getByText('Version test-one')).toBeVisible();
  await expect(other.getByText('Another tab has taken a new version')).toBeVisible();
  await other.getByRole('button', { name: 'Load again' }).click();
  await expect(other.getByText('Version test-two')).toBeVisible();
});
