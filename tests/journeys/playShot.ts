import type { Locator, Page } from '@playwright/test';
import type { Thumb } from './thumb.ts';

/** A shot as a golfer lives it; what is absent is skipped when the page asks for it. */
export interface PlayedShot {
  readonly club: string;
  /** Asked for wedges only. */
  readonly swing?: string;
  readonly strike: string;
  /** Distance to the flag, in the unit shown. */
  readonly flag?: number;
  /** A chip, no distance wanted: nothing is asked of the flag. */
  readonly chip?: boolean;
  /** Where it pitched beside the flag, in the unit shown: + long, + right. */
  readonly pitch?: readonly [long: number, right: number];
  /** Where the ball came to rest. A pitch on the green says so by itself. */
  readonly rest: string;
}

/** Steps from the flag to the nearer edge of the hole-location sheet, as it is first shown. */
const SHEET_REACH = 18;

export const key = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name }).first();

/** What the page asks for at the moment. */
export const question = (page: Page): Locator => page.locator('section[aria-label] h2');

/** The shots of the hole that the page shows as saved. */
export const savedLines = (page: Page): Locator => page.locator('li[data-shot]:not(:has(em))');

async function tapSheet(page: Page, thumb: Thumb, [long, right]: readonly [number, number]): Promise<void> {
  const sheet = page.locator('[data-sheet]');
  await sheet.waitFor();
  const box = await sheet.boundingBox();
  if (!box) throw new Error('the hole-location sheet is not on the screen');
  const step = Math.min(box.width, box.height) / 2 / SHEET_REACH;
  await thumb.tap(sheet, { x: box.width / 2 + right * step, y: box.height / 2 - long * step });
}

/** Takes one step of a shot: answers what the page asks. */
export async function answer(page: Page, thumb: Thumb, shot: PlayedShot): Promise<void> {
  const asked = (await question(page).textContent()) ?? '';
  const skip = () => thumb.tap(key(page, 'Skip'));
  if (asked.startsWith('How far is the flag')) {
    if (shot.chip) return thumb.tap(key(page, /^(chip|A chip)/));
    if (shot.flag === undefined) return skip();
    const tens = String(Math.floor(shot.flag / 10) * 10);
    const unit = page.locator('[data-pad]').getByRole('button', { name: String(shot.flag), exact: true });
    // Once the tens are chosen the ten distances of it stand there, the first of them as the tens did.
    const isHalfTyped = await page.locator('[data-pad]').getByRole('button', { name: 'back', exact: true }).isVisible();
    if (!isHalfTyped) {
      while (!(await key(page, tens).isVisible())) await thumb.tap(key(page, 'other'));
      await thumb.tap(key(page, tens));
    }
    await page.locator('[data-pad]').getByRole('button', { name: 'back', exact: true }).waitFor();
    return thumb.tap(unit);
  }
  if (asked.startsWith('Which club')) return thumb.tap(key(page, shot.club));
  if (asked.startsWith('How far back')) return thumb.tap(key(page, shot.swing ?? 'full'));
  if (asked.startsWith('How was it struck')) return thumb.tap(key(page, shot.strike));
  if (asked.startsWith('Where did it pitch')) return shot.pitch ? tapSheet(page, thumb, shot.pitch) : skip();
  if (asked.startsWith('Where is the ball now')) return thumb.tap(key(page, shot.rest));
  throw new Error(`the page asks “${asked}”`);
}

/** Logs a shot from wherever its entry stands, until `count` shots of the hole are shown as saved. */
export async function playShot(page: Page, thumb: Thumb, shot: PlayedShot, count: number): Promise<void> {
  for (let step = 0; step < 12; step += 1) {
    const lines = await page.locator('li[data-shot]').count();
    if (lines >= count) break;
    const before = await question(page).textContent();
    await answer(page, thumb, shot);
    await page.waitForFunction(
      ([before, lines]) =>
        document.querySelector('section[aria-label] h2')?.textContent !== before ||
        document.querySelectorAll('li[data-shot]').length !== lines,
      [before, lines] as const,
    );
  }
  await savedLines(page)
    .nth(count - 1)
    .waitFor();
}

/** Notes the putts of a hole: how long the first was, and how many it took. */
export async function putt(page: Page, thumb: Thumb, first: number | null, count: number): Promise<void> {
  await question(page).filter({ hasText: 'How long is the first putt' }).waitFor();
  if (first !== null) {
    await thumb.tap(page.locator('[data-pad]').getByRole('button', { name: String(first), exact: true }));
    await question(page).filter({ hasText: 'Did it go in' }).waitFor();
  }
  const face = first !== null && count === 1 ? /^holed/ : new RegExp(`^${count} putts?`);
  await thumb.tap(page.locator('[data-pad]').getByRole('button', { name: face }));
}
