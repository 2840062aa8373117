import { expect, type Page, test } from '@playwright/test';
import { answer, key, playShot, savedLines } from './playShot.ts';
import { storedShots } from './storedShots.ts';
import { thumbOn } from './thumb.ts';
import { startTypicalBag } from './typicalBag.ts';

/** A page of the app's own origin that runs nothing of the app. */
const BARE = './carrybook-file.schema.json';

const rows = (page: Page) => page.getByRole('list', { name: 'In the bag' }).locator('li');

/** Opens the logbook's database as another version of the app would, in a tab that does not let go of it. */
async function holdDatabase(page: Page, version: number): Promise<void> {
  await page.goto(BARE);
  await page.evaluate(
    (version) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('carrybook', version);
        opening.onupgradeneeded = () => {
          const db = opening.result;
          const keys = {
            player: 'id',
            clubs: 'id',
            rounds: 'id',
            shots: 'id',
            closedShots: 'roundId',
            reviews: 'id',
            done: 'reviewId',
            deleted: ['of', 'id'],
            bin: 'id',
            undo: 'at',
            settings: 'key',
            draft: 'key',
            openRound: 'key',
            device: 'key',
          };
          for (const [name, keyPath] of Object.entries(keys)) db.createObjectStore(name, { keyPath });
          const changedAt = '1970-01-01T00:00:00.000Z';
          const player = { id: 'p1', name: '', hand: 'right', units: 'yards', changedAt, device: '' };
          opening.transaction?.objectStore('player').add(player);
          opening.transaction?.objectStore('device').add({ key: 'device', id: 'd1', lastStamp: changedAt });
        };
        opening.onsuccess = () => resolve();
        opening.onerror = () => reject(opening.error);
      }),
    version,
  );
}

test('an older tab that blocks the upgrade is told of, and once it is closed the app goes on by itself', async ({
  page,
  context,
}) => {
  const older = await context.newPage();
  // Dexie counts in tenths: the app's version 1 is the browser's version 10.
  await holdDatabase(older, 5);
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('Another tab of this app holds the logbook in its old form.');
  await expect(page.getByRole('alert')).toContainText('Close the other tabs');
  await expect(page.getByRole('link', { name: 'Look at a file' })).toBeVisible();
  await older.close();
  await expect(page.getByRole('button', { name: 'Start from typical lofts' })).toBeVisible();
});

test('a logbook of a newer version is left alone, and said so; a file can be looked at all the same', async ({
  page,
}) => {
  await holdDatabase(page, 990);
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('written by a newer version of the app');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('alert')).toContainText('written by a newer version of the app');
  await page.getByRole('link', { name: 'Look at a file' }).click();
  await page.getByRole('button', { name: 'A player’s season' }).click();
  await expect(page.getByRole('heading', { name: 'Full swings' })).toBeVisible();
  await expect(page.getByText('Nothing of it is kept here.')).toBeVisible();
});

test('a browser without storage says so, and a file can be looked at', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
  await page.goto('./');
  await expect(page.getByRole('alert')).toContainText('This browser gives the page no place to keep a logbook.');
  await expect(page.getByRole('alert')).toContainText('private window');
  await page.getByRole('link', { name: 'Look at a file' }).click();
  await page.getByRole('button', { name: 'A coach’s season' }).click();
  await expect(page.getByRole('heading', { name: 'Full swings' })).toBeVisible();
});

/** Makes the browser refuse every writing while `setFull` says that the device is full. */
async function fillableDevice(page: Page): Promise<(isFull: boolean) => Promise<void>> {
  await page.addInitScript(() => {
    const { put, add } = IDBObjectStore.prototype;
    const full = () => (globalThis as { isFull?: boolean }).isFull === true;
    const refuse = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
    IDBObjectStore.prototype.put = function (...args) {
      return full() ? refuse() : put.apply(this, args);
    };
    IDBObjectStore.prototype.add = function (...args) {
      return full() ? refuse() : add.apply(this, args);
    };
  });
  return (isFull) =>
    page.evaluate((isFull) => {
      (globalThis as { isFull?: boolean }).isFull = isFull;
    }, isFull);
}

