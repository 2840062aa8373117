import type { Book, BookCell, BookGap } from '../../book/book.ts';

/** The gaps that a full swing stands between: to the next longer club, then to the next shorter. */
export function gapsOf(book: Book, cell: BookCell): BookGap[] {
  if (cell.swing !== 'full') return [];
  const toLonger = book.gaps.filter((gap) => gap.shorter === cell.clubId);
  return [...toLonger, ...book.gaps.filter((gap) => gap.longer === cell.clubId)];
}

/**
 * The numbers of the card next above and next below a number: what else could be swung for about that carry.
 *
 * @param cells the numbers on the card and the matrix; the cell itself may be among them.
 */
export function nearestNumbers(cells: readonly BookCell[], cell: BookCell): { above?: BookCell; below?: BookCell } {
  let above: BookCell | undefined;
  let below: BookCell | undefined;
  for (const other of cells) {
    if (other === cell) continue;
    if (other.stock_m >= cell.stock_m) {
      if (!above || other.stock_m < above.stock_m) above = other;
    } else if (!below || other.stock_m > below.stock_m) below = other;
  }
  return { ...(above && { above }), ...(below && { below }) };
}
