import { specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import { clockHours, type Swing } from '../golf/swing.ts';
import { type BagWarning, bagWarnings } from '../yardages/bagWarnings.ts';
import { ballInformation } from '../yardages/ballsToCome.ts';
import { coverage, coverageDeviation } from '../yardages/coverage.ts';
import { type Settling, shotsToSettle } from '../yardages/gapSettling.ts';
import { type GapThresholds, gapBetween, USUAL_THRESHOLDS } from '../yardages/gaps.ts';
import { type SpecChange, specChange } from '../yardages/specChange.ts';
import { approachesFaced } from './approachesFaced.ts';
import { type BagAnswer, bagChoice, bagGround, cellsOfClubs, finished } from './bagChoice.ts';
import type { BookGap } from './book.ts';
import type { FittedBook } from './fitBook.ts';
import { type SwingOrClub, swingOrClub } from './swingOrClub.ts';

/** What a new build of one club did at one swing length. */
export interface ClubChange extends SpecChange {
  readonly clubId: string;
  readonly swing: Swing;
  readonly beforeSpecId: string;
  readonly afterSpecId: string;
  /** First day of the new build. */
  readonly from: string;
  readonly loftChange_deg: number;
  readonly before_m: number;
  readonly after_m: number;
  readonly shotsBefore: number;
  readonly shotsAfter: number;
}

/** A gap with the lofts beside it and how many shots would settle it. */
export interface BagGap extends Omit<BookGap, 'gap_m' | 'lo80_m' | 'hi80_m'> {
  readonly loftGap_deg: number;
  readonly gap_m: number;
  readonly lo80_m: number;
  readonly hi80_m: number;
  readonly shotsLonger: number;
  readonly shotsShorter: number;
  readonly settling: Settling;
}

/** How the bag as it is covers the distances faced from some tees. */
export interface BagCoverage {
  readonly tees: string | null;
  readonly rounds: number;
  /** Own approaches that the distances rest on; `ownShare` against the wide default. */
  readonly approaches: number;
  readonly ownShare: number;
  /** Expected leave with its posterior standard deviation, and expected distance to the nearest stock carry, m. */
  readonly leave_m: number;
  readonly deviation_m: number;
  readonly step_m: number;
  readonly curve: readonly {
    readonly distance_m: number;
    /** Share of approaches from within half a step of here. */
    readonly weight: number;
    readonly clubId: string;
    readonly swing: Swing;
    readonly leave_m: number;
  }[];
}

/** The bag as the fitter reads it. */
export interface BagSheet {
  readonly warnings: readonly BagWarning[];
  readonly changes: readonly ClubChange[];
  readonly gaps: readonly BagGap[];
  readonly coverage: readonly BagCoverage[];
  readonly swingOrClub: SwingOrClub;
  /** The best fourteen out of the owned clubs; null when there is none to choose from. */
  readonly best: BagAnswer | null;
}

/**
 * Everything about a bag from one fitted book: what is odd in it, what changes of build did, its gaps
 * and what would settle them, how it covers the distances faced, and the best fourteen of those owned.
 *
 * @param thresholds when clubs are the same distance or too far apart.
 */
export function bagReport(logbook: Logbook, book: FittedBook, thresholds: GapThresholds = USUAL_THRESHOLDS): BagSheet {
  const search = { imagined: [], locked: [], tees: null };
  const ground = book.cells.some(({ current, played }) => current && played);
  return {
    warnings: warningsOf(logbook, book),
    changes: changesOf(logbook, book),
    gaps: bagGaps(book, thresholds),
    coverage: ground ? bagCoverage(logbook, book) : [],
    swingOrClub: swingOrClub(logbook, book),
    best: ground ? finished(bagChoice(logbook, book, search)) : null,
  };
}

function warningsOf(logbook: Logbook, { asOf, cells, model }: FittedBook): BagWarning[] {
  const bag = logbook.clubs.filter(({ inBag }) => inBag);
  const entries = bag.map((club) => {
    const cell = cells.findIndex(({ clubId, current, swing }) => clubId === club.id && current && swing === 'full');
    const { loft_deg } = specOn(club, asOf);
    return { clubId: club.id, kind: club.kind, loft_deg, cell: cell < 0 ? null : cell };
  });
  return bagWarnings(entries, model.mean, model.covariance);
}

/** Every swing that a club was hit with both before and after a change of build, the latest change first. */
function changesOf(logbook: Logbook, { cells, model, shotsOf }: FittedBook): ClubChange[] {
  const n = cells.length;
  const found = logbook.clubs.flatMap((club) => {
    const periods = club.specPeriods.toSorted((a, b) => (a.from < b.from ? -1 : 1));
    return periods.slice(1).flatMap((after, k) => {
      const before = periods[k];
      const own = (specId: string) =>
        cells.flatMap((cell, i) => (cell.clubId === club.id && cell.specId === specId ? [i] : []));
      return own(before.id).flatMap((b): ClubChange[] => {
        const a = own(after.id).find((i) => cells[i].swing === cells[b].swing);
        if (a === undefined || shotsOf[b].length === 0) return [];
        const before_m = Math.exp(model.mean[b]);
        const after_m = Math.exp(model.mean[a]);
        const { covariance } = model;
        return [
          {
            clubId: club.id,
            swing: cells[b].swing,
            beforeSpecId: before.id,
            afterSpecId: after.id,
            from: after.from,
            loftChange_deg: after.loft_deg - before.loft_deg,
            before_m,
            after_m,
            shotsBefore: shotsOf[b].length,
            shotsAfter: shotsOf[a].length,
            ...specChange(before_m, after_m, covariance[b * n + b], covariance[a * n + a], covariance[a * n + b]),
          },
        ];
      });
    });
  });
  return found.sort((a, b) => (a.from < b.from ? 1 : a.from > b.from ? -1 : clockHours(b.swing) - clockHours(a.swing)));
}

/** Gaps between neighbours among the full swings of the bag, in order of carry, with what would settle them. */
export function bagGaps(book: FittedBook, thresholds: GapThresholds): BagGap[] {
  const { cells, theta, model, shotsOf } = book;
  const n = cells.length;
  const full = cells.flatMap((cell, i) => (cell.current && cell.played && cell.swing === 'full' ? [i] : []));
  full.sort((a, b) => theta[b] - theta[a] || cells[a].loft_deg - cells[b].loft_deg || a - b);
  const ball = (i: number) => ballInformation(cells[i], theta[i], model.scatter2, book.mishits);
  return full.slice(1).map((b, rank): BagGap => {
    const a = full[rank];
    const pair = {
      longer_m: Math.exp(theta[a]),
      shorter_m: Math.exp(theta[b]),
      caa: model.covariance[a * n + a],
      cab: model.covariance[a * n + b],
      cbb: model.covariance[b * n + b],
      longerBall: ball(a),
      shorterBall: ball(b),
    };
    return {
      longer: cells[a].clubId,
      shorter: cells[b].clubId,
      loftGap_deg: cells[b].loft_deg - cells[a].loft_deg,
      ...gapBetween(pair.longer_m, pair.shorter_m, pair.caa, pair.cbb, pair.cab, thresholds),
      shotsLonger: shotsOf[a].length,
      shotsShorter: shotsOf[b].length,
      settling: shotsToSettle(pair, thresholds),
    };
  });
}

/** How the bag as it is covers the distances faced: all rounds first, then by tees. Drivers are tee clubs and left out. */
export function bagCoverage(logbook: Logbook, book: FittedBook): BagCoverage[] {
  return approachesFaced(logbook, book).map(({ tees, rounds, approaches }): BagCoverage => {
    const { table, candidates, present, fitted } = bagGround(logbook, book, { imagined: [], locked: [], tees });
    const inBag = cellsOfClubs(candidates, present);
    const offTurf = inBag.filter((i) => fitted.cells[i].kind !== 'driver');
    const covered = coverage(table, offTurf.length > 0 ? offTurf : inBag);
    return {
      tees,
      rounds,
      approaches: approaches.own,
      ownShare: approaches.ownShare,
      leave_m: covered.leave_m,
      deviation_m: coverageDeviation(table, fitted.model.covariance, covered),
      step_m: covered.step_m,
      curve: Array.from(approaches.distance_m, (distance_m, d) => ({
        distance_m,
        weight: approaches.weight[d],
        clubId: fitted.cells[covered.best[d]].clubId,
        swing: fitted.cells[covered.best[d]].swing,
        leave_m: covered.curve_m[d],
      })),
    };
  });
}
