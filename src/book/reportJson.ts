import type { Book, BookCell, BookGap, LeftOut } from './book.ts';

/** A golfer and the book computed from the golfer's logbook. */
export interface PlayerBook {
  readonly playerId: string;
  readonly book: Book;
}

type ReportedCell = Omit<BookCell, 'shotIds'>;
type ReportedGap = Omit<BookGap, 'pWide'>;

/** What the report command prints for programs. Lengths in metres; ids as in the file. */
export interface Report {
  readonly format: 'carrybook-report';
  readonly version: 1;
  readonly asOf: string;
  readonly players: readonly {
    readonly player: string;
    readonly cells: readonly ReportedCell[];
    readonly gaps: readonly ReportedGap[];
    readonly leftOut: readonly LeftOut[];
  }[];
}

function reportedCell(cell: BookCell): ReportedCell {
  return {
    clubId: cell.clubId,
    specId: cell.specId,
    swing: cell.swing,
    shots: cell.shots,
    solid: cell.solid,
    stock_m: cell.stock_m,
    lo80_m: cell.lo80_m,
    hi80_m: cell.hi80_m,
    next_m: cell.next_m,
    own: cell.own,
    borrowed: cell.borrowed,
    lastAt: cell.lastAt,
  };
}

function reportedGap(gap: BookGap): ReportedGap {
  return {
    longer: gap.longer,
    shorter: gap.shorter,
    gap_m: gap.gap_m,
    lo80_m: gap.lo80_m,
    hi80_m: gap.hi80_m,
    pSame: gap.pSame,
    verdict: gap.verdict,
  };
}

/**
 * The report of some golfers' books for programs: every number of every book as it is, in metres,
 * nothing rounded. Keys stand in the order of the report's format, version 1.
 *
 * @param asOf the moment the books were computed for.
 */
export function reportJson(asOf: string, players: readonly PlayerBook[]): Report {
  return {
    format: 'carrybook-report',
    version: 1,
    asOf,
    players: players.map(({ playerId, book }) => ({
      player: playerId,
      cells: book.cells.map(reportedCell),
      gaps: book.gaps.map(reportedGap),
      leftOut: book.leftOut.map(({ shotId, why }) => ({ shotId, why })),
    })),
  };
}
