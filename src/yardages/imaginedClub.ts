import { choleskyInPlace, solveCholesky } from '../statistics/cholesky.ts';
import type { CarryModel } from './carryModel.ts';
import { carryPrior, TABLE_SCALES } from './carryPrior.ts';
import type { Cell } from './cell.ts';
import type { ObservedInformation } from './observedInformation.ts';
import { averageOverScales } from './scaleAverage.ts';
import { SHARED_COUNT } from './sharedEffects.ts';
import type { StrikeFit } from './strikeFit.ts';

/**
 * Adds cells without shots to a fitted golfer: clubs he might buy, a club at another loft, a swing
 * never tried. They get their carries from the same joint prior, conditioned on the same shots, so
 * that a hybrid in place of a long iron knows both what his irons and what his other hybrids do. The
 * numbers of the cells already there stay as they are.
 *
 * A re-lofted club shares `club` with the real one and has a `period` of its own; a new club shares
 * neither. The cells come after the present ones, in the order given.
 *
 * @throws RangeError when an imagined cell is already there (same period and swing).
 * Source: conditional normal distributions; the average over prior widths as in the fit itself.
 */
export function withImaginedCells(model: CarryModel, imagined: readonly Cell[]): CarryModel {
  if (imagined.length === 0) return model;
  const cells = [...model.cells];
  for (const cell of imagined) {
    if (cells.some(({ period, swing }) => period === cell.period && swing === cell.swing)) {
      throw new RangeError(`period ${cell.period} already has a ${cell.swing} swing`);
    }
    cells.push(cell);
  }
  const had = model.cells.length;
  const { fit, observed } = model.basis;
  const extendedFit = { ...fit, unknowns: likelyUnknowns(cells, had, fit) };
  const extended = widened(observed, had, cells.length);
  const { mean, covariance, ownShare: own, responses } = averageOverScales(cells, extended, extendedFit);
  return { ...model, cells, mean, covariance, own, responses, basis: { fit: extendedFit, observed: extended } };
}

/** The fit with the most probable carries of the new cells: m_n + K_no K_oo⁻¹ (θ_o − m_o). */
function likelyUnknowns(cells: readonly Cell[], had: number, fit: StrikeFit): Float64Array {
  const n = cells.length;
  const prior = carryPrior(cells, TABLE_SCALES);
  const factor = new Float64Array(had * had);
  for (let i = 0; i < had; i++) factor.set(prior.covariance.subarray(i * n, i * n + had), i * had);
  choleskyInPlace(factor, had);
  const weights = Float64Array.from({ length: had }, (_, i) => fit.unknowns[i] - prior.mean[i]);
  solveCholesky(factor, had, weights);
  const unknowns = new Float64Array(n + SHARED_COUNT);
  unknowns.set(fit.unknowns.subarray(0, had));
  unknowns.set(fit.unknowns.subarray(had), n);
  for (let i = had; i < n; i++) {
    unknowns[i] = prior.mean[i];
    for (let j = 0; j < had; j++) unknowns[i] += prior.covariance[i * n + j] * weights[j];
  }
  return unknowns;
}

/** The same information about more cells: nothing is known of the new ones. */
function widened({ sheet, own, solid }: ObservedInformation, had: number, cells: number): ObservedInformation {
  const size = cells + SHARED_COUNT;
  const place = (i: number) => (i < had ? i : i + cells - had);
  const matrix = new Float64Array(size * size);
  const gradient = new Float64Array(size);
  for (let i = 0; i < sheet.size; i++) {
    gradient[place(i)] = sheet.gradient[i];
    for (let j = 0; j < sheet.size; j++) matrix[place(i) * size + place(j)] = sheet.matrix[i * sheet.size + j];
  }
  const information = new Float64Array(cells);
  information.set(own.information);
  const loading = new Float64Array(cells * SHARED_COUNT);
  loading.set(own.loading);
  return { sheet: { ...sheet, size, matrix, gradient }, own: { ...own, information, loading }, solid };
}
