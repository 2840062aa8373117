import { expect, type Locator, type Page, test } from '@playwright/test';
import { axeFindings } from './axeFindings.ts';
import { GREEN, NINE, type Step } from './inventedNine.ts';
import { inTheme } from './openDemo.ts';
import { type Thumb, thumbOn } from './thumb.ts';

test.use({ isMobile: true });

const pad = (page: Page) => page.locator('[data-pad]');
const key = (page: Page, name: string) => pad(page).getByRole('button', { name, exact: true });
const action = (page: Page, name: string) =>
  page.getByRole('group', { name: 'This shot' }).getByRole('button', { name, exact: true });
const question = (page: Page) => page.locator('section[aria-label] h2');
const slot = (page: Page, name: string) => page.locator(`[data-slot="${name}"]`);
const sentence = (page: Page) => page.getByRole('group', { name: /struck/ });
const saved = (page: Page) => page.locator('li[data-shot]:not(:has(em))');

/** A new golfer with the typical bag on the first tee. */
async function onFirstTee(page: Page, play: 'Casual' | 'By the Rules' = 'Casual'): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  // The bag is written first; then the page goes on to its anchors by itself.
  await page.waitForURL(/#\/bag/);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: play }).check();
  await page.getByRole('button', { name: 'Start the round' }).click();
  await key(page, 'driver').waitFor();
}

async function take(page: Page, thumb: Thumb, step: Step): Promise<number> {
  if (typeof step === 'string') await thumb.tap(key(page, step));
  else if ('slot' in step) await thumb.tap(slot(page, step.slot));
  else if ('action' in step) await thumb.tap(action(page, step.action));
  else {
    const sheet = page.locator('[data-sheet]');
    await sheet.waitFor();
    const box = await sheet.boundingBox();
    if (!box) throw new Error('there is no sheet to tap');
    await thumb.tap(sheet, { x: step.spot[0] * box.width, y: step.spot[1] * box.height });
  }
  return 1;
}

test('a scripted nine: median at most 5 taps a shot, the worst at most 9, and the score falls out', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await onFirstTee(page);
  const thumb = thumbOn(page);
  const counts: number[] = [];
  const puttCounts: number[] = [];
  const scores: string[] = [];
  for (const [index, { shots, putts }] of NINE.entries()) {
    for (const [number, steps] of shots.entries()) {
      let taps = 0;
      for (const step of steps) taps += await take(page, thumb, step);
      await expect(saved(page)).toHaveCount(number + 1);
      counts.push(taps);
    }
    let taps = 0;
    for (const step of putts) taps += await take(page, thumb, step);
    puttCounts.push(taps);
    const over = page.getByText(new RegExp(`^Hole ${index + 1}: `));
    await over.waitFor();
    scores.push((await over.textContent()) ?? '');
    if (index + 1 < NINE.length) {
      await page.waitForTimeout(330);
      await page.getByRole('button', { name: `Hole ${index + 2}`, exact: true }).click();
      await expect(question(page)).toHaveText('Which club was it?');
    }
  }
  const sorted = [...counts].sort((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)];
  const worst = sorted.at(-1) ?? 0;
  const total = counts.reduce((sum, taps) => sum + taps, 0);
  console.log(
    `scripted nine: ${counts.length} shots, taps each ${counts.join(' ')}; median ${median}, worst ${worst}, mean ${(
      total / counts.length
    ).toFixed(1)}; putts a hole ${puttCounts.join(' ')}`,
  );
  expect(counts.length).toBe(21);
  // Strokes as the Rules count them: shots, putts, and one for the ball lost and the penalty area (Rules 17.1d, 18.2b).
  expect(scores.map((score) => Number(/: (\d+)/.exec(score)?.[1]))).toEqual([4, 4, 3, 5, 6, 4, 3, 5, 3]);
  expect(median).toBeLessThanOrEqual(5);
  expect(worst).toBeLessThanOrEqual(9);
});

