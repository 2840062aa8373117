import { carryFromTotal } from '../flight/roll.ts';
import type { Logbook } from '../golf/logbook.ts';
import { degrees } from '../units/degrees.ts';
import { metres } from '../units/metres.ts';
import { type CarryModel, fitCarryModel } from '../yardages/carryModel.ts';
import type { Claim } from '../yardages/evidence.ts';
import { DEVIATE_80, gapBetween } from '../yardages/gaps.ts';
import { forecastQuantiles, nextBall } from '../yardages/nextBall.ts';
import { orderedCarries } from '../yardages/ordering.ts';
import type { Book, BookCell, BookGap, Borrowed } from './book.ts';
import { type BookCells, bookCells } from './bookCells.ts';
import { type CountedShot, countedShots } from './countedShots.ts';
import { type FoundCarry, foundCarry, shotEvidence } from './shotEvidence.ts';
import { forecastMishits } from './unloggedStrokes.ts';

/** Share of own evidence from which a number is the golfer's, or partly his. Own choice. */
const YOURS = 0.7;
const PARTLY = 0.3;

/**
 * How much of a roll's error is the golfer's own and the season's, the same for all his totals, and
 * how much is each ball's. Own estimate; together they are the 40 % of the roll model.
 */
const SHARED_ROLL_ERROR = 0.3;

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
  const named = bookCells(
    logbook,
    asOf,
    counted.map(({ club, specId, shot }) => ({ clubId: club.id, specId, swing: shot.swing })),
  );
  const { cells } = named;
  const days = new Map<string, number>();
  const cellOf = counted.map(({ club, specId, shot }) => cellIndex(named, club.id, specId, shot.swing));
  const evidence = counted.map((one, k) => {
    const day = days.get(one.round.id) ?? days.size;
    days.set(one.round.id, day);
    return shotEvidence(one, foundCarry(one.shot, reckonedFromTotal(one)), cellOf[k], day, asOf);
  });
  const model = fitCarryModel(cells, evidence, claimsOf(logbook, named));
  const n = cells.length;
  const variances = cells.map((_, i) => model.covariance[i * n + i]);
  const ordered = orderedCarries(cells, model.mean, variances, () => true);
  const mishits = forecastMishits(logbook, counted, model.mishits);
  const shotsOf = cells.map(() => [] as number[]);
  cellOf.forEach((i, k) => {
    shotsOf[i].push(k);
  });
  const bookCellsOut = cells.map((cell, i): BookCell => {
    const shots = shotsOf[i];
    const half = DEVIATE_80 * Math.sqrt(variances[i]);
    const forecast = nextBall(cell, ordered[i], variances[i], mishits, model.scatter2, model.loose);
    const whens = shots.map((k) => counted[k].when).sort();
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
      borrowed: borrowedWords(model.own[i], counted.length),
      lastAt: whens[whens.length - 1] ?? null,
      shotIds: shots.map((k) => counted[k].shot.id),
    };
  });
  return { asOf, cells: bookCellsOut, gaps: gapsOf(named, model, ordered), leftOut };
}

function cellIndex(named: BookCells, clubId: string, specId: string, swing: string): number {
  const index = named.find(clubId, specId, swing);
  if (index === undefined) throw new RangeError(`no cell for club ${clubId}, spec ${specId}, swing ${swing}`);
  return index;
}

/** The carry behind a total: what the ball ran is taken off, and its error divided in shared and own. */
function reckonedFromTotal({ club, specId, round }: CountedShot): (total_m: number) => FoundCarry {
  return (total_m) => {
    const spec = club.specPeriods.find((period) => period.id === specId);
    const loft = degrees(spec?.loft_deg ?? 0);
    const { carry_m, sd_m } = carryFromTotal(club.kind as never, loft, metres(total_m), round.conditions.ground);
    const roll = total_m - carry_m;
    const shared = SHARED_ROLL_ERROR * Math.abs(roll);
    return {
      least_m: carry_m,
      most_m: carry_m,
      error_m: Math.sqrt(Math.max(1, sd_m ** 2 - shared ** 2)),
      rollLoading: shared / carry_m,
    };
  };
}

function claimsOf(logbook: Logbook, named: BookCells): Claim[] {
  return logbook.clubs.flatMap((club) => {
    const cell = named.cells.findIndex((one) => one.clubId === club.id && one.swing === 'full');
    return club.claimed_m === null || cell < 0 ? [] : [{ cell, logCarry: Math.log(club.claimed_m) }];
  });
}

function borrowedWords(own: number, shotsInAll: number): Borrowed {
  if (shotsInAll === 0) return 'typical golfer, not you';
  if (own >= YOURS) return 'yours';
  return own >= PARTLY ? 'partly borrowed' : 'mostly borrowed from neighbours';
}

/** Gaps between neighbours among the full swings of the bag, in order of carry. */
function gapsOf({ cells }: BookCells, model: CarryModel, ordered: Float64Array): BookGap[] {
  const n = cells.length;
  const full = cells.flatMap((cell, i) => (cell.current && cell.swing === 'full' ? [i] : []));
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
