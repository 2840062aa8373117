import type { BookCell } from '../../book/book.ts';
import css from './Ladder.module.css';

/** The shortest and the longest carry that a column of ladders shows, in metres. */
export interface Scale {
  readonly low: number;
  readonly high: number;
}

/** A stretch of the common scale: 8 of the next 10 balls as a thin line, the stock carry as a stroke. For the eye only. */
export function Ladder({ cell, scale }: { readonly cell: BookCell; readonly scale: Scale }) {
  const x = (carry: number) => (((carry - scale.low) / (scale.high - scale.low)) * 100).toFixed(2);
  return (
    <svg class={css.ladder} viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
      <path class={css.ground} d="M0 15H100" />
      <path class={css.next} d={`M${x(cell.next_m[1])} 15H${x(cell.next_m[17])}`} />
      <path class={css.stock} d={`M${x(cell.stock_m)} 5V19`} />
    </svg>
  );
}
