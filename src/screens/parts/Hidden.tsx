import type { ComponentChildren } from 'preact';
import css from './Hidden.module.css';

/** Words for those who hear the page; the eye reads them off the layout. */
export function Hidden({ children }: { readonly children: ComponentChildren }) {
  return <span class={css.hidden}>{children}</span>;
}
