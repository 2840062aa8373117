import {
  choleskyInPlace,
  invertFromCholesky,
  logDeterminantFromCholesky,
  solveCholesky,
} from '../statistics/cholesky.ts';
import { type CarryPrior, carryPrior, type PriorScales } from './carryPrior.ts';
import type { Cell } from './cell.ts';
import type { ObservedInformation, OwnEvidence } from './observedInformation.ts';
import { PRIOR } from './priorTable.ts';
import { RESPONSES, SHARED_COUNT, sharedIndex } from './sharedEffects.ts';
import { priorMeans, priorPrecision, type StrikeFit } from './strikeFit.ts';

/** Posterior of the cells: means of θ, row-major covariance, each cell's share of own evidence; and of the responses. */
export interface CellPosterior {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  readonly ownShare: Float64Array;
  readonly responses: ResponsePosterior;
}

/**
 * What is known of the golfer's own responses to wind and air, in the order of {@link RESPONSES}: how far
 * each lies from the flight model's, and how they hang together with each other and with the carries.
 */
export interface ResponsePosterior {
  readonly mean: Float64Array;
  /** Row-major, responses × responses. */
  readonly covariance: Float64Array;
  /** Row-major, cells × responses: covariance with θ. */
  readonly withCarries: Float64Array;
}

/** Widths of the prior's parts that are tried against each golfer's own shots. */
const CLUB_SCALES = [0.5, 0.8, 1.2, 2];
const SWING_SCALES = [0.5, 0.8, 1.7];
const WALK_SCALES = [0.4, 1.8];

/** What drift a golfer may have had since his last knot, as a share of the walk over 210 days. */
const DRIFT_FLOOR = 0.15;

/** Every combination of the widths tried. */
export const SCALE_GRID: readonly PriorScales[] = CLUB_SCALES.flatMap((club) =>
  SWING_SCALES.flatMap((swing) => WALK_SCALES.map((walk) => ({ club, swing, walk }))),
);

/** Posterior under one set of widths; mean and covariance of the cells first, then the responses. */
interface Candidate {
  readonly logEvidence: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  readonly ownShare: Float64Array;
}

/**
 * Share of a cell's certainty that its own shots give: 1 − C_ii / C₋, with C₋ the variance that the
 * cell would have without them. Taken as one piece of evidence w on a·z, without them
 *
 *   C₋ = C_ii + w (C a)_i² / (1 − w aᵀ C a)      (Sherman and Morrison)
 *
 * @param inverse posterior covariance C of all unknowns, row-major.
 */
function ownShareOf(cell: number, own: OwnEvidence, inverse: Float64Array, size: number): number {
  const w = own.information[cell];
  if (w === 0) return 0;
  const cells = size - SHARED_COUNT;
  const a = new Float64Array(size);
  a[cell] = 1;
  for (let s = 0; s < SHARED_COUNT; s++) a[cells + s] = own.loading[cell * SHARED_COUNT + s];
  let spread = 0;
  let toCell = 0;
  for (let i = 0; i < size; i++) {
    if (a[i] === 0) continue;
    toCell += inverse[cell * size + i] * a[i];
    for (let j = 0; j < size; j++) spread += a[i] * inverse[i * size + j] * a[j];
  }
  const variance = inverse[cell * size + cell];
  const without = variance + (w * toCell * toCell) / Math.max(1e-3, 1 - w * spread);
  return 1 - variance / without;
}

/**
 * The posterior under one set of widths, from the quadratic form that the shots' likelihood takes at
 * the fit z*: ℓ(z) ≈ ℓ* + gᵀ(z−z*) − ½ (z−z*)ᵀ O (z−z*). With prior N(m, P⁻¹):
 *
 *   (P + O) Δ = g − P (z* − m),   C = (P + O)⁻¹,
 *   ln evidence = ½ ln|P| − ½ ln|P + O| + gᵀΔ − ½ ΔᵀOΔ − ½ (z*+Δ−m)ᵀ P (z*+Δ−m)
 *
 * No mean moves more than one of its posterior standard deviations away from the fit: beyond it the
 * quadratic form says nothing.
 */
