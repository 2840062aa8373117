import { normalDensity, normalDistribution } from '../statistics/normal.ts';
import type { CellTraits, EvidenceArrays } from './evidence.ts';
import { PRIOR } from './priorTable.ts';

/** What the mixture depends on besides the shot: share of mishits, scatter, and a passing widening. */
export interface StrikeState {
  /** π: share of mishits at the anchor loft, 0 to 1. */
  readonly mishits: number;
  /** σ²: variance of ln carry of a solid full swing. */
  readonly scatter2: number;
  /** Extra variance of every node while the fit still searches; 0 at the end. */
  readonly widening: number;
  /** Probability that a strike is called a mishit when it is solid, a slight mishit, a bad one, an outlier. */
  readonly calledMishit: ArrayLike<number>;
  /** Share of solid strikes that are loose. */
  readonly loose: number;
}

/** The kinds of strike that a golfer's words are judged by. */
export const WORD_CLASSES = ['solid', 'slight', 'bad', 'outlier'] as const;

/** Positions of the sums that one shot leaves in the scratch array. */
export const SUM = {
  /** W = Σ r_j / v_j, the information on ln carry if the nodes were known. */
  information: 0,
  /** Σ r_j e_j / v_j, the pull on ln carry. */
  pull: 1,
  /** Var(e_j / v_j) over nodes and censoring: the information that is missing. */
  missing: 2,
  /** Responsibility of solid strikes (tight, loose, eased), and of mishits, and of outliers. */
  solid: 3,
  mishit: 4,
  outlier: 5,
  /** Σ over solid nodes of r times E[(own scatter)²] / (factor · M²): evidence on σ². */
  scatter: 6,
  /** ln of the mixture's likelihood. */
  logLikelihood: 7,
  /** Covariance of the pull with the scores of logit π and of ln σ², and those scores' own covariance. */
  pullMishits: 8,
  pullScatter: 9,
  mishitsMissing: 10,
  scatterMissing: 11,
  mishitsScatter: 12,
  /** Information on logit π and on ln σ² if the nodes were known, and E[f e / v]. */
  mishitsInformation: 13,
  scatterInformation: 14,
  pullScatterInformation: 15,
  /** Σ over solid nodes of r f² / (factor · M²): what the fit's own variance adds to the evidence on σ². */
  scatterOfFit: 16,
  /** Responsibility by class of strike, in the order of WORD_CLASSES; four places. */
  wordClass: 17,
  /** Responsibility of loose strikes. */
  loose: 21,
  count: 22,
} as const;

const SHORTFALLS = PRIOR.shortfall.length;
const LOG_REMAINDER = PRIOR.shortfall.map((share) => Math.log(1 - share));
const LOG_EASED = Math.log(1 - PRIOR.easedBy);
/** tight, loose, eased, two mix-ups, the shortfalls, the outlier. */
const MOST_NODES = 6 + SHORTFALLS;
const FIRST_MISHIT = 5;
const OUTLIER = FIRST_MISHIT + SHORTFALLS;

/** The class of strike that each node belongs to, as a place in WORD_CLASSES. */
const NODE_CLASS = Uint8Array.from({ length: MOST_NODES }, (_, node) => {
  if (node < FIRST_MISHIT) return 0;
  if (node === OUTLIER) return 3;
  return PRIOR.shortfall[node - FIRST_MISHIT] >= PRIOR.badFrom ? 2 : 1;
});

/** Share of mishits of a shot: π times the factor of its club, at most .6. */
export function mishitShare(mishits: number, factor: number): number {
  return Math.min(0.6, mishits * factor);
}

/**
 * Reads one shot after another against the mixture of strikes: solid strikes round θ (tight, loose,
 * eased), strikes logged with the neighbouring swing, mishits that fall short by fixed shares, and
 * outliers. With residual ρ = y − fitted ln carry, node j has mean d_j and variance v_j and
 *
 *   r_j ∝ w_j · P(word | j) · N(ρ; d_j, v_j)     (measured)
 *   r_j ∝ w_j · P(word | j) · [Φ((b−d_j)/s_j) − Φ((a−d_j)/s_j)]     (censored to a … b)
 *
 * `read(k, fitted, state)` leaves the sums named in {@link SUM} in `sums`.
 *
 * Source: Dempster, Laird & Rubin 1977 for r; Louis 1982 for the missing information.
 */
