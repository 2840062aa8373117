import type { ComponentChildren } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { leftAt } from '../route.ts';
import css from './Page.module.css';

/** The sheet that a place is printed on: margins, reading width, and the spot on it where it was left. */
export function Page({ address, children }: { readonly address: string; readonly children: ComponentChildren }) {
  useLayoutEffect(() => scrollTo(0, leftAt(address)), [address]);
  return <main class={css.page}>{children}</main>;
}
