import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { inTheme, openDemo } from './openDemo.ts';
import { watchRequests } from './ownRequests.ts';
import { startTypicalBag } from './typicalBag.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const demo = (name: string): string => join(root, 'demo', `${name}.json`);
const AS_OF = '2026-07-20';

/** The whole report on a file as of one day, as the command prints it. */
function report(file: string): string {
  const args = ['.scripts/report.mjs', file, '--as-of', AS_OF, '--json'];
  return execFileSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
}

/** The text of a file without the moment it was written at. */
const undated = (file: string): string => readFileSync(file, 'utf8').replace(/"exportedAt": "[^"]+"/, '');

async function pick(page: Page, file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
  await page.locator('#backup-file').setInputFiles(file);
}

/** Brings a backup back into an empty logbook. */
async function restore(page: Page, file: string): Promise<void> {
  await page.goto('./#/more/restore');
  await pick(page, file);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByText(/^Restored: /)).toBeVisible();
}

async function saveBackup(page: Page, folder: string, name: string): Promise<string> {
  await page.goto('./#/more');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup file' }).click();
  const file = join(folder, name);
  await (await download).saveAs(file);
  await expect(page.getByText(/^Last backup: /)).toBeVisible();
  return file;
}

async function deleteAll(page: Page): Promise<void> {
  await page.goto('./#/more/delete');
  const go = page.getByRole('button', { name: 'Delete everything' });
  await expect(go).toBeDisabled();
  await page.getByLabel('To do it, type').fill('delet');
  await expect(go).toBeDisabled();
  await page.getByLabel('To do it, type').fill('delete');
  await go.click();
  await expect(page.getByRole('button', { name: 'Start from typical lofts' })).toBeVisible();
}

/** How many records each store of both logbooks holds; stores that hold none are left out. */
function recordCounts(page: Page): Promise<Record<string, number>> {
  return page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const counts: Record<string, number> = {};
    for (const { name } of await indexedDB.databases()) {
      if (!name?.startsWith('carrybook')) continue;
      const db = await answer(indexedDB.open(name));
      for (const store of db.objectStoreNames) {
        const count = await answer(db.transaction(store).objectStore(store).count());
        if (count > 0) counts[`${name} ${store}`] = count;
      }
      db.close();
    }
    return counts;
  });
}

