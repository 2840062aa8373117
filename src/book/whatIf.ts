import type { Logbook } from '../golf/logbook.ts';
import type { Swing } from '../golf/swing.ts';
import { type Metres, metres } from '../units/metres.ts';
import { coverageDifference } from '../yardages/coverage.ts';
import { DEVIATE_80, type Gap, gapBetween } from '../yardages/gaps.ts';
import { type BagDifference, bagGround, cellsOfClubs, differenceOf } from './bagChoice.ts';
import type { FittedBook } from './fitBook.ts';
import type { ImaginedClub } from './imaginedBook.ts';

/** What one imagined club would be in the bag as it is. */
export interface WhatIf {
  readonly clubId: string;
  readonly swings: readonly { swing: Swing; stock_m: Metres; lo80_m: Metres; hi80_m: Metres }[];
  /** The bag with it (in the place of the club it stands in for) against the bag as it is. */
  readonly difference: BagDifference;
  /** The gaps to its neighbours among the full swings of that bag; null: it is the longest, the shortest. */
  readonly fromLonger: { readonly clubId: string; readonly gap: Gap } | null;
  readonly toShorter: { readonly clubId: string; readonly gap: Gap } | null;
}

/**
 * Tries imagined clubs one by one in the bag as it is: what they would carry, with the 80 % interval,
 * the gaps they would leave, and whether the bag would leave less, in numbers and in words that say
 * "no real difference" when it is none.
 */
export function whatIf(logbook: Logbook, book: FittedBook, imagined: readonly ImaginedClub[]): WhatIf[] {
  const { fitted, table, candidates, present } = bagGround(logbook, book, { imagined, locked: [], tees: null });
  const { cells, theta, model } = fitted;
  const n = cells.length;
  const now = cellsOfClubs(candidates, present);
  return imagined.map((club): WhatIf => {
    const ids = [...present.filter((id) => id !== club.insteadOf), club.id];
    const then = cellsOfClubs(candidates, ids);
    const own = cells.flatMap((cell, i) => (cell.clubId === club.id ? [i] : []));
    const full = own[0];
    const others = then.filter((i) => cells[i].swing === 'full' && i !== full);
    const longer = others.filter((i) => theta[i] >= theta[full]).sort((a, b) => theta[a] - theta[b])[0];
    const shorter = others.filter((i) => theta[i] < theta[full]).sort((a, b) => theta[b] - theta[a])[0];
    const gap = (a: number, b: number) =>
      gapBetween(
        Math.exp(theta[a]),
        Math.exp(theta[b]),
        model.covariance[a * n + a],
        model.covariance[b * n + b],
        model.covariance[a * n + b],
      );
    return {
      clubId: club.id,
      swings: own.map((i) => {
        const half = DEVIATE_80 * Math.sqrt(model.covariance[i * n + i]);
        const at = (by: number) => metres(Math.exp(theta[i] + by));
        return { swing: cells[i].swing, stock_m: at(0), lo80_m: at(-half), hi80_m: at(half) };
      }),
      difference: differenceOf(coverageDifference(table, model.covariance, now, then)),
      fromLonger: longer === undefined ? null : { clubId: cells[longer].clubId, gap: gap(longer, full) },
      toShorter: shorter === undefined ? null : { clubId: cells[shorter].clubId, gap: gap(full, shorter) },
    };
  });
}
