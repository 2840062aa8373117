import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { carrybookFileOf, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { roundOf } from '../book/logbooks.ts';
import { axeFindings } from './axeFindings.ts';
import { inTheme } from './openDemo.ts';
import { type GivenFile, givenFile, hostileFile, seasonOf, twelveFiles } from './teamFiles.ts';

/** Drops files on the page as a hand does, all at once. */
async function drop(page: Page, files: readonly GivenFile[]): Promise<void> {
  const plain = files.map(({ name, mimeType, buffer }) => ({ name, mimeType, text: buffer.toString('utf8') }));
  await page.evaluate((given) => {
    const dataTransfer = new DataTransfer();
    for (const { name, mimeType, text } of given) dataTransfer.items.add(new File([text], name, { type: mimeType }));
    for (const type of ['dragover', 'drop']) {
      document.body.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
    }
  }, plain);
}

async function atTeam(page: Page, ...place: string[]): Promise<void> {
  await page.goto(`./#/${['team', ...place].join('/')}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

async function takeIn(page: Page, files: readonly GivenFile[]): Promise<void> {
  await page.locator('#team-files').setInputFiles([...files]);
  await page.getByText(`${files.length} of ${files.length} file`).waitFor();
  await page.getByRole('button', { name: 'Put this list away' }).click();
  await expect(page.getByText(/Reckoning/)).toHaveCount(0);
}

/** A phone with an invented golfer's own logbook on it. */
async function playersPhone(page: Page, season: ReturnType<typeof seasonOf>): Promise<void> {
  const backup = writeCarrybookFile(carrybookFileOf(season, '2026-06-30T20:00:00Z', 'backup'));
  await page.goto('./#/more/restore');
  await page.locator('#backup-file').setInputFiles(givenFile('backup.json', backup));
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByText(/^Restored:/).waitFor();
}

test('a coach drops twelve files and sees who has no 9:00 number with the 56°', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await atTeam(page);
  await drop(page, [...twelveFiles(), hostileFile]);
  await expect(page.getByText('13 of 13 files read')).toBeVisible({ timeout: 30_000 });
  await expect(page.locator('li[data-state=done]')).toHaveCount(12);
  await expect(page.locator('li[data-state=refused]')).toContainText('__proto__');
  await page.getByRole('button', { name: 'Put this list away' }).click();
  await expect(page.getByText(/Reckoning/)).toHaveCount(0);
  await page.getByLabel('The number asked about').selectOption({ label: '56° 9:00' });
  await page.getByLabel('Golfers', { exact: true }).selectOption('none');
  // Every third golfer from the second on never hit it, and Plover carries no 56°: see teamFiles.
  await expect(page.locator('[data-answer]')).toHaveText(
    '5 of 12 have no number of their own for 56° 9:00: Dunlin, Rowan, Sorrel, Yarrow and Plover.',
  );
  await expect(page.locator('tbody [data-row]')).toHaveCount(5);
  await page.getByLabel('Golfers', { exact: true }).selectOption('all');
  // Neither a name nor the golfer's own logbook is touched by any of it.
  expect(page.url()).not.toMatch(/Wren|Sorrel/);
  await page.setViewportSize({ width: 360, height: 640 });
  const list = page.getByRole('list', { name: 'Golfers and their numbers' });
  await expect(list.getByRole('listitem')).toHaveCount(12);
  // Two golfers of one nickname are two lines.
  await expect(list.locator('b', { hasText: /^Wren/ })).toHaveText(['Wren', 'Wren (2)']);
});

test('one task goes to a group, to a player’s phone, beside the number, and comes back done', async ({
  page,
  browser,
}) => {
  const sorrel = seasonOf('golfer-1', 'Sorrel', 240, { without900: true });
  await atTeam(page);
  await takeIn(page, twelveFiles().slice(0, 3));
  await atTeam(page, 'groups');
  await page.getByLabel('Name of the group').fill('Varsity');
  await page.getByLabel('Sorrel').check();
  await page.getByLabel('Teasel').check();
  await page.getByRole('button', { name: 'Save the group' }).click();
  await page.getByLabel('For whom').selectOption({ label: 'Varsity' });
  const form = page.getByRole('form', { name: 'Write a review' });
  await form.getByLabel('About').selectOption({ label: '56°' });
  await form.getByLabel('Swing').selectOption('9:00');
  await form.getByLabel('Note').fill('Ten to the flag at seventy <b>slowly</b>.');
  await form.getByLabel('Balls to practise').fill('20');
  await form.getByRole('button', { name: 'Write it' }).click();
  await expect(form.getByText('Written for 2 golfers')).toBeVisible();
  await atTeam(page, 'player', 'golfer-1');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^carrybook-review-\d{4}-\d\d-\d\d\.json$/);
  const review = readFileSync(await file.path(), 'utf8');
  expect(review).not.toContain('Sorrel');

  const phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  const base = new URL('./', page.url()).href;
  await phone.goto(base);
  await phone.goto(`${base}#/more/restore`);
  await playersPhone(phone, sorrel);
  await phone.goto(`${base}#/team/words`);
  await phone.locator('#review-file').setInputFiles(givenFile('review.json', review));
  await expect(phone.getByText('1 new review.')).toBeVisible();
  await phone.goto(`${base}#/yardages/w56/9:00`);
  const beside = phone.locator('[data-review]');
  await expect(beside).toContainText('Ten to the flag at seventy <b>slowly</b>.');
  await expect(beside).toContainText('20 balls: 0 of 20 balls since.');
  await beside.getByRole('button', { name: 'Mark it done' }).click();
  await expect(beside.getByRole('button', { name: 'Not done after all' })).toBeVisible();

  await phone.goto(`${base}#/team/share`);
  const shared = phone.waitForEvent('download');
  await phone.getByRole('button', { name: 'Save the file' }).click();
  const book = readFileSync(await (await shared).path());
  await atTeam(page);
  await takeIn(page, [{ name: 'book.json', mimeType: 'application/json', buffer: book }]);
  await atTeam(page, 'player', 'golfer-1');
  await expect(page.getByRole('region', { name: 'What you wrote' })).toContainText(/Done, \d/);
  // The player takes the same review once more: nothing doubles.
  await phone.goto(`${base}#/team/words`);
  await phone.locator('#review-file').setInputFiles(givenFile('review.json', review));
  await expect(phone.getByText('0 new reviews, 1 here already.')).toBeVisible();
  await phone.context().close();
});

test('a book goes by codes alone, and a sealed file opens with its passphrase only', async ({ page, browser }) => {
  const phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  await page.goto('./');
  const base = new URL('./', page.url()).href;
  await phone.goto(`${base}#/more/restore`);
  await playersPhone(phone, seasonOf('golfer-2', 'Teasel', 120));
  await phone.goto(`${base}#/team/share`);
  await phone.getByRole('button', { name: 'Show it as codes' }).click();
  const code = phone.getByRole('img', { name: /^Code 1 of/ });
  await code.waitFor();
  const of = Number(/of (\d+)/.exec((await code.getAttribute('aria-label')) ?? '')?.[1]);
  const pictures: GivenFile[] = [];
  for (let i = 1; i <= of; i++) {
    const shown = phone.getByRole('img', { name: `Code ${i} of ${of}` });
    pictures.push({ name: `code-${i}.png`, mimeType: 'image/png', buffer: await shown.screenshot() });
    if (i < of) await phone.getByRole('button', { name: 'Next code' }).click();
  }
  await atTeam(page);
  await page.getByText('Read codes', { exact: true }).first().click();
  await page.locator('#code-picture').setInputFiles(pictures.reverse());
  await expect(page.getByText('Teasel: numbers without shots.')).toBeVisible({ timeout: 30_000 });

  await phone.getByLabel('Passphrase, if you want the file sealed').fill('heron over the ninth');
  const download = phone.waitForEvent('download');
  await phone.getByRole('button', { name: 'Save the file' }).click();
  const sealed = readFileSync(await (await download).path());
  expect(sealed.toString()).not.toContain('Teasel');
  await page
    .locator('#team-files')
    .setInputFiles([{ name: 'sealed.json', mimeType: 'application/json', buffer: sealed }]);
  const line = page.locator('li[data-state=sealed]');
  await line.getByLabel('Passphrase').fill('heron over the tenth');
  await line.getByRole('button', { name: 'Open it' }).click();
  await expect(line.getByText('That is not the passphrase')).toBeVisible({ timeout: 20_000 });
  await line.getByLabel('Passphrase').fill('heron over the ninth');
  await line.getByRole('button', { name: 'Open it' }).click();
  await expect(page.getByText(/^Teasel: new here\. Shots 120 new/)).toBeVisible({ timeout: 20_000 });
  await phone.context().close();
});

test('a deleted golfer stays away, can be brought back at once, and the preview names what leaves', async ({
  page,
}) => {
  const files = twelveFiles(60).slice(0, 2);
  await atTeam(page);
  await takeIn(page, files);
  await atTeam(page, 'care');
  await page.getByRole('button', { name: 'Delete Wren' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Delete Wren' })).toBeVisible();
  await page.getByRole('button', { name: 'Delete Wren' }).click();
  await expect(page.getByRole('button', { name: 'Delete Wren' })).toHaveCount(0);
  await atTeam(page);
  await page.locator('#team-files').setInputFiles(files);
  await expect(page.getByText('Wren was deleted from this device, so the book was not taken in.')).toBeVisible();

  await page.goto('./#/more/restore');
  await playersPhone(page, seasonOf('golfer-7', 'Linnet', 60));
  await atTeam(page, 'share');
  await page.getByText(/^Every field that leaves this device/).click();
  const fields = await page.locator('details tbody th').allTextContents();
  expect(fields.some((field) => field.startsWith('shots[].carry.m'))).toBe(true);
  expect(fields.filter((field) => /marks|note/.test(field))).toEqual([]);
});

test('a paper sheet typed in by the coach counts once its golfer takes it over', async ({ page, browser }) => {
  const teasel = seasonOf('golfer-2', 'Teasel', 60);
  await atTeam(page);
  await takeIn(page, twelveFiles(60).slice(2, 3));
  await atTeam(page, 'paper', 'golfer-2');
  await page.getByLabel('Day of the round').fill('2026-06-29');
  const lines = page.getByLabel('The shots, one a line');
  await lines.fill('1 driver tee 238\n1 7i bog 150');
  await expect(page.getByText('Line 2: “bog” is not understood.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Write it as a proposal' })).toBeDisabled();
  await lines.fill('1 driver tee 238\n1 7i fairway 150 solid\n2 56 9:00 70');
  await expect(page.getByText('3 shots read.')).toBeVisible();
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Write it as a proposal' }).click();
  await page.getByText(/^Written\./).waitFor();
  await atTeam(page, 'player', 'golfer-2');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  const review = readFileSync(await (await download).path(), 'utf8');

  const phone = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
  const base = new URL('./', page.url()).href;
  await phone.goto(`${base}#/more/restore`);
  await playersPhone(phone, teasel);
  await phone.goto(`${base}#/team/words`);
  await phone.locator('#review-file').setInputFiles(givenFile('review.json', review));
  await expect(phone.getByText(/3 shots on 29 Jun 2026\. Nothing of it counts/)).toBeVisible();
  expect(await axeFindings(phone)).toEqual([]);
  await phone.getByRole('button', { name: 'Take these shots into my logbook' }).click();
  await expect(phone.getByText('These shots are in your logbook.')).toBeVisible();
  await phone.goto(`${base}#/yardages/w56/9:00`);
  await expect(phone.getByRole('list').filter({ hasText: '29 Jun' })).toContainText('70');
  await phone.context().close();
});

test('two bags say what differs and how sure that is; the table goes to paper and to a spreadsheet', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await atTeam(page);
  const files = Array.from({ length: 40 }, (_, n) => {
    const season = seasonOf(`golfer-${n}`, n === 0 ? '=Wren' : `Golfer ${n}`, 60);
    return givenFile(`book-${n}.json`, writeCarrybookFile(carrybookFileOf(season, '2026-06-30T20:00:00Z', 'share')));
  });
  await takeIn(page, files);
  // Only rows in sight are drawn, and the last one comes into sight.
  await expect(page.locator('table')).toHaveAttribute('aria-rowcount', '41');
  const drawn = await page.locator('tbody [data-row]').count();
  expect(drawn).toBeGreaterThan(5);
  expect(drawn).toBeLessThan(25);
  await page.getByRole('region', { name: 'Golfers and their numbers' }).evaluate((frame) => {
    frame.scrollTop = frame.scrollHeight;
  });
  await expect(page.locator('tr[aria-rowindex="41"]')).toBeVisible();

  await atTeam(page, 'two');
  const differences = page.getByRole('region', { name: 'Club by club' }).getByRole('listitem');
  await expect(differences.first()).toContainText(/likely|No difference to rely on/);
  await page.getByText('Only rounds of these days').first().click();
  await page.getByLabel('From').first().fill('2026-06-01');
  await page.getByLabel('To', { exact: true }).first().fill('2026-06-30');
  await expect(page.getByText(/1 Jun 2026 – 30 Jun 2026/).first()).toBeVisible();

  await atTeam(page, 'sheet');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Save as a table file/ }).click();
  const csv = readFileSync(await (await download).path(), 'utf8');
  expect(csv).toContain("'=Wren");
  expect(csv).not.toMatch(/^"?=/m);
  for (const [paper, width, height] of [
    ['Letter', 792, 612],
    ['A4', 842, 595],
  ] as const) {
    await page.getByRole('radio', { name: paper }).check();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    // Points of the sheet in the file itself. Source: ANSI/ASME Y14.1 letter, ISO 216 A4; 72 points an inch.
    const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/g)].map(([, w, h]) => [
      Number(w),
      Number(h),
    ]);
    expect(boxes.length).toBeGreaterThan(0);
    for (const [w, h] of boxes) {
      expect(Math.abs(w - width)).toBeLessThan(2);
      expect(Math.abs(h - height)).toBeLessThan(2);
    }
    // On a screen as wide as the paper between its margins (0.4 in) no table runs over.
    await page.setViewportSize({ width: Math.floor(((width - 2 * 28.8) / 72) * 96), height: 600 });
    await page.emulateMedia({ media: 'print' });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(over, paper).toBeLessThanOrEqual(0);
    await page.emulateMedia({ media: null });
  }
});

test('while a round by the Rules is open the place is closed', async ({ page }) => {
  const teasel = seasonOf('golfer-2', 'Teasel', 60);
  const open = roundOf('open', '2026-06-30', { play: 'rules', closed: false, holes: [{ number: 1, par: 4 }] });
  await page.goto('./#/more/restore');
  await playersPhone(page, { ...teasel, rounds: [...teasel.rounds, open] });
  for (const place of [[], ['share'], ['words'], ['two']]) {
    await atTeam(page, ...place);
    await expect(page.getByText('nothing is brought in or handed out')).toBeVisible();
    await expect(page.locator('main input, main select, main table')).toHaveCount(0);
  }
});

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on any page of the team in ${theme}`, async ({ page }) => {
    await inTheme(page, theme);
    await atTeam(page);
    await takeIn(page, twelveFiles(60).slice(0, 3));
    for (const place of [[], ['player', 'golfer-1'], ['two'], ['groups'], ['sheet'], ['care'], ['share'], ['words']]) {
      await atTeam(page, ...place);
      await page.waitForTimeout(200);
      expect(await axeFindings(page), place.join('/')).toEqual([]);
      const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(beyond, place.join('/')).toBeLessThanOrEqual(0);
    }
  });
}
