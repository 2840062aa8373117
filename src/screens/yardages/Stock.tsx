import type { BookCell } from '../../book/book.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { Hidden } from '../parts/Hidden.tsx';
import { unit } from '../unit.ts';
import { figure, words } from '../words.ts';
import css from './Stock.module.css';

/**
 * A number as the card prints it: the stock carry large, ± and own shots small. Without a shot of one's own
 * it is light, dotted and marked `~`. The exact figures stand in the element's data for whoever checks them.
 */
export function Stock({ cell }: { readonly cell: BookCell }) {
  const isBorrowed = cell.shots === 0;
  return (
    <span
      class={css.number}
      data-club={cell.clubId}
      data-spec={cell.specId}
      data-swing={cell.swing}
      data-metres={cell.stock_m}
      data-low-metres={cell.lo80_m}
      data-high-metres={cell.hi80_m}
      data-shots={cell.shots}
    >
      <span class={isBorrowed ? css.borrowed : css.stock}>
        {isBorrowed && (
          <>
            <Hidden>{words.yardages.about} </Hidden>
            <span class={css.about} aria-hidden="true">
              ~
            </span>
          </>
        )}
        <span data-stock>{wholeDistance(cell.stock_m, unit.value)}</span>
      </span>
      <small class={css.small}>
        {' ± '}
        <span data-plus-minus>{plusMinus(cell.lo80_m, cell.hi80_m, unit.value)}</span>
        <span aria-hidden="true">{` · ${figure(cell.shots)}`}</span>
        <Hidden>, {isBorrowed ? words.yardages.noShots : words.yardages.shots(cell.shots)}</Hidden>
      </small>
    </span>
  );
}
