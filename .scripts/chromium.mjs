import { existsSync } from 'node:fs';

const KNOWN_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/**
 * Where Chromium is on this machine: CHROMIUM_PATH, the usual places, or the one the test runner installed for itself.
 *
 * @returns {Promise<string | undefined>} a path, or undefined when there is none.
 */
export async function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, and there is no such file`);
  }
  const known = KNOWN_PLACES.find((place) => existsSync(place));
  if (known !== undefined) return known;
  const runner = new URL('../node_modules/@playwright/test/index.mjs', import.meta.url);
  if (!existsSync(runner)) return undefined;
  const { chromium } = await import(runner.href);
  const own = chromium.executablePath();
  return own !== '' && existsSync(own) ? own : undefined;
}
