import type { ClubKind } from '../golf/club.ts';
import { clockHours, type Swing } from '../golf/swing.ts';
import { PRIOR } from './priorTable.ts';

/**
 * One number of the book before it has a value: a club as built in one spec period, at one swing
 * length. `club` and `period` only say which cells share a club and a period.
 */
export interface Cell {
  readonly kind: ClubKind;
  readonly loft_deg: number;
  readonly swing: Swing;
  readonly club: number;
  readonly period: number;
}

/** Degrees of loft above the anchor of the curve; negative for long clubs. */
export function loftAboveAnchor(cell: Cell): number {
  return cell.loft_deg - PRIOR.anchorLoft_deg;
}

/**
 * How much of each named partial swing (7:30, 9:00, 10:30) a swing length is: 1 at its own clock
 * position, linear in the hours between neighbours, nothing at full. A shorter swing than 7:30 goes
 * on along the line from 9:00 to 7:30, down to 6:30.
 */
export function swingShares(swing: Swing): [number, number, number] {
  const [first, second, third] = PRIOR.swingHours;
  const hours = Math.min(12, Math.max(6.5, clockHours(swing)));
  if (hours <= second) {
    const towardsFirst = (second - hours) / (second - first);
    return [towardsFirst, 1 - towardsFirst, 0];
  }
  if (hours <= third) {
    const towardsThird = (hours - second) / (third - second);
    return [0, 1 - towardsThird, towardsThird];
  }
  return [0, 0, (12 - hours) / (12 - third)];
}

/** Natural logarithm of the usual share of the full carry that a swing length gives; 0 for full. */
export function logSwingFraction(swing: Swing): number {
  const shares = swingShares(swing);
  return shares.reduce((sum, share, i) => sum + share * Math.log(PRIOR.swingFraction[i]), 0);
}

/** Scatter of a swing length against a full swing, 1 for full. */
export function scatterFactor(swing: Swing): number {
  const shares = swingShares(swing);
  return 1 + shares.reduce((sum, share, i) => sum + share * (PRIOR.partialScatter[i] - 1), 0);
}
