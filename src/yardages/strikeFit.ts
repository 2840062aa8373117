import { choleskyInPlace, invertFromCholesky, solveCholesky } from '../statistics/cholesky.ts';
import { quantile } from '../statistics/quantile.ts';
import type { CarryPrior, PriorScales } from './carryPrior.ts';
import type { CellTraits, Claim, EvidenceArrays } from './evidence.ts';
import {
  addShot,
  clearInformation,
  eliminateDays,
  emptyInformation,
  type JointInformation,
} from './jointInformation.ts';
import { PRIOR } from './priorTable.ts';
import { SHARED_COUNT, sharedVariances } from './sharedEffects.ts';
import { SUM, strikeReader, WORD_CLASSES } from './strikeMixture.ts';

/** Rounds of the search at the most, and the step in ln carry below which it has settled. */
const MOST_ROUNDS = 14;
const SETTLED = 0.002;
/** Extra variance while the search begins, so that it does not settle on the wrong hill. */
const WIDENING = [0.08 ** 2, 0.04 ** 2, 0.02 ** 2];
/** The start lies above the middle of the residuals, because mishits only ever fall short. */
const START_QUANTILE = 0.6;
const START_SHRINK = 0.3;

/** Where the search came to rest: the unknowns, the share of mishits and the scatter. */
export interface StrikeFit {
  /** θ of the cells, then the shared effects. */
  readonly unknowns: Float64Array;
  readonly dayEffect: Float64Array;
  readonly mishits: number;
  readonly scatter2: number;
  /** Probability that a strike is called a mishit, by class of strike. */
  readonly calledMishit: Float64Array;
  /** Share of solid strikes that are loose. */
  readonly loose: number;
  readonly rounds: number;
}

/** Fitted ln carry of shot k: its cell, what it shares with others, and its day. */
export function fittedCarry(
  evidence: EvidenceArrays,
  k: number,
  unknowns: Float64Array,
  dayEffect: Float64Array,
): number {
  const cells = unknowns.length - SHARED_COUNT;
  let fitted = unknowns[evidence.cell[k]] + dayEffect[evidence.day[k]];
  const from = k * evidence.sharedWidth;
  for (let s = 0; s < evidence.sharedCount[k]; s++) {
    fitted += evidence.sharedLoading[from + s] * unknowns[cells + evidence.sharedIndex[from + s]];
  }
  return fitted;
}

/** Inverse of the prior covariance of all unknowns: cells as a block, shared effects alone. */
export function priorPrecision(prior: CarryPrior, scales: PriorScales): Float64Array {
  const cells = prior.mean.length;
  const size = cells + SHARED_COUNT;
  const factor = prior.covariance.slice();
  choleskyInPlace(factor, cells);
  const inverse = invertFromCholesky(factor, cells);
  const precision = new Float64Array(size * size);
  for (let i = 0; i < cells; i++) precision.set(inverse.subarray(i * cells, (i + 1) * cells), i * size);
  sharedVariances(scales).forEach((variance, s) => {
    precision[(cells + s) * size + cells + s] = 1 / variance;
  });
  return precision;
}

/** Prior means of all unknowns: the cells' means, zeros for the shared effects. */
export function priorMeans(prior: CarryPrior): Float64Array {
  const means = new Float64Array(prior.mean.length + SHARED_COUNT);
  means.set(prior.mean);
  return means;
}

/** Adds the golfer's claimed numbers: normal evidence of standard deviation PRIOR.claim. */
export function addClaims(sheet: JointInformation, claims: readonly Claim[], unknowns: Float64Array): void {
  const weight = 1 / PRIOR.claim ** 2;
  for (const { cell, logCarry } of claims) {
    sheet.matrix[cell * sheet.size + cell] += weight;
    sheet.gradient[cell] += weight * (logCarry - unknowns[cell]);
  }
}

/** gradient − P (z − m), written into `gradient`. */
export function addPriorPull(
  gradient: Float64Array,
  precision: Float64Array,
  unknowns: Float64Array,
  means: Float64Array,
): void {
  const size = gradient.length;
  for (let i = 0; i < size; i++) {
    let pull = 0;
    for (let j = 0; j < size; j++) pull += precision[i * size + j] * (unknowns[j] - means[j]);
    gradient[i] -= pull;
  }
}

function startingUnknowns(evidence: EvidenceArrays, means: Float64Array): Float64Array {
  const residuals: number[] = [];
  for (let k = 0; k < evidence.count; k++) {
    if (evidence.logLeast[k] === evidence.logMost[k]) residuals.push(evidence.logLeast[k] - means[evidence.cell[k]]);
  }
  const unknowns = means.slice();
  if (residuals.length === 0) return unknowns;
  const shrink = residuals.length / (residuals.length + START_SHRINK);
  const level = quantile(residuals, START_QUANTILE, 7) * shrink;
  for (let i = 0; i < means.length - SHARED_COUNT; i++) unknowns[i] += level;
  return unknowns;
}

