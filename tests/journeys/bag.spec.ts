import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { inTheme } from './openDemo.ts';
import { reportOf } from './reportOf.ts';
import { startTypicalBag } from './typicalBag.ts';

/** Metres in a yard, exact. Source: International yard and pound agreement, 1959. */
const YARD = 0.9144;
const season = 'demo/season-player.json';
const path = fileURLToPath(new URL(`../../${season}`, import.meta.url));
const rows = (page: Page) => page.getByRole('list', { name: 'In the bag' }).locator('li');
const club = (page: Page, name: string) => rows(page).filter({ has: page.getByText(name, { exact: true }) });
const openClub = (page: Page, name: string) => club(page, name).getByRole('link').click();
const save = (page: Page) => page.getByRole('button', { name: 'Save the club' }).click();

test('a new golfer: thirteen clubs in loft order, three claims, and the book leans on them', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.getByLabel('driver, full carry in yards').fill('230');
  await page.getByLabel('7 iron, full carry in yards').fill('175');
  await page.getByLabel('Which wedge?').selectOption({ label: '54°' });
  await page.getByLabel('54°, full carry in yards').fill('105');
  await expect(page.getByText('A few logged shots outweigh it')).toBeVisible();
  await page.getByRole('button', { name: 'Keep these' }).click();
  await expect(rows(page)).toHaveCount(13);
  const lofts = await rows(page).evaluateAll((items) =>
    items.map((item) => Number(/([\d.]+)°(?!.*°)/.exec(item.innerHTML)?.[1])),
  );
  expect(lofts.slice(0, -1)).toEqual([...lofts.slice(0, -1)].sort((a, b) => a - b));
  await expect(rows(page).last()).toContainText('Putter');
  await expect(rows(page).last()).toContainText('34 in');
  // Every club but the putter has its stock number beside it, and all of them are borrowed.
  await expect(page.locator('[data-stock]')).toHaveCount(12);
  await page.getByRole('link', { name: 'Yardages' }).click();
  await page.locator('li a', { hasText: '7 iron' }).click();
  await expect(page.getByText('You said 175 yd. Until shots say otherwise the book leans on your word.')).toBeVisible();
});

test('a claim gives way to evidence, in words and figures', async ({ page }) => {
  const { clubs } = JSON.parse(readFileSync(path, 'utf8')) as { clubs: { id: string; claimed_m: number | null }[] };
  const claimed = clubs.find((club) => club.claimed_m !== null) ?? { id: '', claimed_m: null };
  const cell = reportOf(season).find((cell) => cell.clubId === claimed.id && cell.swing === 'full');
  expect(cell?.shots).toBeGreaterThan(10);
  if (!cell || claimed.claimed_m === null) return;
  await page.goto('./#/open');
  await page.locator('input[type=file]').setInputFiles(path);
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
  await page.goto(`./#/yardages/${claimed.id}/full`);
  const half = Math.round((cell.hi80_m - cell.lo80_m) / 2 / YARD);
  const said = `You said ${Math.round(claimed.claimed_m / YARD)} yd; ${cell.shots} shots say ${Math.round(cell.stock_m / YARD)} ± ${half}.`;
  await expect(page.locator('section[aria-labelledby=where-from]')).toContainText(said);
});

test('clubs come, change, leave and come back', async ({ page }) => {
  await startTypicalBag(page);
  for (const [name, loft] of [
    ['7 wood', '21,5'],
    ['60°', '60'],
  ]) {
    await page.getByRole('link', { name: 'Add a club' }).click();
    await page.getByLabel('Kind').selectOption(name === '60°' ? 'wedge' : 'fairway wood');
    await page.getByLabel('Name').fill(name);
    await save(page);
    await expect(page.getByText('Enter the loft in degrees')).toBeVisible();
    await page.getByLabel('Loft').fill(loft);
    await save(page);
    await club(page, name).waitFor();
  }
  await expect(page.getByRole('alert').filter({ hasText: '15 clubs in the bag, 1 more' })).toBeVisible();

  await openClub(page, '4 hybrid');
  await page.getByRole('radio', { name: 'Out of the bag' }).check();
  await save(page);
  await expect(rows(page)).toHaveCount(14);
  await expect(page.getByText('more than a round by the Rules')).toBeHidden();
  await page.getByRole('button', { name: 'Put in 4 hybrid' }).click();
  await expect(rows(page)).toHaveCount(15);

  await openClub(page, '60°');
  await page.getByRole('button', { name: 'Remove this club' }).click();
  await expect(rows(page)).toHaveCount(14);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(club(page, '60°')).toBeVisible();
});

test('a club built differently starts a new build, one that was written down wrongly does not', async ({ page }) => {
  await startTypicalBag(page);
  await openClub(page, '7 iron');
  await page.getByLabel('Loft').fill('33');
  await expect(page.getByRole('heading', { name: 'The build is another one' })).toBeVisible();
  await page.getByRole('radio', { name: 'It was always so' }).check();
  await save(page);
  await expect(club(page, '7 iron')).toContainText('33°');
  await openClub(page, '7 iron');
  await expect(page.getByRole('heading', { name: 'As it was built before' })).toHaveCount(0);
  await page.getByLabel('Loft').fill('31');
  await page.getByRole('radio', { name: 'Built differently since' }).check();
  await page.getByLabel('First day of the new build').fill('2026-03-01');
  await save(page);
  await expect(club(page, '7 iron')).toContainText('31°');
  await openClub(page, '7 iron');
  await expect(page.getByText('from the start: loft 33°')).toBeVisible();
});

