import { choleskyInPlace, invertFromCholesky, solveCholesky } from '../statistics/cholesky.ts';
import type { GaussianMixture } from '../statistics/gaussianMixture.ts';
import type { CarryModel } from './carryModel.ts';
import { carryPrior, TABLE_SCALES } from './carryPrior.ts';
import { PRIOR } from './priorTable.ts';
import { sharedIndex } from './sharedEffects.ts';
import { priorMeans, priorPrecision } from './strikeFit.ts';

/** A lie that costs carry: from grass or sand. */
export type CostlyLie = 'light rough' | 'heavy rough' | 'sand';

/** What a lie does to ln carry for this golfer: offset, standard error of it, and the scatter it adds. */
export interface LieCost {
  readonly offset: number;
  readonly error: number;
  readonly scatter: number;
}

/**
 * What rough and sand cost this golfer: the usual offset and what his own shots from there add to it
 * (one unknown for rough, twice as strong in heavy rough; one for sand), as ln carry, with the standard
 * error of his own part. Without shots from there: the usual offset and how much golfers differ.
 *
 * Source: the joint posterior of the carry model at the usual prior widths; offsets {@link PRIOR}.
 */
export function lieCosts(model: CarryModel): Readonly<Record<CostlyLie, LieCost>> {
  const cells = model.cells.length;
  const { fit, observed } = model.basis;
  const { size, matrix, gradient } = observed.sheet;
  const prior = carryPrior(model.cells, TABLE_SCALES);
  const precision = priorPrecision(prior, TABLE_SCALES);
  const means = priorMeans(prior);
  const factor = matrix.map((entry, e) => entry + precision[e]);
  choleskyInPlace(factor, size);
  const step = gradient.slice();
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) step[i] -= precision[i * size + j] * (fit.unknowns[j] - means[j]);
  }
  solveCholesky(factor, size, step);
  const inverse = invertFromCholesky(factor, size);
  const { lieOffset, lieScatter } = PRIOR;
  const cost = (effect: 'rough' | 'sand', loading: number, usual: number, scatter: number): LieCost => {
    const at = cells + sharedIndex(effect);
    const deviation = Math.sqrt(inverse[at * size + at]);
    const own = fit.unknowns[at] + Math.max(-deviation, Math.min(deviation, step[at]));
    return { offset: usual + loading * own, error: loading * deviation, scatter };
  };
  return {
    'light rough': cost('rough', 1, lieOffset.light, lieScatter.light),
    'heavy rough': cost('rough', 2, lieOffset.heavy, lieScatter.heavy),
    sand: cost('sand', 1, lieOffset.sand, lieScatter.sand),
  };
}

/** The forecast of the next ball from a costly lie: moved by the offset, widened by its error and its scatter. */
export function lieForecast(forecast: GaussianMixture, { offset, error, scatter }: LieCost): GaussianMixture {
  return {
    weights: forecast.weights,
    means: forecast.means.map((mean) => mean + offset),
    deviations: forecast.deviations.map((s) => Math.hypot(s, error, scatter)),
  };
}
