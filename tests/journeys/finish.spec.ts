import { expect, type Page, test } from '@playwright/test';
import { answer, key, playShot, savedLines } from './playShot.ts';
import { storedShots } from './storedShots.ts';
import { thumbOn } from './thumb.ts';

test.use({ isMobile: true });

const fold = (page: Page, title: string) => page.locator('summary', { hasText: title });
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });

async function startRound(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.waitForURL(/#\/bag/);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await key(page, 'driver').waitFor();
}

async function toCard(page: Page): Promise<void> {
  await page.getByRole('link', { name: /^Hole 1/ }).click();
  await page.getByRole('link', { name: 'All holes' }).click();
  await fold(page, 'Conditions').waitFor();
}

test('a writing that fails once: the shot is shown as not saved, the phone is still, and the next try saves it', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    const state = { refusals: 0, shakes: [] as unknown[] };
    Object.assign(globalThis, { state });
    IDBObjectStore.prototype.put = function (...args) {
      if (this.name === 'shots' && state.refusals > 0) {
        state.refusals -= 1;
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      }
      return put.apply(this, args);
    };
    navigator.vibrate = (pattern) => {
      state.shakes.push(pattern);
      return true;
    };
  });
  type State = { state: { refusals: number; shakes: unknown[] } };
  const shakes = () => page.evaluate(() => (globalThis as unknown as State).state.shakes.length);
  await startRound(page);
  const thumb = thumbOn(page);
  await playShot(page, thumb, { club: 'driver', strike: 'solid', rest: 'fairway' }, 1);
  expect(await shakes()).toBe(1);
  await page.evaluate(() => {
    (globalThis as unknown as State).state.refusals = 1;
  });
  const lines = page.locator('li[data-shot]');
  const second = { club: '7 iron', strike: 'thin', rest: 'light rough' };
  for (let step = 0; step < 6 && (await lines.count()) < 2; step += 1) {
    await answer(page, thumb, second);
    await page.waitForTimeout(350);
  }
  await expect(page.getByText('1 change not saved yet')).toBeVisible();
  await expect(lines.nth(1)).toContainText('not saved yet');
  expect(await shakes()).toBe(1);
  expect(await storedShots(page)).toHaveLength(1);
  await page.getByRole('link', { name: /^Hole 1/ }).click();
  await page.getByRole('button', { name: 'Try now' }).click();
  await expect(page.getByText('not saved yet')).toHaveCount(0);
  expect(await storedShots(page)).toHaveLength(2);
  await page.reload();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await expect(savedLines(page)).toHaveCount(2);
});

test('conditions and pars are put right after the start, in the units chosen, and taken back', async ({ page }) => {
  await startRound(page);
  await page.getByRole('link', { name: 'More', exact: true }).click();
  await page.getByRole('radio', { name: 'km/h' }).check();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await toCard(page);
  await fold(page, 'Conditions').click();
  await page.getByRole('radio', { name: 'By compass' }).check();
  await page.getByLabel('Or its speed, km/h').fill('18');
  await page.getByRole('button', { name: 'Keep the conditions' }).click();
  await expect(fold(page, 'Conditions')).toContainText(/W wind, 18\skm\/h/);
  await undo(page).click();
  await expect(fold(page, 'Conditions')).toContainText('none noted');
  await fold(page, 'Par of each hole').click();
  const par = (hole: number, par: number) =>
    page.getByRole('group', { name: `Hole ${hole}`, exact: true }).getByRole('button', { name: `par ${par}` });
  for (let hole = 1; hole <= 18; hole += 1) await par(hole, 3 + (hole % 3)).click();
  await expect(page.locator('a[data-hole="17"]')).toContainText('par 5');
  await undo(page).click();
  await expect(page.locator('a[data-hole="18"]')).not.toContainText('par');
  await par(17, 5).click();
  await expect(page.locator('a[data-hole="17"]')).not.toContainText('par');
});

test('a club noted wrongly is changed in one step; a shot is split, and two are joined', async ({ page }) => {
  await startRound(page);
  const thumb = thumbOn(page);
  await playShot(page, thumb, { club: '3 wood', strike: 'solid', rest: 'fairway' }, 1);
  await playShot(page, thumb, { club: '3 wood', strike: 'thin', rest: 'light rough' }, 2);
  await toCard(page);
  await fold(page, 'A club noted wrongly').click();
  await page.getByLabel('was played with').selectOption({ label: 'driver' });
  await page.getByRole('button', { name: 'Change 2 shots: 3 wood to driver' }).click();
  await expect(page.getByText('Last: a club was exchanged.')).toBeVisible();
  const rows = page.locator('ol li', { has: page.locator('a[href*="/shot/"]') });
  await page.locator('a[data-hole="1"]').click();
  await expect(rows).toHaveText([/driver, tee/, /driver, fairway/]);
  await undo(page).click();
  await expect(rows).toHaveText([/3 wood, tee/, /3 wood, fairway/]);
  await rows.nth(1).getByRole('link').click();
  await page.getByRole('link', { name: 'Mend' }).click();
  await page.getByRole('button', { name: 'Split: it was two shots' }).click();
  await expect(rows).toHaveCount(3);
  await expect(rows.nth(2)).toContainText('club open');
  await rows.nth(1).getByRole('link').click();
  await page.getByRole('link', { name: 'Mend' }).click();
  await page.getByRole('button', { name: /^Join with 3/ }).click();
  await expect(rows).toHaveText([/3 wood, tee/, /3 wood, fairway/]);
});
