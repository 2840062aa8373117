import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { brokenFiles } from '../fixtures/brokenFiles.ts';
import { axeFindings } from './axeFindings.ts';
import { inTheme, openDemo } from './openDemo.ts';
import { type ReportCell, reportOf } from './reportOf.ts';

/** Metres in a yard, exact. Source: International yard and pound agreement, 1959. */
const YARD = 0.9144;
const demo = (name: string): string => fileURLToPath(new URL(`../../demo/${name}.json`, import.meta.url));

const keyOf = (cell: { clubId: string; specId: string; swing: string }): string =>
  `${cell.clubId} ${cell.specId} ${cell.swing}`;

/** The clubs of a demo file that say of themselves that a swing is not played: their empty cells are not shown. */
function notPlayed(name: string): Set<string> {
  const { clubs } = JSON.parse(readFileSync(demo(name), 'utf8')) as { clubs: { id: string; notPlayed: string[] }[] };
  return new Set(clubs.flatMap((club) => club.notPlayed.map((swing) => `${club.id} ${swing}`)));
}

for (const [season, name] of [
  ['A player’s season', 'season-player'],
  ['A coach’s season', 'season-coach'],
]) {
  test(`${season}: every number of card and matrix is the report's`, async ({ page }) => {
    const cells = new Map(reportOf(`demo/${name}.json`).map((cell) => [keyOf(cell), cell]));
    const unplayed = notPlayed(name);
    await openDemo(page, season);
    const shown = await page.locator('[data-metres]').evaluateAll((elements) =>
      elements.map((element) => {
        const { club, spec, swing, metres, lowMetres, highMetres, shots } = (element as HTMLElement).dataset;
        const read = (part: string) => Number(element.querySelector(part)?.textContent);
        return {
          cell: { clubId: club ?? '', specId: spec ?? '', swing: swing ?? '' },
          metres: [metres, lowMetres, highMetres].map(Number),
          shots: Number(shots),
          stock: read('[data-stock]'),
          plusMinus: read('[data-plus-minus]'),
          isBorrowed: element.textContent?.includes('~'),
        };
      }),
    );
    for (const { cell, metres, shots, stock, plusMinus, isBorrowed } of shown) {
      const reported = cells.get(keyOf(cell)) as ReportCell;
      expect(reported, keyOf(cell)).toBeDefined();
      const expected = [reported.stock_m, reported.lo80_m, reported.hi80_m];
      metres.forEach((figure, i) => {
        expect(Math.abs(figure - expected[i]) / YARD, keyOf(cell)).toBeLessThanOrEqual(0.1);
      });
      expect(shots).toBe(reported.shots);
      expect(Math.abs(stock - reported.stock_m / YARD), keyOf(cell)).toBeLessThanOrEqual(0.5 + 1e-9);
      const half = (reported.hi80_m - reported.lo80_m) / 2 / YARD;
      expect(Math.abs(plusMinus - Math.max(1, half)), keyOf(cell)).toBeLessThanOrEqual(0.5 + 1e-9);
      expect(isBorrowed, keyOf(cell)).toBe(reported.shots === 0);
    }
    const shownKeys = new Set(shown.map(({ cell }) => keyOf(cell)));
    const missing = [...cells.values()].filter(
      (cell) => !shownKeys.has(keyOf(cell)) && !(cell.shots === 0 && unplayed.has(`${cell.clubId} ${cell.swing}`)),
    );
    expect(missing.map(keyOf)).toEqual([]);
    expect(shown.length).toBeGreaterThan(20);
  });
}

