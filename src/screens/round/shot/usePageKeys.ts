import { type Signal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { moveFocus } from './moveFocus.ts';
import { meantKey, NOTHING_TYPED, type TypedKey, type Typing, typeAhead } from './typeAhead.ts';

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
 * Listens to the keyboard for the page: digits go into the open number, letters find the key that begins with them,
 * Enter or Tab takes the first that does, arrows lead from key to key, a held key counts once. The document hears them,
 * for between two pads nothing has the focus. The answer is what was typed towards a key so far.
 */
export function usePageKeys(page: RefObject<HTMLElement | null>, keys: PageKeys): string {
  const latest = useRef(keys);
  latest.current = keys;
  const typing = useSignal(NOTHING_TYPED);
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      const { target } = event;
      const isHere = target === document.body || (target instanceof Node && page.current?.contains(target));
      if (page.current && isHere) handle(event, page.current, latest.current, typing);
    };
    document.addEventListener('keydown', hear);
    return () => document.removeEventListener('keydown', hear);
  }, [page, typing]);
  return typing.value.typed;
}

function handle(event: KeyboardEvent, page: Element, keys: PageKeys, typing: Signal<Typing>): void {
  const { key } = event;
  const isHeld = event.repeat && (key === 'Enter' || key === ' ');
  if (event.defaultPrevented || event.target instanceof HTMLTextAreaElement || event.altKey || event.metaKey) return;
  if (isHeld) event.preventDefault();
  else if (event.ctrlKey) {
    if (key !== 'Enter') return;
    event.preventDefault();
    keys.onLog();
  } else if (key === 'Backspace') {
    keys.onDigit(null);
    typing.value = NOTHING_TYPED;
  } else if ((key === 'Enter' || key === 'Tab') && takeMeant(page, typing)) event.preventDefault();
  else if (key === 'Enter' && keys.onEnter()) event.preventDefault();
  else if (moveFocus(page, key)) {
    event.preventDefault();
    typing.value = NOTHING_TYPED;
  } else if (key === ' ' && typing.peek().typed !== '') event.preventDefault();
  else if (/^[\p{L}\d]$/u.test(key) && !(/^\d$/.test(key) && keys.onDigit(key))) {
    const typed = typeAhead(facesOn(page), typing.peek(), key, event.timeStamp);
    typing.value = typed.typing;
    press(page, typed.press);
  }
}

/** The keys that can be typed: those of the pad, and those of the row below it. */
function keysOn(page: Element, of: TypedKey['of']): HTMLElement[] {
  const all = [...page.querySelectorAll<HTMLElement>('[data-key]')];
  return all.filter((key) => (key.closest('[data-pad]') === null) === (of === 'row'));
}

function facesOn(page: Element) {
  const faces = (of: TypedKey['of']) => keysOn(page, of).map((key) => key.textContent ?? '');
  return { pad: faces('pad'), row: faces('row') };
}

function press(page: Element, typed: TypedKey | null): void {
  if (typed) keysOn(page, typed.of)[typed.index]?.click();
}

/** Takes the key that what was typed means; false: nothing was typed, or nothing begins so. */
function takeMeant(page: Element, typing: Signal<Typing>): boolean {
  const meant = meantKey(facesOn(page), typing.peek().typed);
  typing.value = NOTHING_TYPED;
  press(page, meant);
  return meant !== null;
}
