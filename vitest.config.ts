import { defineConfig } from 'vitest/config';

/** Everything that is not a suite of its own: what `npm run check` runs. */
const slow = ['tests/golfers/**', 'tests/faults/**', 'tests/journeys/**', 'tests/bundle.test.ts'];

const suite = (name: string, include: string[], exclude: string[] = [], testTimeout = 20_000) => ({
  extends: true as const,
  test: { name, include, exclude: ['**/node_modules/**', ...exclude], testTimeout, hookTimeout: testTimeout },
});

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    restoreMocks: true,
    css: { modules: { classNameStrategy: 'non-scoped' } },
    projects: [
      suite('unit', ['tests/**/*.test.{ts,tsx}'], slow),
      suite('golfers', ['tests/golfers/**/*.test.ts'], [], 240_000),
      suite('faults', ['tests/faults/**/*.test.{ts,tsx}'], [], 60_000),
      suite('built', ['tests/bundle.test.ts']),
    ],
  },
});
