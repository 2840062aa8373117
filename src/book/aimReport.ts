import { expectedRoll } from '../flight/roll.ts';
import type { Ground } from '../golf/conditions.ts';
import type { Lie } from '../golf/lie.ts';
import type { Swing } from '../golf/swing.ts';
import { degrees } from '../units/degrees.ts';
import { metres } from '../units/metres.ts';
import { type Cell, scatterFactor } from '../yardages/cell.ts';
import { type Approach, type CutGreen, type FlagLimit, flagUpTo } from '../yardages/flagUpTo.ts';
import { type CostlyLie, lieCosts, lieForecast } from '../yardages/lieForecast.ts';
import { type GreenOdds, greenOdds, type RollOf } from '../yardages/odds.ts';
import { type Spread, type SpreadDot, type SpreadEllipse, spreadEllipse, spreads } from '../yardages/spread.ts';
import { surestFirst, type TeeOdds, type TeeTask } from '../yardages/teeOdds.ts';
import type { CountedShot } from './countedShots.ts';
import type { FittedBook } from './fitBook.ts';

/** Which lies of a logged shot count as rough or sand. */
const LIES: Readonly<Record<CostlyLie, readonly Lie[]>> = {
  'light rough': ['light rough'],
  'heavy rough': ['heavy rough'],
  sand: ['fairway bunker', 'greenside bunker'],
};
const COSTLY: readonly CostlyLie[] = ['light rough', 'heavy rough', 'sand'];

/** A green of 30 by 25 yd with the flag 5 yd on and in the middle, m: what the report reckons with. Own choice. */
export const USUAL_GREEN: CutGreen = { deep_m: 27.432, wide_m: 22.86, flagFromFront_m: 4.572, flagFromLeft_m: 11.43 };
/** Odds of missing the green that the report takes for the golfer's: one in three. Own choice. */
export const USUAL_RISK = 1 / 3;

/** The spread of every cell of a book, in the order of its cells, and the balls it is drawn from. */
export interface BookSpreads {
  readonly spreads: readonly Spread[];
  /** For each cell where its balls pitched about the aim, as shares of the carry. */
  readonly dots: readonly (readonly SpreadDot[])[];
}

/**
 * The spread of each club × swing from the shots whose carry and line are both known, carries in
 * standard conditions from the reference lie against the cell's own. `offline_m` is about the aim, so
 * that a golfer who aims left of a flag and hits it is not said to push.
 */
export function bookSpreads({ cells, counted, evidence, theta }: FittedBook): BookSpreads {
  const factors = cells.map((cell) => scatterFactor(cell.swing));
  const dots = evidence.flatMap(({ cell, logLeast, logMost }, k): SpreadDot[] => {
    const { carry, offline_m } = counted[k].shot;
    if (!carry || offline_m === null || logLeast !== logMost) return [];
    return [{ group: cell, right: offline_m / carry.m, long: logLeast - theta[cell], factor: factors[cell] }];
  });
  return { spreads: spreads(dots, factors), dots: cells.map((_, i) => dots.filter(({ group }) => group === i)) };
}

/** How a cell's ball runs on this ground. @throws RangeError for a putter. */
export function rollOn({ kind, loft_deg }: Pick<Cell, 'kind' | 'loft_deg'>, ground: Ground): RollOf {
  if (kind === 'putter') throw new RangeError('a putter has no carry to run on from');
  const loft = degrees(loft_deg);
  return (carry_m) => expectedRoll(kind, loft, metres(Math.max(0, carry_m)), ground);
}

/** The odds of one cell at a green in front of it, from one lie. */
export interface LieOdds extends GreenOdds {
  readonly lie: 'fairway' | CostlyLie;
  /** Own shots of any club from that lie. */
  readonly shots: number;
}

/** One club × swing as it may be aimed. */
export interface AimRow {
  readonly clubId: string;
  readonly swing: Swing;
  readonly stock_m: number;
  readonly shots: number;
  readonly ellipse: SpreadEllipse;
  /** Own balls of this cell and of all clubs that the ellipse rests on. */
  readonly dots: number;
  readonly pooled: number;
  /** At the middle of the usual green, from the distance at which carry and roll end there. */
  readonly odds: readonly LieOdds[];
}

