import { expect, type Page, test } from '@playwright/test';
import * as z from 'zod/mini';
import { shotSchema } from '../../src/golf/shot.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import { answer, key, playShot, question, savedLines } from './playShot.ts';
import { storedShots } from './storedShots.ts';
import { thumbOn } from './thumb.ts';
import { startTypicalBag } from './typicalBag.ts';

/** A casual round on the first tee in one tab, and the same round in another. */
async function oneRoundInTwoTabs(page: Page): Promise<Page> {
  await startTypicalBag(page);
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await page.getByRole('radio', { name: 'Casual' }).check();
  await key(page, 'Start the round').click();
  await key(page, 'driver').waitFor();
  const other = await page.context().newPage();
  await other.goto('./#/round');
  await key(other, 'driver').waitFor();
  return other;
}

const stored = async (page: Page) => inOrder((await storedShots(page)).map((shot) => z.parse(shotSchema, shot)));

test('a shot half entered in each of two tabs: both are kept, each once, and both tabs show both', async ({ page }) => {
  const other = await oneRoundInTwoTabs(page);
  const [thumb, otherThumb] = [thumbOn(page), thumbOn(other)];
  const first = { club: 'driver', strike: 'solid', rest: 'fairway' };
  const second = { club: '3 wood', strike: 'thin', rest: 'light rough' };
  await answer(page, thumb, first);
  await answer(page, thumb, first);
  await answer(other, otherThumb, second);
  await expect(question(page)).toContainText('Where is the ball now');
  await expect(question(other), 'what one tab enters does not touch the other').toContainText('How was it struck');

  await answer(page, thumb, first);
  for (const tab of [page, other]) await expect(savedLines(tab)).toHaveText([/driver, tee, solid/]);
  await expect(question(other), 'nor does what it logs').toContainText('How was it struck');
  await playShot(other, otherThumb, second, 2);
  for (const tab of [page, other]) {
    await expect(savedLines(tab)).toHaveText([/^1driver, tee, solid/, /^2.*3 wood, tee, thin/]);
  }
  const kept = await stored(page);
  expect(kept.map(({ strike, restLie }) => [strike, restLie])).toEqual([
    ['solid', 'fairway'],
    ['thin', 'light rough'],
  ]);
  await other.reload();
  await expect(savedLines(other), 'in the order logged, again and again').toHaveText([/^1driver/, /^2.*3 wood/]);
});

test('both tabs log at the same moment: nothing is lost and nothing twice', async ({ page }) => {
  const other = await oneRoundInTwoTabs(page);
  const tabs = [
    { tab: page, thumb: thumbOn(page), shot: { club: 'driver', strike: 'solid', rest: 'fairway' } },
    { tab: other, thumb: thumbOn(other), shot: { club: '5 iron', strike: 'fat', rest: 'heavy rough' } },
  ];
  for (const { tab, thumb, shot } of tabs) {
    await answer(tab, thumb, shot);
    await answer(tab, thumb, shot);
  }
  await Promise.all(tabs.map(({ tab, thumb, shot }) => answer(tab, thumb, shot)));
  for (const { tab } of tabs) await expect(savedLines(tab)).toHaveCount(2);
  expect((await stored(page)).map(({ restLie }) => restLie).toSorted()).toEqual(['fairway', 'heavy rough']);
});

test('what one tab takes back or closes is gone and closed in the other', async ({ page }) => {
  const other = await oneRoundInTwoTabs(page);
  const thumb = thumbOn(page);
  await playShot(page, thumb, { club: 'driver', strike: 'solid', rest: 'fairway' }, 1);
  await expect(savedLines(other)).toHaveCount(1);
  await thumb.tap(key(page, 'Undo'));
  await expect(savedLines(other)).toHaveCount(0);
  await playShot(page, thumb, { club: 'driver', strike: 'solid', rest: 'fairway' }, 1);
  await expect(savedLines(other)).toHaveCount(1);

  await page.getByRole('link', { name: 'Hole 1', exact: true }).click();
  await page.getByRole('link', { name: 'All holes' }).click();
  await key(page, 'Round over').click();
  await expect(page.getByRole('button', { name: 'Open it again' })).toBeVisible();
  await expect(other.locator('[data-pad]'), 'no shot can be logged in a round that is over').toHaveCount(0);
  expect(await stored(other)).toHaveLength(1);
});
