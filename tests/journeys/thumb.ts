import type { Locator, Page } from '@playwright/test';

/** Two taps on one spot closer in time than this count once; the thumb here waits a little longer. */
const SAME_SPOT_MS = 330;
const SAME_SPOT_PX = 48;

/** A thumb on the page: it counts its taps, and never taps one spot twice in so short a time that it counts once. */
export interface Thumb {
  /** Taps the middle of a key, or a spot on it. */
  readonly tap: (key: Locator, spot?: { readonly x: number; readonly y: number }) => Promise<void>;
  readonly taps: () => number;
}

/** A thumb for a page; its first tap may come at once. */
export function thumbOn(page: Page): Thumb {
  let taps = 0;
  let last = { at: 0, x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY };
  return {
    taps: () => taps,
    tap: async (key, spot) => {
      await key.waitFor();
      const box = await key.boundingBox();
      const at = box && (spot ?? { x: box.width / 2, y: box.height / 2 });
      const [x, y] = box && at ? [box.x + at.x, box.y + at.y] : [last.x, last.y];
      const since = Date.now() - last.at;
      const isSameSpot = Math.hypot(x - last.x, y - last.y) < SAME_SPOT_PX;
      if (isSameSpot && since < SAME_SPOT_MS) await page.waitForTimeout(SAME_SPOT_MS - since);
      await key.click(spot ? { position: spot } : {});
      taps += 1;
      last = { at: Date.now(), x, y };
    },
  };
}
