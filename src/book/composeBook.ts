import type { Logbook } from '../golf/logbook.ts';
import { metres } from '../units/metres.ts';
import type { CarryModel } from '../yardages/carryModel.ts';
import { DEVIATE_80, gapBetween } from '../yardages/gaps.ts';
import { forecastQuantiles, nextBall } from '../yardages/nextBall.ts';
import { orderedCarries } from '../yardages/ordering.ts';
import type { Book, BookCell, BookGap, Borrowed } from './book.ts';
import type { NamedCell } from './bookCells.ts';
import { countedShots } from './countedShots.ts';
import { forecastMishits } from './forecastMishits.ts';
import { standardShots } from './standardShots.ts';

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
  if (Number.isNaN(Date.parse(asOf))) throw new RangeError(`${asOf} is no instant`);
  const { counted, leftOut } = countedShots(logbook, asOf);
  const standard = standardShots(logbook, counted, asOf);
  const { cells, model } = standard;
  const n = cells.length;
  const variances = cells.map((_, i) => model.covariance[i * n + i]);
  const ordered = orderedCarries(cells, model.mean, variances);
  const mishits = forecastMishits(logbook, standard.counted, model.mishits);
  const shotsOf = cells.map(() => [] as number[]);
  standard.cellOf.forEach((i, k) => {
    shotsOf[i].push(k);
  });
  const answered = cells.map((cell, i): BookCell => {
    const shots = shotsOf[i];
    const half = DEVIATE_80 * Math.sqrt(variances[i]);
    const forecast = nextBall(cell, ordered[i], variances[i], mishits, model.scatter2, model.loose);
    const whens = shots.map((k) => standard.counted[k].when).sort();
    return {
      clubId: cell.clubId,
      specId: cell.specId,
      swing: cell.swing,
      shots: shots.length,
      solid: shots.filter((k) => model.solid[k] > 0.5).length,
      stock_m: metres(Math.exp(ordered[i])),
      lo80_m: metres(Math.exp(ordered[i] - half)),
      hi80_m: metres(Math.exp(ordered[i] + half)),
      next_m: forecastQuantiles(forecast).map(metres),
      own: model.own[i],
      borrowed: borrowedWords(model.own[i], standard.counted.length),
      lastAt: whens[whens.length - 1] ?? null,
      shotIds: shots.map((k) => standard.counted[k].shot.id),
    };
  });
  const notAdjusted = [...leftOut, ...standard.leftOut].sort((a, b) => (a.shotId < b.shotId ? -1 : 1));
  return { asOf, cells: answered, gaps: gapsOf(cells, model, ordered), leftOut: notAdjusted };
}

function borrowedWords(own: number, shotsInAll: number): Borrowed {
  if (shotsInAll === 0) return 'typical golfer, not you';
  if (own >= YOURS) return 'yours';
  return own >= PARTLY ? 'partly borrowed' : 'mostly borrowed from neighbours';
}

/** Gaps between neighbours among the full swings of the bag that are played, in order of carry. */
function gapsOf(cells: readonly NamedCell[], model: CarryModel, ordered: Float64Array): BookGap[] {
  const n = cells.length;
  const full = cells.flatMap((cell, i) => (cell.current && cell.played && cell.swing === 'full' ? [i] : []));
  full.sort((a, b) => ordered[b] - ordered[a] || cells[a].loft_deg - cells[b].loft_deg || a - b);
  return full.slice(1).map((shorter, rank): BookGap => {
    const longer = full[rank];
    const { covariance } = model;
    const gap = gapBetween(
      Math.exp(ordered[longer]),
      Math.exp(ordered[shorter]),
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
