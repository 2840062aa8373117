import { carryPrior, TABLE_SCALES } from './carryPrior.ts';
import type { Cell } from './cell.ts';
import { type Claim, cellTraits, packEvidence, type ShotEvidence } from './evidence.ts';
import { type ObservedInformation, observedInformation } from './observedInformation.ts';
import { averageOverScales, type ResponsePosterior } from './scaleAverage.ts';
import { fitStrikes, type StrikeFit } from './strikeFit.ts';

/** What the shots of one golfer say about every cell, all together. */
export interface CarryModel {
  readonly cells: readonly Cell[];
  /** Posterior mean of θ = ln(stock carry in m) of each cell, before ordering. */
  readonly mean: Float64Array;
  /** Joint posterior covariance of θ, row-major. */
  readonly covariance: Float64Array;
  /** The golfer's own responses to wind and air. */
  readonly responses: ResponsePosterior;
  /** Share of each cell's certainty that is its own shots, 0 to 1. */
  readonly own: Float64Array;
  /** π at the anchor loft, and σ² of a solid full swing. */
  readonly mishits: number;
  readonly scatter2: number;
  /** Share of solid strikes that are loose: twice the scatter. */
  readonly loose: number;
  /** Probability that each shot was struck solid, in the order of the shots given. */
  readonly solid: Float64Array;
  /** What the shots say by themselves, to which cells without shots can be added later. */
  readonly basis: ModelBasis;
}

/** The most probable fit, and the information that the shots hold on all unknowns there. */
export interface ModelBasis {
  readonly fit: StrikeFit;
  readonly observed: ObservedInformation;
}

/**
 * Fits one golfer's carries: all cells and all that his shots share as one joint normal
 * distribution, each shot read through the mixture of strikes.
 *
 * Steps: the most probable fit ({@link fitStrikes}), the information observed there
 * ({@link observedInformation}), the average over prior widths ({@link averageOverScales}). Shots are
 * expected standardised (reference lie's offset taken out, standard air, no wind). With no shots at
 * all the answer is the prior.
 *
 * @throws RangeError when a shot names a cell that is not there or bounds nothing.
 */
export function fitCarryModel(
  cells: readonly Cell[],
  shots: readonly ShotEvidence[],
  claims: readonly Claim[] = [],
): CarryModel {
  const evidence = packEvidence(shots);
  for (const cell of evidence.cell) {
    if (cell < 0 || cell >= cells.length) throw new RangeError(`no cell ${cell} among ${cells.length}`);
  }
  const traits = cellTraits(cells);
  const fit = fitStrikes(evidence, traits, claims, carryPrior(cells, TABLE_SCALES), TABLE_SCALES);
  const observed = observedInformation(evidence, traits, claims, fit);
  const { mean, covariance, ownShare: own, responses } = averageOverScales(cells, observed, fit);
  return {
    cells,
    mean,
    covariance,
    responses,
    own,
    mishits: fit.mishits,
    scatter2: fit.scatter2,
    loose: fit.loose,
    solid: observed.solid,
    basis: { fit, observed },
  };
}

/**
 * The most probable θ of every cell, without intervals: a third of the work, for bringing shots to
 * standard conditions before the fit that counts.
 */
export function likelyCarries(
  cells: readonly Cell[],
  shots: readonly ShotEvidence[],
  claims: readonly Claim[],
): Float64Array {
  const evidence = packEvidence(shots);
  const prior = carryPrior(cells, TABLE_SCALES);
  return fitStrikes(evidence, cellTraits(cells), claims, prior, TABLE_SCALES).unknowns.slice(0, cells.length);
}
