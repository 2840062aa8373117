import type { Page } from '@playwright/test';

/** Begins as a new golfer with thirteen typical clubs and says nothing of their carries. */
export async function startTypicalBag(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Start from typical lofts' }).click();
  await page.getByRole('button', { name: 'Not now' }).click();
  await page.getByRole('list', { name: 'In the bag' }).waitFor();
}