test('a number opens to what stands behind it, and three ways lead back to the same spot', async ({ page }) => {
  const cells = reportOf('demo/season-player.json');
  await openDemo(page);
  const ways: readonly (() => Promise<unknown>)[] = [
    () => page.getByRole('button', { name: 'Back' }).click(),
    () => page.goBack(),
    () => page.keyboard.press('Escape'),
  ];
  const number = page.locator('li a:has([data-swing="full"])').nth(6);
  const club = await number.locator('[data-club]').getAttribute('data-club');
  const cell = cells.find((cell) => cell.clubId === club && cell.swing === 'full') as ReportCell;
  for (const leave of ways) {
    await number.scrollIntoViewIfNeeded();
    const scrolled = await page.evaluate(() => scrollY);
    expect(scrolled).toBeGreaterThan(0);
    await number.click();
    await expect(page).toHaveURL(/#\/yardages\/[^/]+\/full$/);
    await expect(page.getByRole('img')).toHaveAttribute('aria-label', /8 balls in 10 between \d+\syd and \d+\syd/);
    const between = `between ${Math.round(cell.next_m[1] / YARD)} yd and ${Math.round(cell.next_m[17] / YARD)} yd`;
    await expect(page.getByText(`8 balls in 10 carry ${between}`)).toBeVisible();
    await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
    const sentences = page.locator('section[aria-labelledby="shots-behind"] ol').first().locator('li');
    await expect(sentences.first()).toHaveText(/^\d+ \w+ · .+ · (\d+|total \d+|cleared \d+|short of \d+)\syd/);
    const all = page.getByRole('button', { name: /Show all/ });
    if (await all.isVisible()) await all.click();
    await expect(sentences).toHaveCount(cell.shots);
    await leave();
    await expect(page).toHaveURL(/#\/yardages$/);
    await expect(number).toBeFocused();
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  }
});

test('metres instead of yards, at once and everywhere', async ({ page }) => {
  const cells = reportOf('demo/season-player.json');
  await openDemo(page);
  await page.getByRole('radio', { name: 'Metres' }).check();
  const first = page.locator('[data-metres]').first();
  const { club, swing } = await first.evaluate((element) => ({ ...(element as HTMLElement).dataset }));
  const cell = cells.find((cell) => cell.clubId === club && cell.swing === swing) as ReportCell;
  await expect(first.locator('[data-stock]')).toHaveText(`${Math.round(cell.stock_m)}`);
});

test('a file of this device opens, and a broken one leaves it open', async ({ page }) => {
  await page.goto('./#/open');
  await page.locator('input[type=file]').setInputFiles(demo('season-coach'));
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
  const before = await page.locator('[data-stock]').allTextContents();
  await page.getByRole('link', { name: 'Open another book' }).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'torn.json', mimeType: 'application/json', buffer: Buffer.from('{"format": ') });
  await expect(page.getByRole('alert')).toContainText('Nothing else has changed');
  await page.getByRole('button', { name: 'Back' }).click();
  expect(await page.locator('[data-stock]').allTextContents()).toEqual(before);
});

test('a dropped file opens', async ({ page }) => {
  await page.goto('./');
  const text = readFileSync(demo('season-player'), 'utf8');
  const transfer = await page.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }));
    return transfer;
  }, text);
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
  await expect(page.getByRole('heading', { name: 'Full swings' })).toBeVisible();
});

test('a team file asks whose book to open', async ({ page }) => {
  await page.goto('./#/open');
  await page.locator('input[type=file]').setInputFiles(demo('team'));
  await expect(page.getByRole('heading', { name: 'Whose book?' })).toBeVisible();
  await page.locator('section[aria-labelledby=whose] button').first().click();
  await expect(page.getByRole('heading', { name: 'Full swings' })).toBeVisible();
});

