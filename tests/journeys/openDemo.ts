import type { Page } from '@playwright/test';

/** Opens the app and one of the two invented seasons, as a first visitor does. */
export async function openDemo(page: Page, season = 'A player’s season'): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: season }).click();
  await page.getByRole('heading', { name: 'Full swings' }).waitFor();
}

/** Draws the page in one of its themes from the start. */
export async function inTheme(page: Page, theme: string): Promise<void> {
  await page.addInitScript((theme) => localStorage.setItem('carrybook.theme', theme), theme);
}
