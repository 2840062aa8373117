import type { Logbook } from '../golf/logbook.ts';
import type { Swing } from '../golf/swing.ts';
import { degrees } from '../units/degrees.ts';
import { ballInformation, narrowing } from '../yardages/ballsToCome.ts';
import { coverageDifference, leaveTable } from '../yardages/coverage.ts';
import { approachesFaced } from './approachesFaced.ts';
import { type BagDifference, differenceOf } from './bagChoice.ts';
import type { FittedBook } from './fitBook.ts';
import { added, type ImaginedClub, imaginedBook } from './imaginedBook.ts';

/** Balls that either of the two is given before they are compared. */
const PRACTICE_BALLS = 40;

/** What practising one more swing is worth beside buying one more club. */
export interface SwingOrClub {
  readonly swing: { readonly clubId: string; readonly swing: Swing; readonly difference: BagDifference } | null;
  readonly club: { readonly kind: string; readonly loft_deg: number; readonly difference: BagDifference } | null;
  /** What the swing is worth more than the club; null when there is no such swing or club. */
  readonly swingOverClub: BagDifference | null;
}

/**
 * The partial swing never yet hit that would help most, beside the one club more that would help most
 * (half-way in loft between two neighbours), each after forty balls: expected leave saved on every
 * approach, with its standard deviation. A swing costs practice, a club a place in the bag.
 *
 * Counted as played now: full swings, and partial swings with own shots.
 */
export function swingOrClub(logbook: Logbook, book: FittedBook): SwingOrClub {
  const full = book.cells.filter(
    ({ current, played, swing, kind }) => current && played && swing === 'full' && kind !== 'driver',
  );
  const inOrder = full.toSorted((a, b) => a.loft_deg - b.loft_deg);
  const ideas = inOrder.slice(1).flatMap((weak, i): ImaginedClub[] => {
    const apart = weak.loft_deg - inOrder[i].loft_deg;
    const loft = degrees(Math.round(weak.loft_deg + inOrder[i].loft_deg) / 2);
    return apart < 2 || weak.kind === 'putter' ? [] : [added(weak.kind, loft)];
  });
  const fitted = imaginedBook(
    book,
    ideas.filter(({ id }, i) => ideas.findIndex((other) => other.id === id) === i),
  );
  const { cells, model, theta } = fitted;
  const n = cells.length;
  const practised = fitted.forecasts.map((forecast, i) => {
    if (fitted.shotsOf[i].length > 0 || (cells[i].swing === 'full' && cells[i].current)) return forecast;
    const information = PRACTICE_BALLS * ballInformation(cells[i], theta[i], model.scatter2, fitted.mishits);
    const known = narrowing(model.covariance, n, i, information).direction[i] ** 2;
    return { ...forecast, deviations: forecast.deviations.map((s) => Math.sqrt(s * s - known)) };
  });
  const table = leaveTable(approachesFaced(logbook, book)[0].approaches, practised, theta);
  const played = cells.flatMap((cell, i) =>
    cell.current && cell.played && (cell.swing === 'full' || fitted.shotsOf[i].length > 0) ? [i] : [],
  );
  if (played.length === 0) return { swing: null, club: null, swingOverClub: null };
  const worth = (i: number) => coverageDifference(table, model.covariance, played, [...played, i]);
  const best = (options: number[]) =>
    options.map((cell) => ({ cell, ...worth(cell) })).sort((a, b) => b.gain_m - a.gain_m || a.cell - b.cell)[0];
  const swing = best(
    cells.flatMap((cell, i) =>
      cell.current && cell.played && cell.swing !== 'full' && !played.includes(i) ? [i] : [],
    ),
  );
  const club = best(cells.flatMap((cell, i) => (i >= book.cells.length && cell.swing === 'full' ? [i] : [])));
  return {
    swing: swing
      ? { clubId: cells[swing.cell].clubId, swing: cells[swing.cell].swing, difference: differenceOf(swing) }
      : null,
    club: club
      ? { kind: cells[club.cell].kind, loft_deg: cells[club.cell].loft_deg, difference: differenceOf(club) }
      : null,
    swingOverClub:
      swing && club
        ? differenceOf(coverageDifference(table, model.covariance, [...played, club.cell], [...played, swing.cell]))
        : null,
  };
}
