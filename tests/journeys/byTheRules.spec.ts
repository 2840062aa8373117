import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { askedOfReceiver } from './askedOfReceiver.ts';
import { axeFindings } from './axeFindings.ts';
import { startTypicalBag } from './typicalBag.ts';

/*
 * Source of what is allowed: R&A and USGA, Rules of Golf (2023), Rules 4.1a(2), 4.1b, 4.3a and Local Rule G-5, from
 * memory.
 */

const season = fileURLToPath(new URL('../../demo/season-player.json', import.meta.url));
const rows = (page: Page) => page.getByRole('list', { name: 'In the bag' }).locator('li');
const place = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();

async function addClub(page: Page, loft: string, isIn: boolean): Promise<void> {
  await page.getByRole('link', { name: 'Add a club' }).click();
  await page.getByLabel('Loft').fill(loft);
  if (!isIn) await page.getByRole('radio', { name: 'Out of the bag' }).check();
  await page.getByRole('button', { name: 'Save the club' }).click();
  await page.getByRole('heading', { name: 'Bag', exact: true }).waitFor();
}

test('where no phones are allowed the card and the sheet are printed, the round is entered after it, and no sensor is asked', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: 51.2, longitude: -1.1, accuracy: 4 });
  const asked = await askedOfReceiver(page);
  await startTypicalBag(page);
  await place(page, 'Round');
  await page.getByRole('radio', { name: 'No phones here' }).check();
  await expect(page.getByRole('button', { name: 'Start the round' })).toHaveCount(0);
  expect(await axeFindings(page)).toEqual([]);
  await place(page, 'Printed card');
  await expect(page.getByRole('article', { name: 'Printed card' })).toBeVisible();
  await place(page, 'Blank shot sheet');
  await expect(page.getByRole('region', { name: 'Sheet for holes 1 to 9' })).toBeVisible();
  expect(await asked()).toBe(0);

  await place(page, 'Round');
  await page.getByRole('radio', { name: 'No phones here' }).check();
  await page.getByRole('button', { name: 'Enter the round that is over' }).click();
  const pad = page.locator('[data-pad]');
  await pad.getByRole('button', { name: 'driver', exact: true }).click();
  await page.getByRole('button', { name: 'Log it' }).click();
  const saved = page.locator('li[data-shot]:not(:has(em))');
  await expect(saved).toHaveCount(1);
  await page.reload();
  await expect(saved).toHaveCount(1);
  expect(await asked()).toBe(0);
});

test('started with fourteen: a club comes in only for a damaged one, and is there to be logged', async ({ page }) => {
  await startTypicalBag(page);
  await addClub(page, '19', true);
  await addClub(page, '62', false);
  await place(page, 'Round');
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.getByRole('heading', { name: /Hole 1/ }).waitFor();
  await place(page, 'Bag');
  await page.getByRole('button', { name: /^Put in ./ }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Rule 4.1b' })).toBeVisible();
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'None was damaged' }).click();
  await expect(rows(page)).toHaveCount(14);
  await expect(page.getByRole('button', { name: 'driver was damaged' })).toHaveCount(0);
  await page.getByRole('button', { name: /^Put in ./ }).click();
  await page.getByRole('button', { name: 'driver was damaged' }).click();
  await expect(rows(page).filter({ hasText: '62°' })).toHaveCount(1);
  await expect(rows(page).filter({ hasText: 'driver' })).toHaveCount(0);
  await expect(rows(page)).toHaveCount(14);
  await place(page, 'Round');
  await expect(page.locator('[data-pad]').getByRole('button', { name: /62°/ })).toBeVisible();
});

test('while a round by the Rules is open no file, demo or backup comes in, and a file looked at is put away', async ({
  page,
}) => {
  await startTypicalBag(page);
  await page.goto('./#/open');
  await page.locator('input[type=file]').setInputFiles(season);
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
  await expect(page.getByRole('link', { name: 'Find a number' })).toBeVisible();
  await place(page, 'Round');
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.getByRole('heading', { name: /Hole 1/ }).waitFor();
  await place(page, 'Yardages');
  await expect(page.getByText('this is the card as it stood at')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Find a number' })).toHaveCount(0);
  await page.goto('./#/open');
  await page.locator('input[type=file]').setInputFiles(season);
  await expect(page.getByRole('alert')).toContainText(
    'Nothing is brought in while a round by the Rules is being played',
  );
  await page.goto('./#/more');
  await expect(page.getByText('nothing is handed over or brought in until it is over')).toBeVisible();
  await page.getByRole('button', { name: 'A player’s season' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing is brought in' })).toBeVisible();
  await page.goto('./#/more/restore');
  await page.locator('input[type=file]').setInputFiles(season);
  await page.getByRole('button', { name: 'Replace what is here' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing is brought in' })).toBeVisible();
});