test('backup, delete everything, restore: the same file and the same report', async ({ page, context, baseURL }) => {
  const watched = watchRequests(context, baseURL ?? 'no base');
  const folder = mkdtempSync(join(tmpdir(), 'carrybook-backup-'));
  try {
    await restore(page, demo('season-player'));
    const first = await saveBackup(page, folder, 'first.json');
    expect(undated(first)).toBe(undated(demo('season-player')));
    await deleteAll(page);
    // Nobody's player and a phone of no past; the shelves of the demo season and of a team's books are the same.
    expect(await recordCounts(page)).toEqual({
      'carrybook player': 1,
      'carrybook device': 1,
      'carrybook-demo player': 1,
      'carrybook-demo device': 1,
      'carrybook-team player': 1,
      'carrybook-team device': 1,
    });
    await restore(page, first);
    const second = await saveBackup(page, folder, 'second.json');
    expect(undated(second)).toBe(undated(first));
    expect(report(second)).toBe(report(demo('season-player')));
    expect(watched.foreign()).toEqual([]);
    expect(watched.complaints).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('merging twice changes nothing, another golfer’s file is refused, and it may replace what is here', async ({
  page,
}) => {
  await restore(page, demo('season-player'));
  await pick(page, demo('season-player'));
  await page.getByRole('button', { name: 'Merge the two' }).click();
  await expect(page.getByText('Shots: 0 new, 0 changed, 0 removed.')).toBeVisible();
  await pick(page, demo('season-coach'));
  await page.getByRole('button', { name: 'Merge the two' }).click();
  await expect(page.getByRole('alert')).toContainText('This is the logbook of Quorrel');
  await pick(page, demo('season-coach'));
  await page.getByRole('button', { name: 'Replace what is here' }).click();
  await expect(page.getByText(/^Restored: /)).toBeVisible();
  await page.getByRole('link', { name: 'To the yardages' }).click();
  await expect(page.getByText('Quorrel’s book')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-hand', 'left');
});

test('what is no backup is refused readably, and nothing changes', async ({ page }) => {
  await startTypicalBag(page);
  const before = await recordCounts(page);
  await page.goto('./#/more/restore');
  const share = readFileSync(demo('season-player'), 'utf8').replace('"scope": "backup"', '"scope": "share"');
  await pick(page, { name: 'torn.json', mimeType: 'application/json', buffer: Buffer.from('{"format": ') });
  await expect(page.getByRole('alert').getByRole('heading')).toHaveText('torn.json was not opened');
  await expect(page.getByRole('alert')).toContainText('Expected');
  await pick(page, demo('team'));
  await expect(page.getByRole('alert')).toContainText('no backup of one golfer’s logbook');
  await pick(page, { name: 'share.json', mimeType: 'application/json', buffer: Buffer.from(share) });
  await page.getByRole('button', { name: 'Replace what is here' }).click();
  await expect(page.getByRole('alert')).toContainText('made to be shared');
  await expect(page.getByText('Nothing else has changed.')).toBeVisible();
  expect(await recordCounts(page)).toEqual(before);
});

test('while a round by the Rules is played nothing comes in: no backup, no demo, no file', async ({ page }) => {
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.getByRole('heading', { name: /Hole 1/ }).waitFor();
  await page.goto('./#/more/restore');
  await pick(page, demo('season-player'));
  await page.getByRole('button', { name: 'Replace what is here' }).click();
  await expect(page.getByRole('alert')).toContainText('Nothing is brought in while a round by the Rules');
  await page.goto('./#/more');
  await page.getByRole('button', { name: 'A player’s season' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing is brought in' })).toBeVisible();
  await page.goto('./#/open');
  await page.locator('#file').setInputFiles(demo('season-coach'));
  await expect(page.getByRole('alert')).toContainText('Nothing is brought in');
});

test('choices are kept: units, hand, nickname, light', async ({ page }) => {
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'More' }).click();
  await page.getByRole('radio', { name: '°C' }).check();
  await page.getByRole('radio', { name: 'km/h' }).check();
  await page.getByRole('radio', { name: 'Left-handed' }).check();
  await page.getByRole('radio', { name: 'Metres' }).check();
  await page.getByRole('radio', { name: 'Night' }).check();
  await page.getByLabel('Nickname').fill('Tibbern');
  await page.getByLabel('Nickname').blur();
  await expect(page.locator('html')).toHaveAttribute('data-hand', 'left');
  await page.getByRole('link', { name: 'Yardages' }).click();
  await expect(page.getByText('Tibbern’s book. Carry in metres')).toBeVisible();
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'night');
  await expect(page.locator('html')).toHaveAttribute('data-hand', 'left');
  await expect(page.getByText('Tibbern’s book. Carry in metres')).toBeVisible();
  await page.getByRole('link', { name: 'More' }).click();
  for (const name of ['°C', 'km/h', 'Left-handed', 'Metres', 'Night']) {
    await expect(page.getByRole('radio', { name })).toBeChecked();
  }
});

test('the demo season comes and goes, and the own logbook stays as it was', async ({ page }) => {
  await startTypicalBag(page);
  const own = await recordCounts(page);
  await page.getByRole('link', { name: 'More' }).click();
  await page.getByRole('button', { name: 'A player’s season' }).click();
  await expect(page.getByText('This is the demo season')).toBeVisible();
  await page.getByRole('link', { name: 'Bag' }).click();
  await expect(page.getByRole('list', { name: 'In the bag' }).locator('[data-shots="0"]')).not.toHaveCount(12);
  await page.getByRole('link', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Remove the demo season' }).click();
  await expect(page.getByRole('button', { name: 'A player’s season' })).toBeVisible();
  await page.getByRole('link', { name: 'Bag' }).click();
  await expect(page.getByRole('list', { name: 'In the bag' }).locator('li')).toHaveCount(13);
  const demoGone = { 'carrybook-demo player': 1, 'carrybook-demo device': 1 };
  expect(await recordCounts(page)).toEqual({ ...own, ...demoGone });
});

test('storage, its promise and the way to the home screen are told', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'More' }).click();
  await expect(page.getByText(/The browser has (not )?promised to keep the logbook/)).toBeVisible();
  await expect(page.getByText(/\d MB used on this device\./)).toBeVisible();
  await expect(page.getByText('choose Install or Add to Home screen')).toBeVisible();
  await page.evaluate(() => {
    const offer = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: async () => {
        document.title = 'asked';
      },
    });
    dispatchEvent(offer);
  });
  await page.getByRole('button', { name: 'Install', exact: true }).click();
  await expect(page).toHaveTitle('asked');
});

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing in the first page and in More in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await page.goto('./');
    await page.getByRole('button', { name: 'Start from typical lofts' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.goto('./#/more');
    await page.getByText(/MB used/).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.goto('./#/more/delete');
    await page.getByLabel('To do it, type').fill('delete');
    expect(await axeFindings(page)).toEqual([]);
    await restore(page, demo('season-player'));
    expect(await axeFindings(page)).toEqual([]);
    await pick(page, demo('season-player'));
    await page.getByRole('button', { name: 'Replace what is here' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.goto('./#/yardages');
    await page.locator('[data-stock]').first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });
}
