/** Where an arrow key leads: across, down. */
const ARROWS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The middle of a key on the screen. */
function middle(key: Element): { x: number; y: number } {
  const { left, right, top, bottom } = key.getBoundingClientRect();
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** Moves the focus to the nearest key in the direction of an arrow; false: it is no arrow, or no key lies there. */
export function moveFocus(within: Element, arrow: string): boolean {
  const way = ARROWS[arrow];
  const from = document.activeElement;
  if (!way || !from?.hasAttribute('data-key')) return false;
  const here = middle(from);
  let nearest: HTMLElement | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const key of within.querySelectorAll<HTMLElement>('[data-key]')) {
    const { x, y } = middle(key);
    const along = (x - here.x) * way[0] + (y - here.y) * way[1];
    const aside = Math.abs((x - here.x) * way[1]) + Math.abs((y - here.y) * way[0]);
    const cost = along + 3 * aside;
    if (along > 1 && cost < least) [nearest, least] = [key, cost];
  }
  nearest?.focus();
  return nearest !== null;
}
