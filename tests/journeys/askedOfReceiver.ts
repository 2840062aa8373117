import type { Page } from '@playwright/test';

/** Counts what the page asks of the receiver, from before its first script. */
export async function askedOfReceiver(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const counts = { asked: 0 };
    Object.assign(globalThis, { counts });
    for (const name of ['watchPosition', 'getCurrentPosition'] as const) {
      const own = Geolocation.prototype[name] as (...args: unknown[]) => unknown;
      Object.assign(Geolocation.prototype, {
        [name](this: Geolocation, ...args: unknown[]) {
          counts.asked += 1;
          return own.apply(this, args);
        },
      });
    }
  });
  return () => page.evaluate(() => (globalThis as unknown as { counts: { asked: number } }).counts.asked);
}