test('a page killed in the middle of a shot opens on the same slot with what was entered', async ({
  page,
  context,
}) => {
  await onFirstTee(page);
  const thumb = thumbOn(page);
  for (const step of ['driver', 'solid', 'fairway', '140'] as const) await take(page, thumb, step);
  await expect(slot(page, 'flag')).toHaveText('14_');
  await page.waitForTimeout(300);
  const reopen = async (from: Page): Promise<Page> => {
    const next = await context.newPage();
    await from.close();
    await next.goto('./');
    await next.locator('[data-pad]').waitFor();
    return next;
  };
  let now = await reopen(page);
  await expect(slot(now, 'flag')).toHaveText('14_');
  await take(now, thumbOn(now), '147');
  await take(now, thumbOn(now), '54°');
  await expect(question(now)).toHaveText('How far back did you swing?');
  await now.waitForTimeout(300);
  now = await reopen(now);
  await expect(question(now)).toHaveText('How far back did you swing?');
  await expect(sentence(now)).toHaveAccessibleName(/^54° full from fairway, flag 147 by laser/);
  for (const step of ['9:00', 'solid', GREEN] as const) await take(now, thumbOn(now), step);
  await expect(saved(now)).toHaveCount(2);
  now = await reopen(now);
  await expect(saved(now)).toHaveCount(2);
  await expect(question(now)).toHaveText('How long is the first putt, in feet?');
  await take(now, thumbOn(now), '20');
  await now.waitForTimeout(300);
  now = await reopen(now);
  await expect(question(now)).toHaveText('Did it go in?');
  await take(now, thumbOn(now), 'holed');
  await expect(now.getByText('Hole 1: 3 strokes')).toBeVisible();
  await expect(now.getByText('Putts: 20 ft, holed')).toBeVisible();
});

test('undo takes back step by step, and a logged shot comes back as it was entered', async ({ page }) => {
  await onFirstTee(page);
  const thumb = thumbOn(page);
  for (const step of ['driver', 'solid'] as const) await take(page, thumb, step);
  await take(page, thumb, { action: 'Undo' });
  await expect(question(page)).toHaveText('How was it struck?');
  for (const step of ['thin', 'fairway'] as const) await take(page, thumb, step);
  await expect(saved(page)).toHaveCount(1);
  await take(page, thumb, { action: 'Undo' });
  await expect(saved(page)).toHaveCount(0);
  await expect(sentence(page)).toHaveAccessibleName('Driver full from tee, flag …, struck thin, now on the fairway.');
  await take(page, thumb, 'light rough');
  await expect(saved(page)).toHaveText(['1driver, tee, thin']);
  await expect(sentence(page)).toHaveAccessibleName(/from light rough/);
});

test('a casual round says the carry at once, a round by the Rules only what was entered', async ({
  page,
  browser,
  baseURL,
}) => {
  const approach: readonly Step[] = ['driver', 'solid', 'fairway', '140', '147', '8 iron', 'solid', GREEN];
  await onFirstTee(page);
  for (const step of approach) await take(page, thumbOn(page), step);
  await expect(saved(page).last()).toContainText(/carry 14\d\syd ± \d/);
  const context = await browser.newContext({
    baseURL: baseURL ?? '',
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  });
  const rules = await context.newPage();
  await onFirstTee(rules, 'By the Rules');
  for (const step of approach) await take(rules, thumbOn(rules), step);
  await expect(saved(rules).last()).toContainText(/flag 147\syd, \d short, \d left/);
  await expect(rules.locator('main')).not.toContainText(/carry 1\d\d/i);
  await context.close();
});