test('every kind of broken file is refused with its place named', async ({ page }) => {
  expect(brokenFiles.length).toBeGreaterThanOrEqual(10);
  await page.goto('./#/open');
  for (const { name, text, path } of brokenFiles) {
    const file = `${name.replace(/\W+/g, '-')}.json`;
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: file, mimeType: 'application/json', buffer: Buffer.from(text) });
    const alert = page.getByRole('alert');
    await expect(alert.getByRole('heading'), name).toHaveText(`${file} was not opened`);
    // A list cannot say which of the three formats it is, so here it is refused as a whole.
    const place = text.startsWith('[') ? 'the file' : path;
    expect(await alert.locator('dt:text-is("Place") + dd').allTextContents(), name).toContain(place);
    for (const word of ['Expected', 'Found']) {
      await expect(alert.locator(`dt:text-is("${word}") + dd`).first(), name).not.toBeEmpty();
    }
    await expect(alert).toContainText('Nothing else has changed.');
  }
  expect(await page.locator('[data-metres]').count()).toBe(0);
});

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on any screen in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await page.goto('./');
    await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
    await page.getByRole('link', { name: 'Look at a file' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('link', { name: 'Look at a file' }).click();
    await page.getByRole('heading', { name: 'Open a book' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'torn.json', mimeType: 'application/json', buffer: Buffer.from('{') });
    await page.getByRole('alert').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'A player’s season' }).click();
    await page.getByRole('heading', { name: 'Full swings' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.locator('td a').first().click();
    await page.getByRole('img').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Back' }).click();
    await page.locator('li a:has([data-swing="full"])').nth(4).click();
    await page.getByRole('heading', { name: 'Beside it' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Back' }).click();
    await page.getByRole('link', { name: 'Open another book' }).click();
    await page.locator('input[type=file]').setInputFiles(demo('team'));
    await page.getByRole('heading', { name: 'Whose book?' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });
}

test('nothing scrolls sideways, from 320 px to a laptop and with text twice as large', async ({ page }) => {
  await openDemo(page);
  for (const [width, size] of [
    [320, '100%'],
    [360, '100%'],
    [390, '200%'],
    [1280, '100%'],
    [1280, '200%'],
  ] as const) {
    await page.setViewportSize({ width, height: 740 });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, size);
    const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(await overflow(), `card at ${width} px, ${size}`).toBeLessThanOrEqual(0);
    const outside = await page.locator('[data-metres]').evaluateAll((numbers) => {
      const edge = (element: Element | null) => element?.getBoundingClientRect().right ?? 0;
      return numbers.filter((number) => edge(number) > edge(document.querySelector('main')) + 0.5).length;
    });
    expect(outside, `numbers out of the page at ${width} px, ${size}`).toBe(0);
    const places = await page.getByRole('navigation', { name: 'Places' }).getByRole('link').all();
    expect(places).toHaveLength(4);
    for (const place of places) {
      await expect(place, `a place at ${width} px, ${size}`).toBeInViewport({ ratio: 0.99 });
      const isCut = await place.evaluate((place) => place.scrollWidth > place.clientWidth);
      expect(isCut, `the word of a place at ${width} px, ${size}`).toBe(false);
    }
    await page.locator('td a').first().click();
    await page.getByRole('img').waitFor();
    expect(await overflow(), `number at ${width} px, ${size}`).toBeLessThanOrEqual(0);
    await page.goBack();
    await page.locator('td a').first().waitFor();
  }
});

test('borrowed numbers of three figures keep their places in the matrix, from 320 px up', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  for (const [club, carry] of [
    ['driver', '270'],
    ['7 iron', '185'],
  ]) {
    await page.getByRole('textbox', { name: new RegExp(`^${club}`) }).fill(carry);
  }
  await page.getByRole('button', { name: 'Keep these' }).click();
  await page.getByRole('link', { name: 'Yardages' }).click();
  const numbers = page.locator('td [data-metres]');
  await numbers.first().waitFor();
  expect((await numbers.allTextContents()).filter((text) => /~\d{3}/.test(text)).length).toBeGreaterThan(4);
  for (const width of [320, 340, 360, 375, 390, 412, 430, 1280]) {
    await page.setViewportSize({ width, height: 844 });
    const outside = await numbers.evaluateAll((numbers) =>
      numbers.flatMap((number) => {
        const place = number.closest('td')?.getBoundingClientRect() ?? new DOMRect();
        return [...number.children].flatMap((line) => {
          const { left, right } = line.getBoundingClientRect();
          const isOut = line.scrollWidth > line.clientWidth + 1 || left < place.left || right > place.right + 0.5;
          return isOut ? [`${line.textContent} by ${(right - place.right).toFixed(1)}`] : [];
        });
      }),
    );
    expect(outside, `out of their places at ${width} px`).toEqual([]);
  }
});

test('targets are at least 48 px and 8 px apart', async ({ page }) => {
  await openDemo(page);
  for (const width of [320, 390]) {
    await page.setViewportSize({ width, height: 844 });
    const boxes = await page
      .locator('main')
      .locator('a, button, label')
      .evaluateAll((targets) =>
        targets.map((target) => {
          const { left, top, right, bottom } = target.getBoundingClientRect();
          return { left, top, right, bottom, name: target.textContent };
        }),
      );
    expect(boxes.length).toBeGreaterThan(20);
    const small = boxes.filter((box) => box.right - box.left < 47.5 || box.bottom - box.top < 47.5);
    expect(small, `too small at ${width} px`).toEqual([]);
    const near = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((b) => {
        const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
        const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
        return Math.max(across, down) < 7.5 ? [`${a.name} | ${b.name}: ${across.toFixed(1)}, ${down.toFixed(1)}`] : [];
      }),
    );
    expect(near, `too near at ${width} px`).toEqual([]);
  }
});

test('every request goes to the app itself, and the policy is never broken', async ({ page, baseURL }) => {
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await openDemo(page);
  await page.locator('td a').first().click();
  await page.getByRole('img').waitFor();
  expect(requests.length).toBeGreaterThan(3);
  expect(requests.filter((url) => !url.startsWith(baseURL ?? 'no base'))).toEqual([]);
  expect(complaints).toEqual([]);
});
