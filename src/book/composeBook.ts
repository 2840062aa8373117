import type { Logbook } from '../golf/logbook.ts';
import { metres } from '../units/metres.ts';
import { DEVIATE_80, gapBetween } from '../yardages/gaps.ts';
import { forecastQuantiles } from '../yardages/nextBall.ts';
import type { Book, BookCell, BookGap, Borrowed } from './book.ts';
import { type FittedBook, fitBook } from './fitBook.ts';

/** Share of own evidence from which a number is the golfer's, or partly his. Own choice. */
const YOURS = 0.7;
const PARTLY = 0.3;

/**
 * One golfer's book as of a moment: every shot that counts, read together, and every cell answered.
 *
 * Pure: the same logbook and moment give the same book to the last digit, whatever the order of the
 * records in the file.
 *
 * @param asOf instant (ISO 8601) of the book; later shots are left out.
 * @throws RangeError when `asOf` is no instant.
 */
export function composeBook(logbook: Logbook, asOf: string): Book {
  return bookOf(fitBook(logbook, asOf));
}

/** The numbers of a fitted book as screens and report show them. */
export function bookOf(fitted: FittedBook): Book {
  const { cells, counted, model, theta } = fitted;
  const n = cells.length;
  const answered = cells.map((cell, i): BookCell => {
    const shots = fitted.shotsOf[i];
    const half = DEVIATE_80 * Math.sqrt(model.covariance[i * n + i]);
    const whens = shots.map((k) => counted[k].when).sort();
    return {
      clubId: cell.clubId,
      specId: cell.specId,
      swing: cell.swing,
      shots: shots.length,
      solid: shots.filter((k) => model.solid[k] > 0.5).length,
      stock_m: metres(Math.exp(theta[i])),
      lo80_m: metres(Math.exp(theta[i] - half)),
      hi80_m: metres(Math.exp(theta[i] + half)),
      next_m: forecastQuantiles(fitted.forecasts[i]).map(metres),
      own: model.own[i],
      borrowed: borrowedWords(model.own[i], counted.length),
      lastAt: whens[whens.length - 1] ?? null,
      shotIds: shots.map((k) => counted[k].shot.id),
    };
  });
  return { asOf: fitted.asOf, cells: answered, gaps: gapsOf(fitted), leftOut: fitted.leftOut };
}

function borrowedWords(own: number, shotsInAll: number): Borrowed {
  if (shotsInAll === 0) return 'typical golfer, not you';
  if (own >= YOURS) return 'yours';
  return own >= PARTLY ? 'partly borrowed' : 'mostly borrowed from neighbours';
}

/** Gaps between neighbours among the full swings of the bag that are played, in order of carry. */
function gapsOf({ cells, model, theta }: FittedBook): BookGap[] {
  const n = cells.length;
  const full = cells.flatMap((cell, i) => (cell.current && cell.played && cell.swing === 'full' ? [i] : []));
  full.sort((a, b) => theta[b] - theta[a] || cells[a].loft_deg - cells[b].loft_deg || a - b);
  return full.slice(1).map((shorter, rank): BookGap => {
    const longer = full[rank];
    const { covariance } = model;
    const gap = gapBetween(
      Math.exp(theta[longer]),
      Math.exp(theta[shorter]),
      covariance[longer * n + longer],
      covariance[shorter * n + shorter],
      covariance[longer * n + shorter],
    );
    return {
      longer: cells[longer].clubId,
      shorter: cells[shorter].clubId,
      gap_m: metres(gap.gap_m),
      lo80_m: metres(gap.lo80_m),
      hi80_m: metres(gap.hi80_m),
      pSame: gap.pSame,
      pWide: gap.pWide,
      verdict: gap.verdict,
    };
  });
}