export function strikeReader(evidence: EvidenceArrays, traits: CellTraits) {
  const sums = new Float64Array(SUM.count);
  const shift = new Float64Array(MOST_NODES);
  const variance = new Float64Array(MOST_NODES);
  const weight = new Float64Array(MOST_NODES);
  const own = new Float64Array(MOST_NODES);
  const error = new Float64Array(MOST_NODES);
  const spread = new Float64Array(MOST_NODES);
  const responsibility = new Float64Array(MOST_NODES);

  function layOutNodes(k: number, state: StrikeState): number {
    const cell = evidence.cell[k];
    const scatter = state.scatter2 * traits.scatter2[cell];
    const base = evidence.variance[k] + state.widening;
    const mishit = mishitShare(state.mishits, traits.mishitFactor[cell]);
    const solid = (1 - PRIOR.outlier) * (1 - mishit);
    const easedShare = traits.full[cell] ? PRIOR.eased : 0;
    const longer = traits.longerSwing[cell];
    const shorter = traits.shorterSwing[cell];
    const mixUps = (longer > 0 ? 1 : 0) + (shorter < 0 ? 1 : 0);
    const mixUpShare = mixUps ? PRIOR.mixUp / mixUps : 0;
    const set = (node: number, share: number, mean: number, ownVariance: number, rest: number) => {
      weight[node] = share;
      shift[node] = mean;
      own[node] = ownVariance;
      variance[node] = ownVariance + rest;
    };
    set(0, solid * (1 - state.loose - easedShare - mixUpShare * mixUps), 0, scatter, base);
    set(1, solid * state.loose, 0, scatter * PRIOR.looseFactor ** 2, base);
    set(2, solid * easedShare, LOG_EASED, scatter, base);
    set(3, longer > 0 ? solid * mixUpShare : 0, longer, scatter, base);
    set(4, shorter < 0 ? solid * mixUpShare : 0, shorter, scatter, base);
    for (let s = 0; s < SHORTFALLS; s++) {
      const share = (1 - PRIOR.outlier) * mishit * PRIOR.shortfallWeight[s];
      set(FIRST_MISHIT + s, share, LOG_REMAINDER[s], scatter, base + PRIOR.mishitScatter ** 2);
    }
    set(OUTLIER, PRIOR.outlier, 0, scatter, base + PRIOR.outlierScatter ** 2);
    return mishit;
  }

  /** Weighs the nodes against the shot; fills responsibility, error and spread; returns the likelihood. */
  function weighNodes(k: number, fitted: number, state: StrikeState): number {
    const least = evidence.logLeast[k] - fitted;
    const most = evidence.logMost[k] - fitted;
    const word = evidence.word[k];
    let total = 0;
    for (let j = 0; j < MOST_NODES; j++) {
      if (weight[j] === 0) {
        responsibility[j] = 0;
        continue;
      }
      const v = variance[j];
      const mishitWord = state.calledMishit[NODE_CLASS[j]];
      const prior = weight[j] * (word === 0 ? 1 : word === 1 ? 1 - mishitWord : mishitWord);
      if (least === most) {
        const e = least - shift[j];
        error[j] = e;
        spread[j] = 0;
        responsibility[j] = prior * (Math.exp((-0.5 * e * e) / v) / Math.sqrt(2 * Math.PI * v));
      } else {
        const s = Math.sqrt(v);
        const a = (least - shift[j]) / s;
        const b = (most - shift[j]) / s;
        const mass =
          a > 0 ? normalDistribution(-a) - normalDistribution(-b) : normalDistribution(b) - normalDistribution(a);
        if (mass < 1e-290) {
          responsibility[j] = 0;
          error[j] = 0;
          spread[j] = 0;
          continue;
        }
        const fa = Number.isFinite(a) ? normalDensity(a) / mass : 0;
        const fb = Number.isFinite(b) ? normalDensity(b) / mass : 0;
        const edge = (Number.isFinite(a) ? a * fa : 0) - (Number.isFinite(b) ? b * fb : 0);
        error[j] = s * (fa - fb);
        spread[j] = Math.max(0, v * (1 + edge - (fa - fb) ** 2));
        responsibility[j] = prior * mass;
      }
      total += responsibility[j];
    }
    return total;
  }

  function read(k: number, fitted: number, state: StrikeState): void {
    sums.fill(0);
    const factor = traits.mishitFactor[evidence.cell[k]];
    const mishit = layOutNodes(k, state);
    const total = weighNodes(k, fitted, state);
    if (!(total > 0)) return;
    sums[SUM.logLikelihood] = Math.log(total);
    const capped = state.mishits * factor > mishit;
    const slopeMishit = capped ? 0 : 1 - state.mishits;
    const slopeSolid = (-mishit / (1 - mishit)) * slopeMishit;
    let meanT = 0;
    let meanU = 0;
    let tt = 0;
    let tu = 0;
    let uu = 0;
    let pt = 0;
    let pu = 0;
    let pp = 0;
    for (let j = 0; j < MOST_NODES; j++) {
      if (responsibility[j] === 0) continue;
      const r = responsibility[j] / total;
      const v = variance[j];
      const e = error[j];
      const square = e * e + spread[j];
      const pull = e / v;
      sums[SUM.wordClass + NODE_CLASS[j]] += r;
      const f = own[j] / v;
      const t = j === OUTLIER ? 0 : j >= FIRST_MISHIT ? slopeMishit : slopeSolid;
      const u = 0.5 * f * (square / v - 1);
      sums[SUM.information] += r / v;
      sums[SUM.pull] += r * pull;
      pp += r * (square / (v * v));
      meanT += r * t;
      meanU += r * u;
      tt += r * t * t;
      tu += r * t * u;
      uu += r * u * u;
      pt += r * pull * t;
      pu += r * pull * u;
      sums[SUM.scatterInformation] += r * 0.5 * f * f;
      sums[SUM.pullScatterInformation] += r * f * pull;
      if (j === OUTLIER) sums[SUM.outlier] += r;
      else if (j >= FIRST_MISHIT) sums[SUM.mishit] += r;
      else {
        sums[SUM.solid] += r;
        if (j === 1) sums[SUM.loose] += r;
        const factors = own[j] / state.scatter2;
        sums[SUM.scatter] += (r * (f * f * square + own[j] * (1 - f))) / factors;
        sums[SUM.scatterOfFit] += (r * f * f) / factors;
      }
    }
    const pull = sums[SUM.pull];
    sums[SUM.missing] = pp - pull * pull;
    sums[SUM.pullMishits] = pt - pull * meanT;
    sums[SUM.pullScatter] = pu - pull * meanU;
    sums[SUM.mishitsMissing] = tt - meanT * meanT;
    sums[SUM.mishitsScatter] = tu - meanT * meanU;
    sums[SUM.scatterMissing] = uu - meanU * meanU;
    sums[SUM.mishitsInformation] = capped ? 0 : mishit * (1 - mishit) * (1 - sums[SUM.outlier]);
  }

  return { sums, read };
}
