import type { EvidenceArrays } from './evidence.ts';
import { PRIOR } from './priorTable.ts';
import { SHARED_COUNT } from './sharedEffects.ts';

/**
 * Information about all unknowns of a golfer, gathered shot by shot: cells first, then shared
 * effects, and apart from them one effect per day, which is eliminated by its Schur complement.
 *
 * A shot of cell i on day r with loadings l_s says something about a·z + day_r, with a = e_i + Σ l_s e_s.
 * With weight w and pull p it adds w a aᵀ to the matrix, w a to the day's coupling, w to the day,
 * and p a to the gradient.
 */
export interface JointInformation {
  /** Number of unknowns beside the days: cells and shared effects. */
  readonly size: number;
  /** Row-major, full symmetric after {@link eliminateDays}. */
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
  readonly dayWeight: Float64Array;
  readonly dayPull: Float64Array;
  /** Row-major, days × size. */
  readonly dayCoupling: Float64Array;
}

/** An empty sheet for a golfer's evidence. */
export function emptyInformation(cellCount: number, days: number): JointInformation {
  const size = cellCount + SHARED_COUNT;
  return {
    size,
    matrix: new Float64Array(size * size),
    gradient: new Float64Array(size),
    dayWeight: new Float64Array(days),
    dayPull: new Float64Array(days),
    dayCoupling: new Float64Array(days * size),
  };
}

/** Wipes the sheet and writes the days' prior: mean 0, standard deviation PRIOR.day, now at `dayEffect`. */
export function clearInformation(sheet: JointInformation, dayEffect: Float64Array): void {
  const precision = 1 / PRIOR.day ** 2;
  sheet.matrix.fill(0);
  sheet.gradient.fill(0);
  sheet.dayCoupling.fill(0);
  for (let r = 0; r < dayEffect.length; r++) {
    sheet.dayWeight[r] = precision;
    sheet.dayPull[r] = -dayEffect[r] * precision;
  }
}

/** Adds one shot with its weight (information) and pull (score). Only the lower triangle is written. */
export function addShot(
  sheet: JointInformation,
  evidence: EvidenceArrays,
  k: number,
  weight: number,
  pull: number,
): void {
  const { size, matrix, gradient } = sheet;
  const cells = size - SHARED_COUNT;
  const i = evidence.cell[k];
  const day = evidence.day[k];
  const from = k * evidence.sharedWidth;
  const loads = evidence.sharedCount[k];
  matrix[i * size + i] += weight;
  gradient[i] += pull;
  sheet.dayWeight[day] += weight;
  sheet.dayPull[day] += pull;
  sheet.dayCoupling[day * size + i] += weight;
  for (let s = 0; s < loads; s++) {
    const row = cells + evidence.sharedIndex[from + s];
    const loading = evidence.sharedLoading[from + s];
    const weighted = weight * loading;
    gradient[row] += pull * loading;
    sheet.dayCoupling[day * size + row] += weighted;
    matrix[row * size + i] += weighted;
    for (let t = 0; t <= s; t++) {
      const other = cells + evidence.sharedIndex[from + t];
      const product = weighted * evidence.sharedLoading[from + t];
      if (other <= row) matrix[row * size + other] += product;
      else matrix[other * size + row] += product;
    }
  }
}

/** Eliminates the days (A ← A − Σ c cᵀ/d, g ← g − Σ c p/d) and completes the upper triangle. */
export function eliminateDays(sheet: JointInformation): void {
  const { size, matrix, gradient, dayCoupling } = sheet;
  const used = new Int32Array(size);
  for (let r = 0; r < sheet.dayWeight.length; r++) {
    const base = r * size;
    let count = 0;
    for (let i = 0; i < size; i++) if (dayCoupling[base + i] !== 0) used[count++] = i;
    const inverse = 1 / sheet.dayWeight[r];
    for (let u = 0; u < count; u++) {
      const i = used[u];
      const scaled = dayCoupling[base + i] * inverse;
      gradient[i] -= scaled * sheet.dayPull[r];
      for (let w = 0; w <= u; w++) matrix[i * size + used[w]] -= scaled * dayCoupling[base + used[w]];
    }
  }
  for (let i = 0; i < size; i++) for (let j = 0; j < i; j++) matrix[j * size + i] = matrix[i * size + j];
}
