import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { inTheme, openDemo } from './openDemo.ts';

/** Points in an inch. */
const PT = 72;

interface PaperWord {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface PaperPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly PaperWord[];
}

/** The page as the browser prints it, read back by pdftotext (poppler-utils): each word with its place, in points. */
async function printed(page: Page): Promise<{ pages: PaperPage[]; layout: string; fonts: number[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'carrybook-card-'));
  const file = join(folder, 'card.pdf');
  try {
    writeFileSync(file, await page.pdf({ preferCSSPageSize: true }));
    const html = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' });
    const layout = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
    const pages = html
      .split('<page ')
      .slice(1)
      .map((text): PaperPage => {
        const of = (name: string) => Number(new RegExp(`${name}="([\\d.]+)"`).exec(text)?.[1]);
        const words = [
          ...text.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g),
        ];
        return {
          width: of('width'),
          height: of('height'),
          words: words.map(([, left, top, right, bottom, text]) => ({
            text,
            left: Number(left),
            top: Number(top),
            right: Number(right),
            bottom: Number(bottom),
          })),
        };
      });
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll('main *')]
        .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
        .filter((element) => element.getClientRects().length > 0)
        .map((element) => Number.parseFloat(getComputedStyle(element).fontSize)),
    );
    return { pages, layout, fonts: shown };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function openCard(page: Page): Promise<void> {
  await openDemo(page);
  await page.getByRole('link', { name: 'Printed card' }).click();
  await page.getByRole('heading', { name: 'Printed card' }).waitFor();
}

test('the card is one side of 4¼ × 7 in with every number of the book, in print of 9 pt or more', async ({ page }) => {
  await openDemo(page);
  const numbers = await page
    .locator('[aria-labelledby=full-swings] [data-metres], td [data-metres]')
    .evaluateAll((all) => all.map((number) => number.querySelector('[data-stock]')?.textContent ?? ''));
  expect(numbers.length).toBeGreaterThan(10);
  await openCardFromBook(page);
  await page.getByLabel('Conditions of the day').fill('48 °F, wind from W, soft');
  await page.emulateMedia({ media: 'print' });
  const { pages, layout, fonts } = await printed(page);
  expect(pages.length).toBe(1);
  const [card] = pages;
  expect(card.width / PT).toBeCloseTo(4.25, 2);
  expect(card.height / PT).toBeCloseTo(7, 2);
  for (const word of card.words) {
    expect(word.left, word.text).toBeGreaterThanOrEqual(0.19 * PT);
    expect(word.right, word.text).toBeLessThanOrEqual(4.06 * PT);
    expect(word.bottom, word.text).toBeLessThanOrEqual(6.81 * PT);
  }
  // 9 pt is 12 px of CSS.
  expect(Math.min(...fonts)).toBeGreaterThanOrEqual(12);
  expect(layout).toContain('48 °F, wind from W, soft');
  expect(layout).toMatch(/20 °C/);
  for (const heading of ['Club', 'Carry', 'Wedge', '7:30', '9:00', '10:30', 'full']) expect(layout).toContain(heading);
  for (const number of numbers) expect(layout).toMatch(new RegExp(`(^|[^\\d])${number}([^\\d]|$)`, 'm'));
  expect(layout).toMatch(/putter/i);
  // The app around it is not on the paper.
  for (const word of ['Back', 'Print', 'More', 'Yardages'])
    expect(card.words.map(({ text }) => text)).not.toContain(word);
});

async function openCardFromBook(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Printed card' }).click();
  await page.getByRole('heading', { name: 'Printed card' }).waitFor();
}

test('on paper it is black on white, from a night screen too', async ({ page }) => {
  await inTheme(page, 'night');
  await openCard(page);
  await page.emulateMedia({ media: 'print' });
  const colours = await page
    .locator('article *')
    .evaluateAll((all) => [...new Set(all.map((element) => getComputedStyle(element).color))]);
  expect(colours).toEqual(['rgb(0, 0, 0)']);
});

for (const [holes, sides] of [
  ['9', 1],
  ['18', 2],
] as const) {
  test(`the blank shot sheet for ${holes} holes has a line a stroke and nine holes a side`, async ({ page }) => {
    await openCard(page);
    await page.getByRole('link', { name: 'Blank shot sheet' }).click();
    await page
      .locator('fieldset label')
      .filter({ hasText: new RegExp(`^${holes}$`) })
      .click();
    await page.getByLabel('First hole').fill('10');
    await page.emulateMedia({ media: 'print' });
    const { pages, fonts } = await printed(page);
    expect(pages.length).toBe(sides);
    expect(Math.min(...fonts)).toBeGreaterThanOrEqual(12);
    const columns = ['Hole', 'Lie', 'Flag', 'Club', 'Swing', 'Strike', 'Pitch:', 'left', 'Rest'];
    const texts = pages.flatMap(({ words }) => words.map(({ text }) => text));
    for (const { words, width, height } of pages) {
      const row = columns.map((column) => words.find(({ text }) => text === column)?.left ?? Number.NaN);
      // In the order in which a shot is entered.
      expect(row).toEqual([...row].sort((a, b) => a - b));
      expect(Math.max(...words.map(({ right }) => right))).toBeLessThan(width);
      expect(Math.max(...words.map(({ bottom }) => bottom))).toBeLessThan(height);
    }
    expect(texts.filter((text) => text === 'Score').length).toBe(Number(holes));
    for (const hole of holes === '9' ? ['10', '18'] : ['10', '18', '1', '9']) expect(texts).toContain(hole);
    if (holes === '9') expect(texts.filter((text) => text === '9')).toEqual([]);
  });
}

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on card and sheet in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await openCard(page);
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('link', { name: 'Blank shot sheet' }).click();
    await page.getByLabel('First hole').waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });
}

test('card and sheet stand within 320 px, and with text twice as large', async ({ page }) => {
  await openCard(page);
  for (const [width, size] of [
    [320, '100%'],
    [390, '200%'],
  ] as const) {
    await page.setViewportSize({ width, height: 740 });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, size);
    const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(await overflow(), `card at ${width} px, ${size}`).toBeLessThanOrEqual(0);
    await page.getByRole('link', { name: 'Blank shot sheet' }).click();
    await page.getByLabel('First hole').waitFor();
    expect(await overflow(), `sheet at ${width} px, ${size}`).toBeLessThanOrEqual(0);
    await page.getByRole('link', { name: 'Printed card' }).click();
    await page.getByLabel('Conditions of the day').waitFor();
  }
});
