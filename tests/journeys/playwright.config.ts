import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findChromium } from '../../.scripts/chromium.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const executablePath = await findChromium();
if (executablePath === undefined) {
  throw new Error('Chromium was not found: set CHROMIUM_PATH, or run `node .scripts/setup.mjs --browser`');
}

/** Journeys walk the built app (`npm run build` first) as a phone would show it. */
const port = 4179;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.{journey,spec,test}.ts',
  outputDir: `${root}test-results/journeys`,
  forbidOnly: true,
  retries: 0,
  workers: 2,
  timeout: 90_000,
  use: {
    baseURL: `http://localhost:${port}/`,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    locale: 'en-GB',
    timezoneId: 'UTC',
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath,
      args: [
        '--no-sandbox',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort`,
    cwd: root,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
    stdout: 'ignore',
  },
});
