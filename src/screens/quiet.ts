import { signal } from '@preact/signals';

/** Time without a tap or a key after which work ahead of need is begun, in milliseconds. Own choice. */
const QUIET_MS = 2000;

/** Whether the golfer has left the page alone for a moment since it was opened: then work ahead of need holds up no tap. */
export const isQuiet = signal(false);

/** Starts to listen for the first quiet moment. Called once, by the page. */
export function followQuiet(): void {
  const events = ['pointerdown', 'keydown', 'hashchange'] as const;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const wait = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      for (const event of events) removeEventListener(event, wait);
      isQuiet.value = true;
    }, QUIET_MS);
  };
  for (const event of events) addEventListener(event, wait);
  wait();
}

/** Settles at the first quiet moment. */
export function quiet(): Promise<void> {
  return new Promise((resolve) => {
    const stop = isQuiet.subscribe((is) => {
      if (!is) return;
      resolve();
      queueMicrotask(() => stop());
    });
  });
}