test('a whole hole by keys alone: digits, arrows, Enter', async ({ page }) => {
  await onFirstTee(page);
  const press = (...keys: string[]) =>
    keys.reduce((done, name) => done.then(() => page.keyboard.press(name)), Promise.resolve());
  const focusOn = async (target: Locator, way: string) => {
    for (let step = 0; step < 12; step += 1) {
      if (await target.evaluate((element) => element === document.activeElement)) return;
      await press(way);
    }
    await expect(target).toBeFocused();
  };
  await slot(page, 'club').focus();
  await focusOn(key(page, 'driver'), 'Tab');
  await press('Enter');
  await expect(key(page, 'solid')).toBeFocused();
  await press('Enter');
  await focusOn(key(page, 'fairway'), 'ArrowRight');
  await press('Enter');
  await expect(saved(page)).toHaveCount(1);
  await press('1', '4', '7');
  await expect(question(page)).toHaveText('Which club was it?');
  await focusOn(key(page, '7 iron'), 'ArrowDown');
  await focusOn(key(page, '8 iron'), 'ArrowRight');
  await press('Enter', 'Enter');
  await expect(page.locator('[data-sheet]')).toBeFocused();
  await press('ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowLeft', 'Enter');
  await expect(saved(page).last()).toContainText(/carry 144\syd/);
  await focusOn(key(page, '3'), 'ArrowRight');
  await press('Enter');
  await expect(key(page, 'holed')).toBeFocused();
  await press('Enter');
  await expect(page.getByText('Hole 1: 3 strokes')).toBeVisible();
});

test('for a left-handed golfer Log it and the near clubs change sides; numbers and the sheet do not', async ({
  page,
}) => {
  await onFirstTee(page);
  const left = async (target: Locator) => (await target.boundingBox())?.x ?? Number.NaN;
  const inOrder = async (...targets: Locator[]) => {
    const places = await Promise.all(targets.map(left));
    expect(places).toEqual([...places].sort((a, b) => a - b));
  };
  await inOrder(action(page, 'Undo'), action(page, 'Log it'));
  await inOrder(key(page, '54°'), key(page, '58°'));
  await page.getByRole('link', { name: 'More', exact: true }).click();
  await page.getByRole('radio', { name: 'Left-handed' }).check();
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await key(page, 'driver').waitFor();
  await inOrder(action(page, 'Log it'), action(page, 'Undo'));
  await inOrder(key(page, '58°'), key(page, '54°'));
  const thumb = thumbOn(page);
  for (const step of ['driver', 'solid', 'fairway'] as const) await take(page, thumb, step);
  await inOrder(key(page, '140'), key(page, '150'));
  for (const step of ['140', '147', '8 iron'] as const) await take(page, thumb, step);
  await inOrder(key(page, 'toe'), key(page, 'solid'), key(page, 'heel'));
  await take(page, thumb, 'solid');
  await take(page, thumb, { spot: [0.3, 0.5] });
  await expect(saved(page).last()).toContainText(/carry 147/);
  await expect(page.getByRole('heading', { name: /first putt/ })).toBeVisible();
});

test('a lost first ball makes the provisional the ball in play, with its stroke and distance', async ({ page }) => {
  await onFirstTee(page);
  const thumb = thumbOn(page);
  for (const step of ['driver', 'heel', { action: 'Log it' }, 'provisional', '3 wood', 'solid', 'fairway'] as const) {
    await take(page, thumb, step);
  }
  await expect(question(page)).toHaveText('What became of the first ball?');
  await take(page, thumb, 'lost');
  await expect(saved(page)).toHaveText(['1driver, tee, heel, lost', '33 wood, tee, solid']);
  await expect(sentence(page)).toHaveAccessibleName(/from fairway/);
});

/** The pads of the page, each reached from the first tee by some taps. */
const PADS: readonly { readonly name: string; readonly steps: readonly Step[] }[] = [
  { name: 'club', steps: [] },
  { name: 'strike', steps: ['driver'] },
  { name: 'rest', steps: ['driver', 'solid'] },
  { name: 'tens of a total', steps: ['driver', 'solid', 'total'] },
  { name: 'units of a total', steps: ['driver', 'solid', 'total', '250'] },
  { name: 'lie', steps: ['driver', 'solid', 'fairway', { slot: 'lie' }] },
  { name: 'flag', steps: ['driver', 'solid', 'fairway'] },
  { name: 'known by', steps: ['driver', 'solid', 'fairway', '140', '147', { slot: 'flag by' }] },
  { name: 'swing', steps: ['driver', 'solid', 'fairway', '140', '147', '54°'] },
  { name: 'pitch', steps: ['driver', 'solid', 'fairway', '140', '147', '8 iron', 'solid'] },
  { name: 'pitch by steps', steps: ['driver', 'solid', 'fairway', '140', '147', '8 iron', 'solid', 'by steps'] },
  { name: 'more', steps: ['driver', { action: 'More' }] },
  { name: 'note', steps: ['driver', { action: 'More' }, 'note'] },
  { name: 'first ball', steps: ['driver', 'solid', { action: 'Log it' }, 'provisional', '3 wood', 'solid', 'fairway'] },
  { name: 'putt', steps: ['driver', 'solid', 'green'] },
  { name: 'putt holed', steps: ['driver', 'solid', 'green', '20'] },
  { name: 'over', steps: ['driver', 'solid', 'green', '2 putts'] },
];

