import { expect, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { inTheme, openDemo } from './openDemo.ts';
import { storedShots } from './storedShots.ts';
import { thumbOn } from './thumb.ts';

test.use({ isMobile: true });

const THEMES = ['paper', 'night', 'glare'];

async function startSession(page: Page, balls: string): Promise<void> {
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Practice ground' }).check();
  await page.getByRole('radio', { name: balls }).check();
  await page.getByRole('button', { name: 'Start the session' }).click();
  await page.getByRole('button', { name: 'on it', exact: true }).waitFor();
}

async function newGolfer(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.waitForURL(/#\/bag/);
}

test('ten balls, ten taps: the rung is full, the next comes up, and the evening says what firmed up', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await newGolfer(page);
  await startSession(page, 'Range balls');
  const heading = page.getByRole('heading', { level: 1 });
  const first = await heading.textContent();
  await expect(page.getByText('ball 1 of 10 · range balls, kept apart')).toBeVisible();
  await page.getByLabel('Target, yd, measured').fill('60');
  const thumb = thumbOn(page);
  const keys = ['on it', '2 short', '4 long', '2 long', 'on it', '6 short', '2 short', 'on it', '4 short', '2 long'];
  for (const [n, key] of keys.entries()) {
    await thumb.tap(page.getByRole('button', { name: key, exact: true }));
    await expect(page.getByText(`Ball ${n + 1}: carried`)).toBeVisible();
  }
  expect(thumb.taps()).toBe(10);
  await expect(heading).not.toHaveText(first ?? '');
  await expect(page.getByRole('button', { name: /10 of 10/ })).toBeVisible();

  type Stored = { carry: { m: number; by: string }; flag_m: number; swing: string };
  const stored = (await storedShots(page)) as Stored[];
  const yards = stored.map(({ carry }) => Math.round(carry.m / 0.9144)).sort((a, b) => a - b);
  expect(yards).toEqual([54, 56, 58, 58, 60, 60, 60, 62, 62, 64]);
  expect(new Set(stored.map(({ carry }) => carry.by))).toEqual(new Set(['laser']));

  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(async () => (await storedShots(page)).length).toBe(9);
  await page.getByRole('button', { name: 'Session over' }).click();
  await expect(page.getByText('1 number firmed up today')).toBeVisible({ timeout: 30_000 });
});

test('the session outlives a reload, on the same rung', async ({ page }) => {
  await newGolfer(page);
  await startSession(page, 'My own');
  await page.getByRole('button', { name: /54° at 9:00/ }).click();
  await page.getByLabel('Target, yd, measured').fill('72');
  await page.getByRole('button', { name: '4 short', exact: true }).click();
  await page.getByText('Ball 1: carried 68').waitFor();
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('54° at 9:00');
  await expect(page.getByText('ball 2 of 10')).toBeVisible();
  await expect(page.getByLabel('Target, yd, measured')).toHaveValue('72');
});

test('a swing position and word of the golfer’s own joins the ladder, for wedges and for any other club', async ({
  page,
}) => {
  await newGolfer(page);
  await startSession(page, 'My own');
  await page.getByLabel('Position', { exact: true }).fill('13:00');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByText(/A position is a time on the clock/)).toBeVisible();
  await page.getByLabel('Position', { exact: true }).fill('8:00');
  await page.getByLabel('Your word').fill('hip');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByRole('button', { name: /54° at 8:00, hip/ })).toBeVisible();
  await page.getByRole('button', { name: '8 iron', exact: true }).click();
  await expect(page.getByRole('button', { name: /8 iron at 8:00, hip/ })).toBeVisible();
});

test('on a phone of 360 × 640 every key of the ladder is 64 px and in sight', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await newGolfer(page);
  await startSession(page, 'My own');
  await page.evaluate(() => scrollTo(0, 0));
  const bar = await page.getByRole('navigation').boundingBox();
  const keys = await page.locator('[data-key]').evaluateAll((all) =>
    all.map((key) => {
      const { width, height, bottom } = key.getBoundingClientRect();
      return { name: key.textContent, width, height, bottom };
    }),
  );
  expect(keys.length).toBe(21);
  expect(keys.filter(({ width, height }) => width < 63.5 || height < 63.5)).toEqual([]);
  expect(keys.filter(({ bottom }) => bottom > (bar?.y ?? 0))).toEqual([]);
});

for (const theme of THEMES) {
  test(`axe finds nothing on ladder, search and referee sheet in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await openDemo(page);
    await page.getByRole('link', { name: 'Find a number' }).click();
    await page.getByLabel('Carry wanted, yd').fill('96');
    await page.getByLabel('It must carry, yd').fill('88');
    await page.locator('ol li').first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.goto('./#/round/referee');
    await page.getByRole('heading', { name: 'Referee sheet' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await startSession(page, 'My own');
    expect(await axeFindings(page)).toEqual([]);
  });
}

test('a number is found with its chances, and the search is not there while a round by the Rules is open', async ({
  page,
}) => {
  await openDemo(page);
  await page.getByRole('link', { name: 'Find a number' }).click();
  await page.getByLabel('Carry wanted, yd').fill('96');
  const options = page.locator('ol li');
  await options.first().waitFor();
  expect(await options.count()).toBeGreaterThan(1);
  await expect(options.first()).toContainText(/\d+% within 5\s+yd/);
  await page.getByLabel('Carry wanted, yd').fill('0');
  await expect(page.getByText('Enter a whole number from 1 to 400.')).toBeVisible();

  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'By the Rules' }).check();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.locator('[data-pad]').waitFor();
  await page.getByRole('link', { name: 'Yardages', exact: true }).click();
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
  await expect(page.getByRole('link', { name: 'Find a number' })).toHaveCount(0);
  await page.goto('./#/yardages/search');
  await expect(page.getByText(/Not while a round by the Rules is open/)).toBeVisible();
  await expect(page.getByLabel('Carry wanted, yd')).toHaveCount(0);
});

test('the referee sheet prints on one page', async ({ page }) => {
  await openDemo(page);
  await page.goto('./#/round/referee');
  await page.getByRole('heading', { name: 'Referee sheet' }).waitFor();
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(1);
});

test('nothing scrolls sideways at 320 px nor with text twice as large', async ({ page }) => {
  await openDemo(page);
  for (const [width, size] of [
    [320, '100%'],
    [390, '200%'],
  ] as const) {
    await page.setViewportSize({ width, height: 740 });
    for (const [address, heading] of [
      ['yardages/search', 'Find a number'],
      ['round/referee', 'Referee sheet'],
    ]) {
      await page.goto(`./#/${address}`);
      await page.getByRole('heading', { name: heading }).waitFor();
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, size);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow, `${address} at ${width} px, ${size}`).toBeLessThanOrEqual(0);
    }
  }
});
