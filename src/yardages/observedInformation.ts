import type { CellTraits, Claim, EvidenceArrays } from './evidence.ts';
import {
  addShot,
  clearInformation,
  eliminateDays,
  emptyInformation,
  type JointInformation,
} from './jointInformation.ts';
import { PRIOR } from './priorTable.ts';
import { SHARED_COUNT } from './sharedEffects.ts';
import { addClaims, fittedCarry, type StrikeFit } from './strikeFit.ts';
import { SUM, strikeReader } from './strikeMixture.ts';

/** At most this share of a cell's information may be missing for not knowing how a ball was struck. */
const MOST_MISSING = 0.7;

/** At most this share of it may go for not knowing the share of mishits, or the scatter. */
const MOST_COUPLED = 0.4;

/** What the shots say about the unknowns at the fit, net of what is not known of the strikes. */
export interface ObservedInformation {
  /** Information matrix and gradient of cells and shared effects; days, π and σ² eliminated. */
  readonly sheet: JointInformation;
  /** What each cell's own shots say by themselves. */
  readonly own: OwnEvidence;
  /** Probability that the shot was struck solid. */
  readonly solid: Float64Array;
}

/**
 * The shots of each cell taken as one: their information on a·z with a = e_i + Σ l_s e_s, a day's shots
 * counting only as far as they are not needed for the day's own effect, and the mean loadings l.
 */
export interface OwnEvidence {
  readonly information: Float64Array;
  /** Row-major, cells × SHARED_COUNT. */
  readonly loading: Float64Array;
}

/**
 * The observed information of all unknowns at the fit: the information if every strike's kind were
 * known, less the covariance of the scores over the kinds (what is missing). Share of mishits (as
 * logit π) and scatter (as ln σ²) are unknowns of their own and are eliminated in the end, so that
 * the carries' intervals pay for not knowing them.
 *
 * Source: Louis 1982, J. R. Statist. Soc. B 44, 226–233.
 */
export function observedInformation(
  evidence: EvidenceArrays,
  traits: CellTraits,
  claims: readonly Claim[],
  fit: StrikeFit,
): ObservedInformation {
  const { count } = evidence;
  const cells = traits.full.length;
  const reader = strikeReader(evidence, traits);
  const { sums } = reader;
  const state = {
    mishits: fit.mishits,
    scatter2: fit.scatter2,
    widening: 0,
    calledMishit: fit.calledMishit,
    loose: fit.loose,
  };
  const complete = new Float64Array(count);
  const missing = new Float64Array(count);
  const pull = new Float64Array(count);
  const solid = new Float64Array(count);
  const mishits = nuisance(count, (PRIOR.mishits + PRIOR.solids) * fit.mishits * (1 - fit.mishits));
  const scatter = nuisance(count, PRIOR.scatterShots / 2);
  for (let k = 0; k < count; k++) {
    reader.read(k, fittedCarry(evidence, k, fit.unknowns, fit.dayEffect), state, true);
    complete[k] = sums[SUM.information];
    missing[k] = sums[SUM.missing];
    pull[k] = sums[SUM.pull];
    solid[k] = sums[SUM.solid];
    mishits.coupling[k] = -sums[SUM.pullMishits];
    mishits.complete += sums[SUM.mishitsInformation];
    mishits.missing += sums[SUM.mishitsMissing];
    scatter.coupling[k] = sums[SUM.pullScatterInformation] - sums[SUM.pullScatter];
    scatter.complete += sums[SUM.scatterInformation];
    scatter.missing += sums[SUM.scatterMissing];
  }
  const weight = keptWeights(evidence, complete, missing, cells);
  const sheet = emptyInformation(cells, evidence.days);
  clearInformation(sheet, fit.dayEffect);
  for (let k = 0; k < count; k++) addShot(sheet, evidence, k, weight[k], pull[k]);
  const own = ownEvidence(sheet, evidence, weight);
  eliminateUnknowns([mishits, scatter], sheet, evidence, weight);
  eliminateDays(sheet);
  addClaims(sheet, claims, fit.unknowns);
  return { sheet, own, solid };
}

function ownEvidence(sheet: JointInformation, evidence: EvidenceArrays, weight: Float64Array): OwnEvidence {
  const { size } = sheet;
  const cells = size - SHARED_COUNT;
  const information = new Float64Array(cells);
  const loading = new Float64Array(cells * SHARED_COUNT);
  const total = new Float64Array(cells);
  for (let k = 0; k < evidence.count; k++) {
    const cell = evidence.cell[k];
    total[cell] += weight[k];
    for (let s = 0; s < evidence.sharedCount[k]; s++) {
      const e = k * evidence.sharedWidth + s;
      loading[cell * SHARED_COUNT + evidence.sharedIndex[e]] += weight[k] * evidence.sharedLoading[e];
    }
  }
  for (let cell = 0; cell < cells; cell++) {
    for (let s = 0; s < SHARED_COUNT; s++) {
      if (total[cell] > 0) loading[cell * SHARED_COUNT + s] /= total[cell];
    }
    for (let day = 0; day < evidence.days; day++) {
      const today = sheet.dayCoupling[day * size + cell];
      information[cell] += today * (1 - today / sheet.dayWeight[day]);
    }
  }
  return { information, loading };
}

