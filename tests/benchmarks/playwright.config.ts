import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

/** The bench in Chromium: it prints, and fails only when it cannot be run at all. */
export default defineConfig({
  testDir: '.',
  testMatch: '**/*.bench.ts',
  outputDir: fileURLToPath(new URL('../../test-results/benchmarks', import.meta.url)),
  workers: 1,
  retries: 0,
  timeout: 1_200_000,
  reporter: 'line',
});
