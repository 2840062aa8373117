import { carryPrior, TABLE_SCALES } from '../../src/yardages/carryPrior.ts';
import type { Cell } from '../../src/yardages/cell.ts';
import type { ShotEvidence } from '../../src/yardages/evidence.ts';
import { PRIOR } from '../../src/yardages/priorTable.ts';
import { priorMeans, priorPrecision, type StrikeFit } from '../../src/yardages/strikeFit.ts';
import { logLikelihood } from './bruteStrikes.ts';
import { loadingsOf } from './denseNormal.ts';

/** Where the log posterior is asked for: cells and shared effects, days, logit π and ln σ². */
export interface Place {
  readonly unknowns: Float64Array;
  readonly days: Float64Array;
  readonly logitMishits: number;
  readonly logScatter2: number;
}

export function placeOf(fit: StrikeFit): Place {
  return {
    unknowns: fit.unknowns,
    days: fit.dayEffect,
    logitMishits: Math.log(fit.mishits / (1 - fit.mishits)),
    logScatter2: Math.log(fit.scatter2),
  };
}

/** ln likelihood of all shots with the priors of the days, of π (4 mishits, 16 others) and of σ² (8 shots). */
export function logOfShots(cells: readonly Cell[], shots: readonly ShotEvidence[], fit: StrikeFit, at: Place): number {
  const mishits = 1 / (1 + Math.exp(-at.logitMishits));
  const scatter2 = Math.exp(at.logScatter2);
  const state = { mishits, scatter2, widening: 0, calledMishit: fit.calledMishit, loose: fit.loose };
  const all = Float64Array.of(...at.unknowns, ...at.days);
  let sum = 4 * Math.log(mishits) + 16 * Math.log(1 - mishits);
  sum -= 4 * at.logScatter2 + (4 * PRIOR.scatter ** 2) / scatter2;
  for (const day of at.days) sum -= (0.5 * day * day) / PRIOR.day ** 2;
  for (const shot of shots) {
    const a = loadingsOf(shot, cells.length, all.length);
    const fitted = a.reduce((total, loading, i) => total + loading * all[i], 0);
    const partials = cells.some((other) => other.club === cells[shot.cell].club && other.swing !== 'full');
    sum += logLikelihood(shot, cells[shot.cell], partials, fitted, state);
  }
  return sum;
}

/** ln prior of cells and shared effects, up to a constant. */
export function logOfPrior(cells: readonly Cell[], at: Place): number {
  const prior = carryPrior(cells, TABLE_SCALES);
  const precision = priorPrecision(prior, TABLE_SCALES);
  const means = priorMeans(prior);
  const size = means.length;
  let sum = 0;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      sum -= 0.5 * precision[i * size + j] * (at.unknowns[i] - means[i]) * (at.unknowns[j] - means[j]);
    }
  }
  return sum;
}
