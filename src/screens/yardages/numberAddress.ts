import type { BookCell } from '../../book/book.ts';
import { type Club, specOn } from '../../golf/club.ts';
import { addressOf } from '../route.ts';

/** The address of the page behind a number; a club as it was built before is named by its spec period. */
export function numberAddress(club: Club, cell: BookCell, asOf: string): string {
  const isPresent = specOn(club, asOf).id === cell.specId;
  return addressOf('yardages', club.id, cell.swing, ...(isPresent ? [] : [cell.specId]));
}
