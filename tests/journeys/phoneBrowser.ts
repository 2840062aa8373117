import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../../.scripts/chromium.mjs';

/** A browser with a profile on the disk, as a phone has it, that can be killed like one whose battery dies. */
export interface PhoneBrowser {
  readonly page: Page;
  /** Kills every process of it at once, with no chance to write anything. */
  readonly kill: () => Promise<void>;
}

const WAIT_MS = 20_000;

async function portOf(profile: string): Promise<string> {
  const until = Date.now() + WAIT_MS;
  while (Date.now() < until) {
    try {
      const [port] = readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
      if (port) return port;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error('the browser did not start');
}

/** Opens a browser on a profile; a profile used before is as it was left. */
export async function openPhone(profile: string, size = { width: 390, height: 844 }): Promise<PhoneBrowser> {
  const executable = await findChromium();
  if (executable === undefined) throw new Error('Chromium was not found');
  rmSync(join(profile, 'DevToolsActivePort'), { force: true });
  const browser = spawn(
    executable,
    [
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--no-sandbox',
      '--disable-quic',
      '--no-first-run',
      '--no-default-browser-check',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--hide-scrollbars',
      '--lang=en-GB',
      'about:blank',
    ],
    // A process group of its own, so that all of it can be killed at one stroke.
    { detached: true, stdio: 'ignore' },
  );
  const { pid } = browser;
  if (pid === undefined) throw new Error('the browser could not be started');
  const gone = new Promise<void>((resolve) => browser.once('exit', () => resolve()));
  const kill = async () => {
    if (browser.exitCode === null && browser.signalCode === null) process.kill(-pid, 'SIGKILL');
    await gone;
  };
  try {
    const connection = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(profile)}`);
    const context = connection.contexts()[0];
    const page = context.pages()[0] ?? (await context.newPage());
    page.setDefaultTimeout(WAIT_MS);
    await page.setViewportSize(size);
    return { page, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}
