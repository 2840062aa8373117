import type { Logbook } from '../golf/logbook.ts';
import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import type { CarryModel } from '../yardages/carryModel.ts';
import type { ShotEvidence } from '../yardages/evidence.ts';
import { nextBall } from '../yardages/nextBall.ts';
import { orderedCarries } from '../yardages/ordering.ts';
import type { LeftOut } from './book.ts';
import type { NamedCell } from './bookCells.ts';
import { type CountedShot, countedShots } from './countedShots.ts';
import { forecastMishits } from './forecastMishits.ts';
import { standardShots } from './standardShots.ts';

/**
 * One golfer's book before it is written out: the joint posterior that gaps, coverage, odds and the
 * best bag are worked out from.
 */
export interface FittedBook {
  readonly asOf: string;
  readonly cells: readonly NamedCell[];
  /** The shots that count, in order of their ids. */
  readonly counted: readonly CountedShot[];
  /** For each cell the places of its shots in `counted`. */
  readonly shotsOf: readonly (readonly number[])[];
  /** The same shots in standard conditions from the reference lie. */
  readonly evidence: readonly ShotEvidence[];
  /** Joint posterior of θ = ln(stock carry in m); its means before ordering. */
  readonly model: CarryModel;
  /** θ of each cell in the order that lofts and swings demand: what is shown. */
  readonly theta: Float64Array;
  /** ln(carry in m) of the next ball of each cell, mishits included. */
  readonly forecasts: readonly GaussianMixture[];
  /** Share of mishits expected of the next ball at the anchor loft. */
  readonly mishits: number;
  readonly leftOut: readonly LeftOut[];
}

/**
 * Reads a logbook as of a moment into its joint posterior.
 *
 * @param asOf instant (ISO 8601); later shots are left out.
 * @throws RangeError when `asOf` is no instant.
 */
export function fitBook(logbook: Logbook, asOf: string): FittedBook {
  if (Number.isNaN(Date.parse(asOf))) throw new RangeError(`${asOf} is no instant`);
  const { counted, leftOut } = countedShots(logbook, asOf);
  const standard = standardShots(logbook, counted, asOf);
  const { cells, model } = standard;
  const n = cells.length;
  const variances = cells.map((_, i) => model.covariance[i * n + i]);
  const theta = orderedCarries(cells, model.mean, variances);
  const mishits = forecastMishits(logbook, standard.counted, model.mishits, asOf);
  const shotsOf = cells.map(() => [] as number[]);
  standard.cellOf.forEach((cell, k) => {
    shotsOf[cell].push(k);
  });
  return {
    asOf,
    cells,
    counted: standard.counted,
    shotsOf,
    evidence: standard.evidence,
    model,
    theta,
    forecasts: cells.map((cell, i) => nextBall(cell, theta[i], variances[i], mishits, model.scatter2, model.loose)),
    mishits,
    leftOut: [...leftOut, ...standard.leftOut].sort((a, b) => (a.shotId < b.shotId ? -1 : 1)),
  };
}