function posteriorUnder(
  prior: CarryPrior,
  scales: PriorScales,
  { sheet, own }: ObservedInformation,
  fit: StrikeFit,
): Candidate {
  const { size, matrix, gradient } = sheet;
  const cells = size - SHARED_COUNT;
  const precision = priorPrecision(prior, scales);
  const means = priorMeans(prior);
  const factor = matrix.map((entry, e) => entry + precision[e]);
  choleskyInPlace(factor, size);
  const step = gradient.slice();
  const priorFactor = precision.slice();
  choleskyInPlace(priorFactor, size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) step[i] -= precision[i * size + j] * (fit.unknowns[j] - means[j]);
  }
  solveCholesky(factor, size, step);
  let quadratic = 0;
  let linear = 0;
  for (let i = 0; i < size; i++) {
    linear += gradient[i] * step[i];
    const toPrior = fit.unknowns[i] + step[i] - means[i];
    for (let j = 0; j < size; j++) {
      quadratic += matrix[i * size + j] * step[i] * step[j];
      quadratic += precision[i * size + j] * toPrior * (fit.unknowns[j] + step[j] - means[j]);
    }
  }
  const logEvidence =
    0.5 * logDeterminantFromCholesky(priorFactor, size) -
    0.5 * logDeterminantFromCholesky(factor, size) +
    linear -
    0.5 * quadratic;
  const inverse = invertFromCholesky(factor, size);
  const kept = [...Array(cells).keys(), ...RESPONSES.map((effect) => cells + sharedIndex(effect))];
  const mean = new Float64Array(kept.length);
  const covariance = new Float64Array(kept.length ** 2);
  const floor = (DRIFT_FLOOR * PRIOR.driftPer210Days * scales.walk) ** 2;
  kept.forEach((from, i) => {
    const deviation = Math.sqrt(inverse[from * size + from]);
    mean[i] = fit.unknowns[from] + Math.max(-deviation, Math.min(deviation, step[from]));
    for (let j = 0; j < kept.length; j++) covariance[i * kept.length + j] = inverse[from * size + kept[j]];
    if (i < cells) covariance[i * kept.length + i] += floor;
  });
  const ownShare = Float64Array.from({ length: cells }, (_, i) => ownShareOf(i, own, inverse, size));
  return { logEvidence, mean, covariance, ownShare };
}

/**
 * Averages the posteriors over the grid of prior widths, each weighted by how well it explains the
 * golfer's shots; mean and covariance of the mixture are kept. A golfer whose clubs lie off the curve
 * thus gets a wider club prior than one whose clubs lie on it, without any width being chosen.
 *
 * Source: Hoeting, Madigan, Raftery & Volinsky 1999, Statistical Science 14 (model averaging).
 */
export function averageOverScales(
  cells: readonly Cell[],
  observed: ObservedInformation,
  fit: StrikeFit,
): CellPosterior {
  const candidates = SCALE_GRID.map((scales) => posteriorUnder(carryPrior(cells, scales), scales, observed, fit));
  const best = Math.max(...candidates.map((candidate) => candidate.logEvidence));
  const weights = candidates.map((candidate) => Math.exp(candidate.logEvidence - best));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const n = cells.length;
  const size = n + RESPONSES.length;
  const mean = new Float64Array(size);
  const covariance = new Float64Array(size * size);
  const ownShare = new Float64Array(n);
  candidates.forEach((candidate, c) => {
    const weight = weights[c] / total;
    for (let i = 0; i < size; i++) mean[i] += weight * candidate.mean[i];
    for (let i = 0; i < n; i++) ownShare[i] += weight * candidate.ownShare[i];
  });
  candidates.forEach((candidate, c) => {
    const weight = weights[c] / total;
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        covariance[i * size + j] +=
          weight * (candidate.covariance[i * size + j] + (candidate.mean[i] - mean[i]) * (candidate.mean[j] - mean[j]));
      }
    }
  });
  const block = (rows: readonly [number, number], columns: readonly [number, number]) =>
    Float64Array.from({ length: (rows[1] - rows[0]) * (columns[1] - columns[0]) }, (_, e) => {
      const width = columns[1] - columns[0];
      return covariance[(rows[0] + Math.floor(e / width)) * size + columns[0] + (e % width)];
    });
  return {
    mean: mean.slice(0, n),
    covariance: block([0, n], [0, n]),
    ownShare,
    responses: {
      mean: mean.slice(n),
      covariance: block([n, size], [n, size]),
      withCarries: block([0, n], [n, size]),
    },
  };
}
