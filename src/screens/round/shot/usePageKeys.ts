import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { moveFocus } from './moveFocus.ts';

/** Puts the focus on the first key of the pad whenever another pad has come, so that a keyboard goes on from there. */
export function useFocusOnPad(page: RefObject<HTMLElement | null>, pad: string): void {
  const before = useRef(pad);
  useLayoutEffect(() => {
    if (before.current === pad) return;
    before.current = pad;
    const active = document.activeElement;
    if (active && active !== document.body && !page.current?.contains(active)) return;
    const first = page.current?.querySelector<HTMLElement>('[data-pad] [data-key], [data-pad] textarea');
    first?.focus({ preventScroll: true });
  }, [page, pad]);
}

/** What the keys of a keyboard do on the page beyond what they do anyway. */
export interface PageKeys {
  /** A digit, or null for Backspace; false: no number is being typed. */
  readonly onDigit: (digit: string | null) => boolean;
  /** Enter while a number is being typed; false: none is. */
  readonly onEnter: () => boolean;
  /** Control and Enter. */
  readonly onLog: () => void;
}

/**
 * Listens to the keyboard for the page: digits go into the open number, arrows lead from key to key, a
 * held key counts once. The document hears them, for between two pads nothing has the focus.
 */
export function usePageKeys(page: RefObject<HTMLElement | null>, keys: PageKeys): void {
  const latest = useRef(keys);
  latest.current = keys;
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      const { target } = event;
      const isHere = target === document.body || (target instanceof Node && page.current?.contains(target));
      if (page.current && isHere) handle(event, page.current, latest.current);
    };
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, [page]);
}

function handle(event: KeyboardEvent, page: Element, keys: PageKeys): void {
  const { key } = event;
  const isHeld = event.repeat && (key === 'Enter' || key === ' ');
  if (event.defaultPrevented || event.target instanceof HTMLTextAreaElement || event.altKey || event.metaKey) return;
  if (isHeld) event.preventDefault();
  else if (event.ctrlKey) {
    if (key !== 'Enter') return;
    event.preventDefault();
    keys.onLog();
  } else if (/^\d$/.test(key)) keys.onDigit(key);
  else if (key === 'Backspace') keys.onDigit(null);
  else if ((key === 'Enter' && keys.onEnter()) || moveFocus(page, key)) event.preventDefault();
}
