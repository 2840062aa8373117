import { expect, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { inTheme } from './openDemo.ts';
import { key, playShot, putt } from './playShot.ts';
import { expectTargets } from './targets.ts';
import { thumbOn } from './thumb.ts';

const driver = { club: 'driver', strike: 'solid', rest: 'fairway' };
const iron = { club: '7 iron', strike: 'thin', rest: 'green' };

/** Walks every screen of the Round place but the wedge ladder, and looks at each. */
async function eachScreen(page: Page, look: (name: string) => Promise<void>): Promise<void> {
  const thumb = thumbOn(page);
  const backTo = (address: RegExp) => expect(page).toHaveURL(address);
  await page.goto('./');
  await key(page, 'Start from typical lofts').click();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await key(page, 'Start the round').waitFor();
  await look('start of the first round');
  await page.getByText('Conditions', { exact: true }).click();
  await page.getByRole('radio', { name: 'By the clock' }).check();
  await page.getByRole('textbox', { name: /Temperature/ }).fill('warm');
  await key(page, 'Start the round').click();
  await page.getByText('Enter a number, or leave it empty.').waitFor();
  await look('start with its conditions, one of them wrong');
  await page.getByRole('textbox', { name: /Temperature/ }).fill('48');
  await page.getByLabel('Course').fill('Larch Hill (invented)');
  await page.getByRole('radio', { name: '9', exact: true }).check();
  await key(page, 'Start the round').click();

  await key(page, 'driver').waitFor();
  await look('a hole at its tee');
  await playShot(page, thumb, driver, 1);
  await look('a hole in play');
  await playShot(page, thumb, iron, 2);
  await look('on the green');
  await putt(page, thumb, 10, 2);
  await key(page, 'Hole 2').waitFor();
  await look('a hole that is over');
  await key(page, 'Hole 2').click();
  await key(page, 'driver').waitFor();
  await look('the next tee with open shots');
  await page.getByRole('heading', { level: 1 }).click();
  await backTo(/#\/round\/hole\//);
  await look('an empty hole');
  await page.getByRole('link', { name: /Hole 1, the one before/ }).click();
  await page.getByText('1 driver').or(page.getByText('driver, tee, solid')).first().waitFor();
  await look('a hole with shots');
  await page.getByRole('link', { name: /driver, tee, solid/ }).click();
  await page.getByRole('link', { name: 'Mend' }).waitFor();
  await look('a shot to change');
  await page.getByRole('link', { name: 'Mend' }).click();
  await page.getByLabel('To hole').waitFor();
  await look('a shot to move');
  await key(page, 'Back').click();
  await key(page, 'Delete').click();
  await page.getByText('Last: a shot was deleted.').waitFor();
  await look('a hole a shot was deleted from');
  await page.getByRole('link', { name: 'All holes' }).click();
  await page.locator('[data-total="strokes"]').waitFor();
  await look('the card of a round in play');
  await page.getByRole('link', { name: 'For the referee' }).click();
  await page.getByRole('table').waitFor();
  await page.goBack();
  await key(page, 'Round over').click();
  await page.getByText('Round over', { exact: true }).waitFor();
  await look('the card of a round that is over');
  await page.getByRole('link', { name: 'Earlier rounds' }).click();
  await page.getByRole('link', { name: /Larch Hill/ }).waitFor();
  await look('the earlier rounds');
  await page.getByRole('link', { name: 'The bin' }).click();
  await key(page, /Bring back/).waitFor();
  await look('the bin');
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await key(page, 'Start the round').waitFor();
  await look('start of the next round');
}

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on any Round screen in ${theme}`, async ({ page }) => {
    test.setTimeout(180_000);
    await inTheme(page, theme);
    await page.emulateMedia({
      colorScheme: theme === 'night' ? 'dark' : 'light',
      contrast: theme === 'glare' ? 'more' : 'no-preference',
    });
    let screens = 0;
    await eachScreen(page, async (name) => {
      await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
      expect(await axeFindings(page), name).toEqual([]);
      screens += 1;
    });
    expect(screens).toBeGreaterThanOrEqual(15);
  });
}

test('Round screens: targets, nothing sideways from 320 px to a laptop, also with text twice as large', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await eachScreen(page, async (name) => {
    for (const [width, height, size] of [
      [320, 640, '100%'],
      [360, 640, '100%'],
      [1280, 800, '100%'],
      [390, 844, '200%'],
      [390, 844, '100%'],
    ] as const) {
      await page.setViewportSize({ width, height });
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, size);
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(sideways, `${name} at ${width} px, ${size}`).toBeLessThanOrEqual(0);
      if (size === '100%') await expectTargets(page, `${name} at ${width} px`);
    }
  });
});

test('what is deleted comes back by undo and from the bin; a round that is over can be opened again', async ({
  page,
}) => {
  const thumb = thumbOn(page);
  await page.goto('./');
  await key(page, 'Start from typical lofts').click();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await key(page, 'Start the round').click();
  await playShot(page, thumb, driver, 1);
  await playShot(page, thumb, iron, 2);
  await page.getByRole('heading', { level: 1 }).click();
  const rows = page.locator('section[aria-labelledby="hole-shots"] li');
  await expect(rows).toHaveCount(2);
  const remove = async () => {
    await rows.first().getByRole('link').click();
    await key(page, 'Delete').click();
    await expect(rows).toHaveCount(1);
  };
  await remove();
  await key(page, 'Undo').click();
  await expect(rows).toHaveCount(2);

  await remove();
  await page.getByRole('link', { name: 'All holes' }).click();
  await key(page, 'Round over').click();
  await expect(page.locator('[data-total="shots"]')).toHaveText('1');
  await page.getByRole('link', { name: 'Earlier rounds' }).click();
  await page.getByRole('link', { name: 'The bin' }).click();
  await key(page, /Bring back/).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
  await key(page, 'Back').click();
  await page.getByRole('link', { name: /A course without a name/ }).click();
  await expect(page.locator('[data-total="shots"]')).toHaveText('2');

  // After the round: the same pages change and add to it.
  await page.locator('[data-hole="1"]').click();
  await page.getByRole('radio', { name: '4', exact: true }).check();
  await page.getByRole('button', { name: 'Putts: One more' }).click();
  await page.getByRole('button', { name: 'Putts: One more' }).click();
  await expect(page.getByText('Score: 4 strokes')).toBeVisible();
  await page.getByLabel('Score noted').fill('6');
  await page.getByLabel('Score noted').press('Enter');
  await expect(page.getByText('2 strokes of the score are not logged.')).toBeVisible();
  await rows.first().getByRole('link').click();
  await page.getByRole('link', { name: 'Mend' }).click();
  await page.getByLabel('To hole').selectOption('3');
  await key(page, 'As its only shot').click();
  await expect(page).toHaveURL(/hole\/[^/]+\/3$/);
  await expect(rows).toHaveCount(1);
  await key(page, 'Log here').click();
  await playShot(page, thumb, { ...iron, rest: 'fairway', club: '6 iron' }, 2);
  await page.goBack();
  await expect(rows).toHaveCount(2);

  await page.getByRole('link', { name: 'All holes' }).click();
  await key(page, 'Open it again').click();
  await key(page, 'Go on playing').click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Hole 3');
  await page.getByRole('heading', { level: 1 }).click();
  await page.getByRole('link', { name: 'All holes' }).click();
  await key(page, 'Delete the round').click();
  await expect(page.getByText('No round is in the logbook yet.')).toBeVisible();
  await key(page, 'Undo').click();
  await expect(page.getByRole('link', { name: /A course without a name/ })).toBeVisible();
});