/** An unknown of the mixture beside the carries, and how each shot's pull hangs together with it. */
interface Nuisance {
  readonly coupling: Float64Array;
  complete: number;
  missing: number;
}

function nuisance(count: number, priorInformation: number): Nuisance {
  return { coupling: new Float64Array(count), complete: priorInformation, missing: 0 };
}

/** One unknown of the mixture with its information ι and its coupling with the carries, days eliminated. */
interface Coupled {
  information: number;
  readonly withDays: Float64Array;
  readonly withRest: Float64Array;
}

/**
 * Takes the unknowns of the mixture out of the sheet: A ← A − Σ t tᵀ/ι with t = Σ c_k a_k, days
 * eliminated from t and ι as from A, and each unknown made free of those before it. The couplings c_k
 * are scaled down where need be so that Σ c_k²/w_k ≤ MOST_COUPLED ι, which keeps A definite (Cauchy
 * and Schwarz).
 */
function eliminateUnknowns(
  unknowns: readonly Nuisance[],
  sheet: JointInformation,
  evidence: EvidenceArrays,
  weight: Float64Array,
): void {
  const { size, matrix, dayWeight } = sheet;
  const done: Coupled[] = [];
  for (const unknown of unknowns) {
    const next = coupledWith(unknown, sheet, evidence, weight);
    for (const { information, withDays, withRest } of done) {
      let shared = 0;
      for (let r = 0; r < dayWeight.length; r++) shared -= (withDays[r] * next.withDays[r]) / dayWeight[r];
      next.information -= (shared * shared) / information;
      for (let i = 0; i < size; i++) next.withRest[i] -= (shared / information) * withRest[i];
    }
    const { information, withRest: t } = next;
    for (let i = 0; i < size; i++) for (let j = 0; j <= i; j++) matrix[i * size + j] -= (t[i] * t[j]) / information;
    done.push(next);
  }
}

function coupledWith(
  unknown: Nuisance,
  sheet: JointInformation,
  evidence: EvidenceArrays,
  weight: Float64Array,
): Coupled {
  const { size, dayWeight, dayCoupling } = sheet;
  let information = unknown.complete - Math.min(unknown.missing, MOST_MISSING * unknown.complete);
  let taken = 0;
  for (let k = 0; k < evidence.count; k++) if (weight[k] > 0) taken += unknown.coupling[k] ** 2 / weight[k];
  const scale = taken > MOST_COUPLED * information ? Math.sqrt((MOST_COUPLED * information) / taken) : 1;
  const withRest = new Float64Array(size);
  const withDays = new Float64Array(dayWeight.length);
  const cells = size - SHARED_COUNT;
  for (let k = 0; k < evidence.count; k++) {
    if (weight[k] === 0) continue;
    const coupling = scale * unknown.coupling[k];
    withRest[evidence.cell[k]] += coupling;
    withDays[evidence.day[k]] += coupling;
    for (let s = 0; s < evidence.sharedCount[k]; s++) {
      const e = k * evidence.sharedWidth + s;
      withRest[cells + evidence.sharedIndex[e]] += coupling * evidence.sharedLoading[e];
    }
  }
  for (let r = 0; r < dayWeight.length; r++) {
    const share = withDays[r] / dayWeight[r];
    information -= share * withDays[r];
    for (let i = 0; i < size; i++) withRest[i] -= share * dayCoupling[r * size + i];
  }
  return { information, withDays, withRest };
}

/**
 * Weight of each shot: what is observed, W − V, scaled so that a cell's shots together keep Σ (W − V)
 * and at least 1 − MOST_MISSING of Σ W. A single shot between two kinds of strike may say less than
 * nothing; it then counts as nothing, so that the matrix stays definite.
 */
function keptWeights(
  evidence: EvidenceArrays,
  complete: Float64Array,
  missing: Float64Array,
  cells: number,
): Float64Array {
  const inAll = new Float64Array(cells);
  const lost = new Float64Array(cells);
  const positive = new Float64Array(cells);
  for (let k = 0; k < evidence.count; k++) {
    const cell = evidence.cell[k];
    inAll[cell] += complete[k];
    lost[cell] += missing[k];
    positive[cell] += Math.max(0, complete[k] - missing[k]);
  }
  return complete.map((w, k) => {
    const cell = evidence.cell[k];
    if (positive[cell] === 0) return (1 - MOST_MISSING) * w;
    const kept = Math.max((1 - MOST_MISSING) * inAll[cell], inAll[cell] - lost[cell]);
    return (kept / positive[cell]) * Math.max(0, w - missing[k]);
  });
}
