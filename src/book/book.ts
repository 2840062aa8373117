import type { Swing } from '../golf/swing.ts';
import type { Metres } from '../units/metres.ts';

/** How much of a number is the golfer's own evidence, in words. */
export type Borrowed = 'yours' | 'partly borrowed' | 'mostly borrowed from neighbours' | 'typical golfer, not you';

/** What two neighbouring clubs are to each other. */
export type GapVerdict = 'overlap' | "can't tell yet" | 'wide gap' | 'possibly wide' | 'gap';

/**
 * One number of the book: a club as built in one spec period, at one swing length.
 *
 * `stock_m` is the median carry of solid strikes from the reference lie in standard conditions;
 * `lo80_m` to `hi80_m` holds it with 80 % probability. `next_m` are the 19 quantiles p05, p10 … p95
 * of the next ball's carry, mishits included. `shots` counts the golfer's own shots in it, `solid`
 * those the model takes for solid strikes.
 */
export interface BookCell {
  readonly clubId: string;
  readonly specId: string;
  readonly swing: Swing;
  readonly shots: number;
  readonly solid: number;
  readonly stock_m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  readonly next_m: readonly Metres[];
  /** Share of the certainty about this cell that is its own evidence, 0 to 1. */
  readonly own: number;
  readonly borrowed: Borrowed;
  /** When the last shot in it was hit; null when there is none. */
  readonly lastAt: string | null;
  readonly shotIds: readonly string[];
}

/**
 * The distance between two neighbouring full swings in carry order: median and 80 % interval of the
 * difference of their stock carries, and the probability that they are the same distance.
 */
export interface BookGap {
  readonly longer: string;
  readonly shorter: string;
  readonly gap_m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  readonly pSame: number;
  readonly pWide: number;
  readonly verdict: GapVerdict;
}

/** A shot that feeds no number, and why, in words for the golfer. */
export interface LeftOut {
  readonly shotId: string;
  readonly why: string;
}

/** One golfer's computed numbers as of a moment. Cells stand in bag order: longest full club first. */
export interface Book {
  readonly asOf: string;
  readonly cells: readonly BookCell[];
  readonly gaps: readonly BookGap[];
  readonly leftOut: readonly LeftOut[];
}
