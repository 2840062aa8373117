import {
  choleskyInPlace,
  invertFromCholesky,
  logDeterminantFromCholesky,
  solveCholesky,
} from '../../src/statistics/cholesky.ts';
import type { CarryPrior, PriorScales } from '../../src/yardages/carryPrior.ts';
import type { ShotEvidence } from '../../src/yardages/evidence.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { SHARED_COUNT, sharedVariances } from '../../src/yardages/sharedEffects.ts';

/** One normal observation y of a·unknowns with its variance. */
export interface Observation {
  readonly loadings: Float64Array;
  readonly y: number;
  readonly variance: number;
}

/** Prior mean and covariance of cells, shared effects and days, side by side. */
export interface DensePrior {
  readonly size: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

export function densePrior(prior: CarryPrior, scales: PriorScales, days: number): DensePrior {
  const n = prior.mean.length;
  const size = n + SHARED_COUNT + days;
  const mean = new Float64Array(size);
  mean.set(prior.mean);
  const covariance = new Float64Array(size * size);
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) covariance[i * size + j] = prior.covariance[i * n + j];
  sharedVariances(scales).forEach((variance, s) => {
    covariance[(n + s) * size + n + s] = variance;
  });
  for (let r = n + SHARED_COUNT; r < size; r++) covariance[r * size + r] = PRIOR.day ** 2;
  return { size, mean, covariance };
}

/** Loadings of a shot on cells, shared effects and days. */
export function loadingsOf(shot: ShotEvidence, cells: number, size: number): Float64Array {
  const a = new Float64Array(size);
  a[shot.cell] = 1;
  for (const [index, loading] of shot.shared) a[cells + index] += loading;
  a[cells + SHARED_COUNT + shot.day] = 1;
  return a;
}

/**
 * Posterior by the way of the data: with S = A K Aᵀ + V, mean m + K Aᵀ S⁻¹ (y − A m), covariance
 * K − K Aᵀ S⁻¹ A K, and ln p(y). The model goes the other way, by information.
 */
export function conjugatePosterior(prior: DensePrior, observations: readonly Observation[]) {
  const { size, mean, covariance } = prior;
  const count = observations.length;
  const ka = observations.map(({ loadings }) => {
    const out = new Float64Array(size);
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) out[i] += covariance[i * size + j] * loadings[j];
    return out;
  });
  const dot = (x: Float64Array, y: Float64Array) => x.reduce((sum, each, i) => sum + each * y[i], 0);
  const s = new Float64Array(count * count);
  for (let k = 0; k < count; k++) {
    for (let l = 0; l < count; l++) {
      s[k * count + l] = dot(observations[k].loadings, ka[l]) + (k === l ? observations[k].variance : 0);
    }
  }
  choleskyInPlace(s, count);
  const residual = Float64Array.from(observations, ({ loadings, y }) => y - dot(loadings, mean));
  const solved = residual.slice();
  solveCholesky(s, count, solved);
  const inverse = invertFromCholesky(s, count);
  const post = mean.slice();
  const cov = covariance.slice();
  for (let k = 0; k < count; k++) {
    for (let i = 0; i < size; i++) post[i] += ka[k][i] * solved[k];
    for (let l = 0; l < count; l++) {
      for (let i = 0; i < size; i++) {
        for (let j = 0; j < size; j++) cov[i * size + j] -= ka[k][i] * inverse[k * count + l] * ka[l][j];
      }
    }
  }
  return {
    mean: post,
    covariance: cov,
    logEvidence: -0.5 * (logDeterminantFromCholesky(s, count) + dot(residual, solved) + count * Math.log(2 * Math.PI)),
  };
}