/** Reaches each pad in turn, from a hole with nothing on it, and looks at it. */
async function atEachPad(page: Page, look: (name: string) => Promise<void>): Promise<number> {
  const debuggerOf = await page.context().newCDPSession(page);
  for (const { name, steps } of PADS) {
    const { origin } = new URL(page.url());
    await page.goto('about:blank');
    await debuggerOf.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    await onFirstTee(page);
    const thumb = thumbOn(page);
    for (const step of steps) await take(page, thumb, step);
    await page.waitForTimeout(100);
    await look(name);
  }
  return PADS.length;
}

for (const theme of ['paper', 'night', 'glare']) {
  test(`axe finds nothing on any pad in ${theme}`, async ({ page }) => {
    test.setTimeout(240_000);
    await inTheme(page, theme);
    await page.goto('./');
    await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
    const found: string[] = [];
    await atEachPad(page, async (name) => {
      found.push(...(await axeFindings(page)).map((finding) => `${name}: ${finding}`));
    });
    expect(found).toEqual([]);
  });
}

for (const [width, height] of [
  [360, 640],
  [390, 844],
  [430, 932],
]) {
  test(`at ${width} × ${height} every key is 64 px, 8 px from the next, and in the lower 60 % of the screen`, async ({
    page,
  }) => {
    test.setTimeout(240_000);
    await page.setViewportSize({ width, height });
    await page.goto('./');
    const wrong: string[] = [];
    let seen = 0;
    await atEachPad(page, async (name) => {
      const boxes = await page.locator('[data-key]').evaluateAll((keys) =>
        keys.map((key) => {
          const { left, right, top, bottom } = key.getBoundingClientRect();
          return { left, right, top, bottom, face: key.textContent };
        }),
      );
      seen += boxes.length;
      expect(boxes.length, name).toBeGreaterThan(1);
      for (const box of boxes) {
        const is = `${name}: ${box.face}`;
        if (box.right - box.left < 63.9 || box.bottom - box.top < 63.9) {
          wrong.push(`${is} is ${(box.right - box.left).toFixed(1)} × ${(box.bottom - box.top).toFixed(1)}`);
        }
        if (box.top < 0.4 * height - 0.5) wrong.push(`${is} begins at ${box.top} of ${height}`);
        if (box.left < 0 || box.right > width || box.bottom > height) wrong.push(`${is} is off the screen`);
      }
      boxes.forEach((a, index) => {
        for (const b of boxes.slice(index + 1)) {
          const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
          const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
          if (Math.max(across, down) < 7.9) wrong.push(`${name}: ${a.face} and ${b.face} are too near`);
        }
      });
    });
    expect(seen).toBeGreaterThan(150);
    expect(wrong).toEqual([]);
  });
}

test('text twice as large and a screen of 320 px: nothing scrolls sideways, Log it stays in reach', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await page.goto('./');
  await atEachPad(page, async (name) => {
    for (const [width, size] of [
      [320, '100%'],
      [390, '200%'],
    ] as const) {
      await page.setViewportSize({ width, height: 844 });
      await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
      }, size);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow, `${name} at ${width} px, ${size}`).toBeLessThanOrEqual(0);
      const last = page.getByRole('group', { name: 'This shot' }).getByRole('button').last();
      await expect(last, `${name} at ${width} px, ${size}`).toBeInViewport({ ratio: 0.99 });
    }
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
    await page.setViewportSize({ width: 390, height: 844 });
  });
});
