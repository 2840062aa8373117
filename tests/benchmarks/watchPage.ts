/** What a page tells of its own start and of taps on it; times in milliseconds since its navigation began. */
export interface Seen {
  /** The first key was on the page. */
  shown: number;
  /** The first key had answered a tap, and the answer was drawn. */
  responding: number;
  /** Begin and length of each task over 50 ms. */
  readonly longTasks: { at: number; ms: number }[];
  /** From tap to the frame that shows what came of it. */
  readonly taps: number[];
  /** From the tap that logs a shot to the frame that shows it as saved. */
  readonly saves: number[];
  /** What the worker was asked last, and how long each answer took. */
  readonly asked: { name: string; ms: number }[];
}

/** Put into a page before anything else of it runs: taps the first key as soon as it stands there, and watches. */
export function watchPage(tapsFirstKey: boolean): void {
  const seen: Seen = { shown: 0, responding: 0, longTasks: [], taps: [], saves: [], asked: [] };
  const shared = globalThis as unknown as { seen: Seen; worker: Worker; request: { id: number; name: string } };
  shared.seen = seen;
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries()) seen.longTasks.push({ at: startTime, ms: duration });
  }).observe({ type: 'longtask', buffered: true });

  const firstKey = () => document.querySelector<HTMLElement>('[data-first-key], [data-pad] button:not([disabled])');
  const look = () =>
    [...document.querySelectorAll('[data-first-key], [data-pad] button, section[aria-label] h2')]
      .map((element) => element.textContent)
      .join('|');
  const savedLines = () => document.querySelectorAll('li[data-shot]:not(:has(em))').length;
  /** After the frame that draws what was changed until now. */
  const drawn = (then: () => void) =>
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = then;
      port2.postMessage(null);
    });

  let before = '';
  let tapped: { at: number; saved: number } | null = null;
  let logging: { at: number; saved: number } | null = null;
  new MutationObserver(() => {
    const key = firstKey();
    if (tapsFirstKey && seen.shown === 0 && key) {
      seen.shown = performance.now();
      before = look();
      setTimeout(() => firstKey()?.click());
    } else if (tapsFirstKey && seen.shown > 0 && seen.responding === 0 && before !== '' && look() !== before) {
      before = '';
      drawn(() => {
        seen.responding = performance.now();
      });
    }
    const tap = tapped;
    if (tap) {
      tapped = null;
      drawn(() => seen.taps.push(performance.now() - tap.at));
    }
    const log = logging;
    if (log && savedLines() > log.saved) {
      logging = null;
      drawn(() => seen.saves.push(performance.now() - log.at));
    }
  }).observe(document, { childList: true, subtree: true, characterData: true, attributes: true });
  addEventListener(
    'click',
    (event) => {
      tapped = { at: event.timeStamp, saved: savedLines() };
      logging = tapped;
    },
    { capture: true },
  );

  const Plain = globalThis.Worker;
  globalThis.Worker = class extends Plain {
    constructor(...args: ConstructorParameters<typeof Worker>) {
      super(...args);
      shared.worker = this;
    }
    override postMessage(message: { id: number; name: string }) {
      const since = performance.now();
      if (message.id > 0) shared.request = message;
      const answered = ({ data }: MessageEvent<{ id: number }>) => {
        if (data.id !== message.id) return;
        this.removeEventListener('message', answered);
        seen.asked.push({ name: message.name, ms: performance.now() - since });
      };
      this.addEventListener('message', answered);
      super.postMessage(message);
    }
  };
}