/**
 * Finds the most probable carries under the mixture of strikes by expectation–maximisation. Each
 * round reads every shot against the present fit, then solves the joint normal equations
 *
 *   (P + A) Δz = g − P (z − m),   A = Σ w a aᵀ (days eliminated),   g = Σ p a
 *
 * and re-estimates π (Beta prior) and σ² (scaled-inverse-χ² prior) from the responsibilities. The
 * result does not depend on chance; shots should come in a fixed order, since sums of floating-point
 * numbers depend on it in the last digits.
 *
 * Source: Dempster, Laird & Rubin 1977; constants {@link PRIOR}.
 */
export function fitStrikes(
  evidence: EvidenceArrays,
  traits: CellTraits,
  claims: readonly Claim[],
  prior: CarryPrior,
  scales: PriorScales,
): StrikeFit {
  const cells = prior.mean.length;
  const means = priorMeans(prior);
  const precision = priorPrecision(prior, scales);
  const unknowns = startingUnknowns(evidence, means);
  const dayEffect = new Float64Array(evidence.days);
  const sheet = emptyInformation(cells, evidence.days);
  const reader = strikeReader(evidence, traits);
  const { sums } = reader;
  const { size, matrix, gradient } = sheet;
  const fitScatter = new Float64Array(cells);
  let mishits: number = PRIOR.mishits / (PRIOR.mishits + PRIOR.solids);
  let scatter2 = PRIOR.scatter ** 2;
  let loose: number = PRIOR.loose;
  const calledMishit = Float64Array.from(PRIOR.calledMishit);
  const called = new Float64Array(WORD_CLASSES.length);
  const labelled = new Float64Array(WORD_CLASSES.length);
  let rounds = 0;
  for (let step = Number.POSITIVE_INFINITY; rounds < MOST_ROUNDS && step > SETTLED; rounds++) {
    const widening = WIDENING[rounds] ?? 0;
    const state = { mishits, scatter2, widening, calledMishit, loose };
    clearInformation(sheet, dayEffect);
    fitScatter.fill(0);
    called.fill(0);
    labelled.fill(0);
    let solid = 0;
    let mishit = 0;
    let looseStrikes = 0;
    let exposure = 0;
    let scatter = 0;
    for (let k = 0; k < evidence.count; k++) {
      reader.read(k, fittedCarry(evidence, k, unknowns, dayEffect), state, false);
      addShot(sheet, evidence, k, sums[SUM.information], sums[SUM.pull]);
      solid += sums[SUM.solid];
      mishit += sums[SUM.mishit];
      looseStrikes += sums[SUM.loose];
      exposure += traits.mishitFactor[evidence.cell[k]] * (1 - sums[SUM.outlier]);
      scatter += sums[SUM.scatter];
      fitScatter[evidence.cell[k]] += sums[SUM.scatterOfFit];
      if (evidence.word[k] === 0) continue;
      for (let c = 0; c < WORD_CLASSES.length; c++) {
        labelled[c] += sums[SUM.wordClass + c];
        if (evidence.word[k] === 2) called[c] += sums[SUM.wordClass + c];
      }
    }
    eliminateDays(sheet);
    addClaims(sheet, claims, unknowns);
    addPriorPull(gradient, precision, unknowns, means);
    for (let e = 0; e < matrix.length; e++) matrix[e] += precision[e];
    choleskyInPlace(matrix, size);
    solveCholesky(matrix, size, gradient);
    step = widening > 0 ? Number.POSITIVE_INFINITY : 0;
    for (let i = 0; i < size; i++) {
      unknowns[i] += gradient[i];
      if (i < cells) step = Math.max(step, Math.abs(gradient[i]));
    }
    for (let r = 0; r < evidence.days; r++) {
      let coupled = 0;
      for (let i = 0; i < size; i++) coupled += sheet.dayCoupling[r * size + i] * gradient[i];
      dayEffect[r] += (sheet.dayPull[r] - coupled) / sheet.dayWeight[r];
    }
    const inverse = invertFromCholesky(matrix, size);
    for (let i = 0; i < cells; i++) scatter += fitScatter[i] * inverse[i * size + i];
    mishits = (PRIOR.mishits + mishit) / (PRIOR.mishits + PRIOR.solids + exposure);
    for (let c = 0; c < WORD_CLASSES.length; c++) {
      const worth = PRIOR.calledMishitShots[c];
      calledMishit[c] = (worth * PRIOR.calledMishit[c] + called[c]) / (worth + labelled[c]);
    }
    loose = (PRIOR.looseShots * PRIOR.loose + looseStrikes) / (PRIOR.looseShots + solid);
    scatter2 = (PRIOR.scatterShots * PRIOR.scatter ** 2 + scatter) / (PRIOR.scatterShots + solid);
  }
  return { unknowns, dayEffect, mishits, scatter2, calledMishit, loose, rounds };
}
