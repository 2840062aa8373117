import type { Book, BookCell } from '../../book/book.ts';
import { type Club, type SpecPeriod, specOn } from '../../golf/club.ts';
import type { Logbook } from '../../golf/logbook.ts';
import { clockHours, type Swing, WEDGE_SWINGS } from '../../golf/swing.ts';

/** One place on the card: a number, or why there is none. */
export type Slot =
  | { readonly kind: 'number'; readonly cell: BookCell }
  | { readonly kind: 'not played' }
  | { readonly kind: 'no number' };

/** A club as it is built now, with its place or places on the card. */
export interface Row {
  readonly club: Club;
  readonly spec: SpecPeriod;
  readonly slots: readonly Slot[];
}

/** Why a number stands aside, the most wanted first. */
const ASIDE_ORDER = ['swing', 'out of bag', 'before'] as const;

/** A number that has no place on card or matrix: another swing, a club as it was built before, a club out of the bag. */
export interface Aside {
  readonly club: Club;
  readonly spec: SpecPeriod;
  readonly cell: BookCell;
  readonly why: (typeof ASIDE_ORDER)[number];
}

/** A book laid out as a card: wedges by swing, full swings in loft order, and the rest. */
export interface BookLayout {
  readonly swings: readonly Swing[];
  readonly wedges: readonly Row[];
  readonly card: readonly Row[];
  readonly asides: readonly Aside[];
}

/** The numbers of some rows, in their order. */
export function numbersOf(rows: readonly Row[]): BookCell[] {
  return rows.flatMap(({ slots }) => slots.flatMap((slot) => (slot.kind === 'number' ? [slot.cell] : [])));
}

/** The swing lengths of the wedge matrix, shortest first: one column each. */
export const MATRIX_SWINGS: readonly Swing[] = [...WEDGE_SWINGS, 'full'];

function cellKey(clubId: string, specId: string, swing: Swing): string {
  return `${clubId} ${specId} ${swing}`;
}

/** The club's spec period of that id; its present one when the id is none of its own. */
function specOf(club: Club, specId: string, asOf: string): SpecPeriod {
  return club.specPeriods.find((spec) => spec.id === specId) ?? specOn(club, asOf);
}

/**
 * Lays a book out as a card. Clubs stand in loft order, strongest loft first, those of one loft by
 * name; a wedge has its row in the matrix and its full swing on the card too. No number of the book
 * is lost: what fits neither stands in `asides`.
 *
 * Assumes that the book was reckoned from this logbook.
 */
export function layOutBook(logbook: Logbook, book: Book): BookLayout {
  const cells = new Map(book.cells.map((cell) => [cellKey(cell.clubId, cell.specId, cell.swing), cell]));
  const placed = new Set<BookCell>();
  const inLoftOrder = logbook.clubs
    .filter((club) => club.inBag && club.kind !== 'putter')
    .map((club) => ({ club, spec: specOn(club, book.asOf) }))
    .sort((a, b) => a.spec.loft_deg - b.spec.loft_deg || (a.club.name < b.club.name ? -1 : 1));

  function slot(club: Club, spec: SpecPeriod, swing: Swing): Slot {
    const cell = cells.get(cellKey(club.id, spec.id, swing));
    if (cell && (cell.shots > 0 || !club.notPlayed.includes(swing))) {
      placed.add(cell);
      return { kind: 'number', cell };
    }
    if (cell) placed.add(cell);
    return club.notPlayed.includes(swing) ? { kind: 'not played' } : { kind: 'no number' };
  }

  function rows(swings: readonly Swing[], wanted: (club: Club) => boolean): Row[] {
    return inLoftOrder
      .filter(({ club }) => wanted(club))
      .map(({ club, spec }) => ({ club, spec, slots: swings.map((swing) => slot(club, spec, swing)) }));
  }

  const wedges = rows(MATRIX_SWINGS, (club) => club.kind === 'wedge');
  const card = rows(['full'], () => true);
  const clubs = new Map(logbook.clubs.map((club) => [club.id, club]));
  const asides: Aside[] = [];
  for (const cell of book.cells) {
    const club = clubs.get(cell.clubId);
    if (!club || placed.has(cell)) continue;
    const spec = specOf(club, cell.specId, book.asOf);
    const why = !club.inBag ? 'out of bag' : spec.id === specOn(club, book.asOf).id ? 'swing' : 'before';
    asides.push({ club, spec, cell, why });
  }
  const order = new Map(inLoftOrder.map(({ club }, i) => [club.id, i]));
  const rank = ({ club, why }: Aside) => ASIDE_ORDER.indexOf(why) * 1000 + (order.get(club.id) ?? order.size);
  asides.sort((a, b) => rank(a) - rank(b) || clockHours(b.cell.swing) - clockHours(a.cell.swing));
  return { swings: MATRIX_SWINGS, wedges, card, asides };
}