test('a swing that is not played has no number on the card', async ({ page }) => {
  await startTypicalBag(page);
  await openClub(page, '58°');
  await page.getByRole('checkbox', { name: 'full' }).check();
  await save(page);
  await page.getByRole('link', { name: 'Yardages' }).click();
  await expect(page.locator('tr', { hasText: '58°' }).getByText('not played')).toBeVisible();
});

test('from nothing: an empty bag offers the typical lofts, or a first club', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from nothing' }).click();
  await expect(page.getByText('There is no club in this bag yet.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Start from typical lofts' })).toBeVisible();
  await page.getByRole('link', { name: 'Add the first club' }).click();
  await page.getByLabel('Loft').fill('34');
  await save(page);
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page)).toContainText('Iron 34°');
});

test('while a round by the Rules is played, builds and claims stay, and no fifteenth club comes in', async ({
  page,
}) => {
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'Add a club' }).click();
  await page.getByLabel('Loft').fill('19');
  await save(page);
  await expect(rows(page)).toHaveCount(14);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await page.getByRole('heading', { name: /Hole 1/ }).waitFor();

  await page.getByRole('link', { name: 'Yardages' }).click();
  await expect(
    page.getByText(/this is the card as it stood at .+, mark [0-9a-f]{12}\. No shot of this round/),
  ).toBeVisible();
  await expect(page.getByText('not to the digit')).toHaveCount(0);
  const before = await page
    .locator('[data-metres]')
    .evaluateAll((cells) => cells.map((cell) => cell.getAttribute('data-metres')));

  await page.locator('li a', { hasText: '7 iron' }).click();
  await page.getByRole('heading', { name: 'The next ball' }).waitFor();
  await expect(page.getByRole('heading', { name: 'Beside it' })).toHaveCount(0);

  await page.getByRole('link', { name: 'Bag' }).click();
  await expect(page.getByText('A round by the Rules is being played.')).toBeVisible();
  await openClub(page, '7 iron');
  await expect(page.getByLabel('Loft')).toHaveCount(0);
  await page.getByRole('radio', { name: 'Out of the bag' }).check();
  await save(page);
  await expect(rows(page)).toHaveCount(13);
  await page.getByRole('button', { name: 'Put in 7 iron' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Rule 4.1b' })).toBeVisible();
  await expect(rows(page)).toHaveCount(13);

  await page.getByRole('link', { name: 'Yardages' }).click();
  await expect(page.getByText('not to the digit')).toHaveCount(0);
  expect(
    await page.locator('[data-metres]').evaluateAll((cells) => cells.map((cell) => cell.getAttribute('data-metres'))),
  ).toEqual(before);
});

test('a club named in two tabs: what one saves the other shows', async ({ page, context }) => {
  await startTypicalBag(page);
  const other = await context.newPage();
  await other.goto('./#/bag');
  await expect(rows(other)).toHaveCount(13);
  await page.getByRole('link', { name: 'Add a club' }).click();
  await page.getByLabel('Name').fill('1 iron');
  await page.getByLabel('Loft').fill('15.5');
  await save(page);
  await expect(club(other, '1 iron')).toBeVisible();
  await openClub(other, '1 iron');
  await other.getByRole('button', { name: 'Remove this club' }).click();
  await expect(rows(page)).toHaveCount(13);
});

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing in the bag in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await page.goto('./');
    await page.getByRole('button', { name: 'Start from typical lofts' }).click();
    await page.getByRole('heading', { name: 'Three carries to begin with' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Not now' }).click();
    await page.locator('[data-stock]').first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await openClub(page, '58°');
    await page.getByLabel('Loft').fill('57');
    await page.getByRole('radio', { name: 'Built differently since' }).check();
    await page.getByText('Lie angle, length, shaft').click();
    await page.getByLabel('Lie angle').fill('5');
    await save(page);
    await expect(page.getByText('Enter degrees from 40 to 90')).toBeVisible();
    expect(await axeFindings(page)).toEqual([]);
  });
}

test('the bag stands within 320 px and with text twice as large', async ({ page }) => {
  await startTypicalBag(page);
  const places = ['./#/bag', './#/bag/anchors', './#/bag/new', './#/more', './#/more/restore', './#/more/delete'];
  for (const [width, size] of [
    [320, '100%'],
    [390, '200%'],
    [1280, '100%'],
  ] as const) {
    await page.setViewportSize({ width, height: 740 });
    for (const place of places) {
      await page.goto(place);
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, size);
      await page.getByRole('heading', { level: 1 }).waitFor();
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow, `${place} at ${width} px, ${size}`).toBeLessThanOrEqual(0);
      const small = await page
        .locator('main')
        .locator('a, button, label:has(input), summary')
        .evaluateAll((targets) =>
          targets
            .filter((target) => target.checkVisibility())
            .map((target) => ({ box: target.getBoundingClientRect(), name: target.textContent }))
            .filter(({ box }) => box.width < 47.5 || box.height < 47.5)
            .map(({ name }) => name),
        );
      expect(small, `too small in ${place} at ${width} px`).toEqual([]);
    }
  }
});