/** Where each club may aim. */
export interface AimSheet {
  readonly green: CutGreen;
  readonly risk: number;
  readonly rows: readonly AimRow[];
  readonly flag: FlagLimit & { readonly clubId: string | null; readonly swing: Swing | null };
}

/**
 * Where each club × swing of the bag may aim: its 80 % ellipse, its odds at the middle of a green from
 * fairway, rough and sand, and up to which club the flag is on.
 */
export function aimReport(
  book: FittedBook,
  green: CutGreen = USUAL_GREEN,
  risk: number = USUAL_RISK,
  ground: Ground = 'normal',
): AimSheet {
  const { cells, shotsOf } = book;
  const seen = bookSpreads(book);
  const costs = lieCosts(book.model);
  const inBag = cells.flatMap((cell, i) => (cell.current && cell.played && cell.kind !== 'driver' ? [i] : []));
  const approaches = inBag.map((cell) => approachOf(book, seen, cell, ground));
  const shotsFrom = COSTLY.map((lie) => countFrom(book.counted, LIES[lie]));
  const rows = approaches.map(({ cell, stock_m, forecast, spread, rollOf }): AimRow => {
    const front_m = Math.max(1, stock_m + rollOf(stock_m).roll_m - green.deep_m / 2);
    const sides = { left_m: -green.wide_m / 2, right_m: green.wide_m / 2 };
    const before = { front_m, back_m: front_m + green.deep_m, ...sides };
    const oddsFrom = (lie: LieOdds['lie'], shots: number, from: typeof forecast): LieOdds => ({
      lie,
      shots,
      ...greenOdds(from, spread, rollOf, before),
    });
    return {
      clubId: cells[cell].clubId,
      swing: cells[cell].swing,
      stock_m,
      shots: shotsOf[cell].length,
      ellipse: spreadEllipse(spread, stock_m),
      dots: spread.dots,
      pooled: spread.pooled,
      odds: [
        oddsFrom('fairway', countFrom(book.counted, ['fairway', 'tee']), forecast),
        ...COSTLY.map((lie, k) => oddsFrom(lie, shotsFrom[k], lieForecast(forecast, costs[lie]))),
      ],
    };
  });
  const limit = flagUpTo(green, approaches, risk);
  const last = limit.upTo === null ? null : cells[limit.upTo];
  return { green, risk, rows, flag: { ...limit, clubId: last?.clubId ?? null, swing: last?.swing ?? null } };
}

function approachOf(book: FittedBook, seen: BookSpreads, cell: number, ground: Ground): Approach {
  return {
    cell,
    stock_m: Math.exp(book.theta[cell]),
    forecast: book.forecasts[cell],
    spread: seen.spreads[cell],
    rollOf: rollOn(book.cells[cell], ground),
  };
}

const countFrom = (counted: readonly CountedShot[], lies: readonly Lie[]) =>
  counted.filter(({ shot }) => shot.lie !== null && lies.includes(shot.lie)).length;

/** The odds of one club from the tee, with the shots behind them. */
export interface TeeRow {
  readonly clubId: string;
  readonly swing: Swing;
  readonly shots: number;
  readonly dots: number;
  readonly odds: TeeOdds;
}

/** The full swings of the bag for a tee shot or lay-up on some ground, the surest first. */
export function teeReport(book: FittedBook, task: TeeTask, ground: Ground): TeeRow[] {
  const { cells } = book;
  const seen = bookSpreads(book);
  const full = cells.flatMap((cell, i) => (cell.current && cell.played && cell.swing === 'full' ? [i] : []));
  const clubs = full.map((cell) => approachOf(book, seen, cell, ground));
  return surestFirst(clubs, task).map(({ cell, odds }) => ({
    clubId: cells[cell].clubId,
    swing: cells[cell].swing,
    shots: book.shotsOf[cell].length,
    dots: seen.spreads[cell].dots,
    odds,
  }));
}
