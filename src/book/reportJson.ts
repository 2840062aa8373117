import type { Book, BookCell, BookGap, LeftOut } from './book.ts';
import type { PlanSheets } from './planSheets.ts';

/** A golfer and the book computed from the golfer's logbook. */
export interface PlayerBook {
  readonly playerId: string;
  readonly book: Book;
  /** Bag, aim, practice and putting; without them the report has the book alone. */
  readonly sheets?: PlanSheets;
}

type ReportedCell = Omit<BookCell, 'shotIds'>;
type ReportedGap = Omit<BookGap, 'pWide'>;

/**
 * What the report command prints for programs. Lengths in metres; ids as in the file; probabilities
 * from 0 to 1. Beside the book each player has, where they were worked out:
 *
 * - `bag` ({@link PlanSheets.bag}): `warnings` (too many, duplicate, loft and carry disagree); `changes`
 *   of build with before, after, 80 % interval and `pChanged` (by more than 2 yd either way); `gaps` with
 *   `loftGap_deg` and `settling` (how many more shots); `coverage` for all rounds and by tees: expected
 *   `leave_m` with its standard deviation `deviation_m`, `step_m` to the nearest stock carry, and the `curve` with the club × swing for each
 *   distance; `swingOrClub`; `best` bag of the owned clubs with all bags `near` it and the comparison
 *   `againstPresent`.
 * - `aim`: the `green` and `risk` it is reckoned for; `rows` with the 80 % `ellipse` (`deep_m`, `wide_m`,
 *   and `within`, the factor by which they may be off), the balls it rests on (`dots` own, `pooled` in
 *   all) and `odds` from fairway, rough and sand; `flag`: up to which club the flag is on.
 * - `practice`: `worth` of the next ten balls by cell, and `plans` of 20, 40 and 60 balls.
 * - `putting`: `all` putts and `byPutter`: the `angle` (σ in degrees with its 80 % interval), the share
 *   `made` by length beside the angle model, what the `first` putt leaves, and three-putts.
 */
export interface Report {
  readonly format: 'carrybook-report';
  readonly version: 1;
  readonly asOf: string;
  readonly players: readonly {
    readonly player: string;
    readonly cells: readonly ReportedCell[];
    readonly gaps: readonly ReportedGap[];
    readonly leftOut: readonly LeftOut[];
    readonly bag?: PlanSheets['bag'];
    readonly aim?: PlanSheets['aim'];
    readonly practice?: PlanSheets['practice'];
    readonly putting?: PlanSheets['putting'];
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
    players: players.map(({ playerId, book, sheets }) => ({
      player: playerId,
      cells: book.cells.map(reportedCell),
      gaps: book.gaps.map(reportedGap),
      leftOut: book.leftOut.map(({ shotId, why }) => ({ shotId, why })),
      ...(sheets && { bag: sheets.bag, aim: sheets.aim, practice: sheets.practice, putting: sheets.putting }),
    })),
  };
}
