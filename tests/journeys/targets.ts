import { expect, type Page } from '@playwright/test';

/** Holds every target on the page to a least size, and to 8 px between any two. */
export async function expectTargets(page: Page, of: string, least_px = 48): Promise<void> {
  const boxes = await page
    .locator('a, button, summary, select, input:not([type=radio]), label:has(input)')
    .evaluateAll((targets) =>
      targets
        .filter((target) => target.checkVisibility({ visibilityProperty: true }))
        .map((target) => {
          const { left, top, right, bottom } = target.getBoundingClientRect();
          const seen = { left, top, right, bottom };
          // What is fixed lies over what scrolls under it: only targets of one layer can be too near.
          let layer = '';
          for (let over: Element | null = target; over; over = over.parentElement) {
            const { position, overflowX, overflowY } = getComputedStyle(over);
            if (layer === '' && (position === 'fixed' || position === 'sticky')) layer = position;
            if (over === target || over === document.documentElement || over === document.body) continue;
            if (overflowX === 'visible' && overflowY === 'visible') continue;
            const box = over.getBoundingClientRect();
            seen.left = Math.max(seen.left, box.left);
            seen.top = Math.max(seen.top, box.top);
            seen.right = Math.min(seen.right, box.right);
            seen.bottom = Math.min(seen.bottom, box.bottom);
          }
          const name = target.textContent || target.getAttribute('aria-label');
          return { width: right - left, height: bottom - top, ...seen, layer, name };
        })
        .filter((box) => box.width > 0),
    );
  expect(boxes.length, of).toBeGreaterThan(3);
  const tooSmall = boxes.filter((box) => box.width < least_px - 0.5 || box.height < least_px - 0.5);
  expect(tooSmall, `${of}: too small`).toEqual([]);
  const inSight = boxes.filter((box) => box.right > box.left && box.bottom > box.top);
  const near = inSight.flatMap((a, i) =>
    inSight.slice(i + 1).flatMap((b) => {
      if (a.layer !== b.layer) return [];
      const across = Math.max(a.left, b.left) - Math.min(a.right, b.right);
      const down = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
      return Math.max(across, down) < 7.5 ? [`${a.name} | ${b.name}: ${across.toFixed(1)}, ${down.toFixed(1)}`] : [];
    }),
  );
  expect(near, `${of}: too near`).toEqual([]);
}
