import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { key } from './playShot.ts';

const WAIT_MS = 15_000;

/** Saves a backup with the key that the page offers for it, and says where the file lies. */
export async function savedFile(page: Page, folder: string): Promise<string> {
  const session = await page.context().newCDPSession(page);
  await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  await key(page, 'Save a backup file').click();
  const until = Date.now() + WAIT_MS;
  while (Date.now() < until) {
    const file = readdirSync(folder).find((name) => /^carrybook-.*\.json$/.test(name));
    if (file) return join(folder, file);
    await page.waitForTimeout(50);
  }
  throw new Error('no backup was saved');
}