/** Lets the page's own connections to its database be closed under it; says how many there were. */
async function closableConnections(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const opened: IDBDatabase[] = [];
    Object.assign(globalThis, { opened });
    const { open } = IDBFactory.prototype;
    IDBFactory.prototype.open = function (...args) {
      const opening = open.apply(this, args);
      opening.addEventListener('success', () => opened.push(opening.result));
      return opening;
    };
  });
  return () =>
    page.evaluate(() => {
      const { opened } = globalThis as unknown as { opened: IDBDatabase[] };
      for (const db of opened) db.close();
      return opened.length;
    });
}

async function startCasualRound(page: Page): Promise<void> {
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await key(page, 'Start the round').click();
  await key(page, 'driver').waitFor();
}

test('a full device: nothing is lost, it is said, and trying again works once there is room', async ({ page }) => {
  const setFull = await fillableDevice(page);
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'Add a club' }).click();
  await page.getByLabel('Name').fill('1 iron');
  await page.getByLabel('Loft').fill('15.5');
  await setFull(true);
  await page.getByRole('button', { name: 'Save the club' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'This device has no room left' })).toBeVisible();
  await expect(page.getByLabel('Name')).toHaveValue('1 iron');
  await setFull(false);
  await page.getByRole('button', { name: 'Save the club' }).click();
  await expect(rows(page)).toHaveCount(14);
  await page.reload();
  await expect(rows(page)).toHaveCount(14);
});

test('a connection that the browser closed under the app is opened anew without a word', async ({ page }) => {
  const close = await closableConnections(page);
  await startTypicalBag(page);
  const closed = await close();
  expect(closed).toBeGreaterThan(0);
  await page.getByRole('link', { name: 'Add a club' }).click();
  await page.getByLabel('Name').fill('1 iron');
  await page.getByLabel('Loft').fill('15.5');
  await page.getByRole('button', { name: 'Save the club' }).click();
  await expect(rows(page)).toHaveCount(14);
  await page.reload();
  await expect(rows(page)).toHaveCount(14);
});

test('a shot logged on a full device is shown as not saved, kept, and saved once there is room', async ({ page }) => {
  const setFull = await fillableDevice(page);
  await startCasualRound(page);
  const thumb = thumbOn(page);
  await playShot(page, thumb, { club: 'driver', strike: 'solid', rest: 'fairway' }, 1);
  await setFull(true);
  const second = { club: '7 iron', strike: 'thin', rest: 'light rough' };
  const lines = page.locator('li[data-shot]');
  for (let step = 0; step < 6 && (await lines.count()) < 2; step += 1) {
    await answer(page, thumb, second);
    await page.waitForTimeout(400);
  }
  await expect(lines.nth(1)).toContainText('not saved yet');
  await expect(savedLines(page)).toHaveCount(1);
  await expect(page.getByText('1 change not saved yet')).toBeVisible();
  expect(await storedShots(page)).toHaveLength(1);
  await page.getByRole('link', { name: 'Hole 1', exact: true }).click();
  await expect(page.getByText('This device has no room left')).toBeVisible();

  // Looked up elsewhere and come back to, it is still there.
  await page.getByRole('link', { name: 'Yardages', exact: true }).click();
  await page.locator('[data-stock]').first().waitFor();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await expect(lines.nth(1)).toContainText('not saved yet');
  await setFull(false);
  await expect(savedLines(page)).toHaveCount(2, { timeout: 30_000 });
  expect(await storedShots(page)).toHaveLength(2);
  await page.reload();
  await expect(savedLines(page)).toHaveText([/driver, tee, solid/, /7 iron, fairway, thin/]);
});

test('a shot logged on a connection that the browser closed is saved', async ({ page }) => {
  const close = await closableConnections(page);
  await startCasualRound(page);
  const thumb = thumbOn(page);
  const first = { club: 'driver', strike: 'solid', rest: 'fairway' };
  await answer(page, thumb, first);
  await answer(page, thumb, first);
  expect(await close()).toBeGreaterThan(0);
  await answer(page, thumb, first);
  await expect(savedLines(page)).toHaveCount(1);
  expect(await close()).toBeGreaterThan(0);
  await playShot(page, thumb, { club: '7 iron', strike: 'fat', rest: 'fairway' }, 2);
  await page.reload();
  await expect(savedLines(page)).toHaveCount(2);
});
