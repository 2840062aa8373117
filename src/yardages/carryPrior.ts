import { type Cell, loftAboveAnchor, logSwingFraction, swingShares } from './cell.ts';
import { PRIOR } from './priorTable.ts';

/** How much wider or narrower than the table a part of the prior is taken. */
export interface PriorScales {
  readonly club: number;
  readonly swing: number;
  readonly walk: number;
}

export const TABLE_SCALES: PriorScales = { club: 1, swing: 1, walk: 1 };

/** The carries of all cells before any shot: means and row-major covariance of θ = ln(stock carry in m). */
export interface CarryPrior {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/**
 * What is known of every cell before the golfer has hit a ball: a joint normal distribution of
 * θ_i = ln(stock carry in metres). With x = loft − 34°, g = ln swing fraction,
 *
 *   m_i  = ln 123.444 − .0175 x − .0004 x² + offset(kind) + g
 *   K_ij = level² + slope² x_i x_j + bend² x_i² x_j² + [same kind] kind² + [same club] club²
 *        + [same period] period² + softness² g_i g_j + Σ_s swing_s² φ_s(i) φ_s(j) + [i = j] cell²
 *
 * so that empty cells, clubs never hit and imagined clubs are cells like any other. Club deviations
 * may be given their own widths (`clubWidth`, one factor per club) for clubs that are unlike the rest.
 *
 * Source: {@link PRIOR}, tuned by simulation.
 */
export function carryPrior(cells: readonly Cell[], scales: PriorScales, clubWidth?: Float64Array): CarryPrior {
  const n = cells.length;
  const mean = new Float64Array(n);
  const covariance = new Float64Array(n * n);
  const x = cells.map(loftAboveAnchor);
  const g = cells.map((cell) => logSwingFraction(cell.swing));
  const shares = cells.map((cell) => swingShares(cell.swing));
  const swingWidth = PRIOR.swing.map((width) => width * scales.swing);
  const softness = PRIOR.softness * scales.swing;
  for (let i = 0; i < n; i++) {
    const a = cells[i];
    mean[i] =
      Math.log(PRIOR.anchorCarry_m) +
      PRIOR.slopePerDegree * x[i] +
      PRIOR.bendPerDegree2 * x[i] ** 2 +
      PRIOR.kindOffset[a.kind] +
      g[i];
    for (let j = 0; j <= i; j++) {
      const b = cells[j];
      let k = PRIOR.level ** 2 + PRIOR.slope ** 2 * x[i] * x[j] + PRIOR.bend ** 2 * x[i] ** 2 * x[j] ** 2;
      if (a.kind === b.kind) k += PRIOR.kind[a.kind] ** 2;
      if (a.club === b.club) k += (PRIOR.club * scales.club * (clubWidth ? clubWidth[a.club] : 1)) ** 2;
      if (a.period === b.period) k += PRIOR.period ** 2;
      k += softness ** 2 * g[i] * g[j];
      for (let s = 0; s < 3; s++) k += swingWidth[s] ** 2 * shares[i][s] * shares[j][s];
      if (i === j) k += (a.swing === 'full' ? PRIOR.fullCell : PRIOR.partialCell * scales.swing) ** 2;
      covariance[i * n + j] = k;
      covariance[j * n + i] = k;
    }
  }
  return { mean, covariance };
}
