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
  /** Responsibility of solid strikes (tight, loose, eased, mixed up), of mishits, of outliers, of loose ones. */
  solid: 2,
  mishit: 3,
  outlier: 4,
  loose: 5,
  /** Σ over solid nodes of r E[(own scatter)²] / (factor · M²), evidence on σ²; and what the fit's variance adds. */
  scatter: 6,
  scatterOfFit: 7,
  /** Responsibility by class of strike, in the order of WORD_CLASSES; four places. */
  wordClass: 8,
  /** Var(e_j / v_j) over nodes and censoring: the information that is missing. */
  missing: 12,
  /** Covariance of the pull with the scores of logit π and of ln σ², and the variances of those scores. */
  pullMishits: 13,
  pullScatter: 14,
  mishitsMissing: 15,
  scatterMissing: 16,
  /** Information on logit π and on ln σ² if the nodes were known, and E[f e / v]. */
  mishitsInformation: 17,
  scatterInformation: 18,
  pullScatterInformation: 19,
  count: 20,
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
 * `read(k, fitted, state, thorough)` leaves the sums named in {@link SUM} in `sums`.
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
    weight[0] = solid * (1 - state.loose - easedShare - mixUpShare * mixUps);
    weight[1] = solid * state.loose;
    weight[2] = solid * easedShare;
    weight[3] = longer > 0 ? solid * mixUpShare : 0;
    weight[4] = shorter < 0 ? solid * mixUpShare : 0;
    shift[2] = LOG_EASED;
    shift[3] = longer;
    shift[4] = shorter;
    own.fill(scatter);
    own[1] = scatter * PRIOR.looseFactor ** 2;
    variance.fill(scatter + base);
    variance[1] = own[1] + base;
    for (let s = 0; s < SHORTFALLS; s++) {
      const node = FIRST_MISHIT + s;
      weight[node] = (1 - PRIOR.outlier) * mishit * PRIOR.shortfallWeight[s];
      shift[node] = LOG_REMAINDER[s];
      variance[node] += PRIOR.mishitScatter ** 2;
    }
    weight[OUTLIER] = PRIOR.outlier;
    variance[OUTLIER] += PRIOR.outlierScatter ** 2;
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

  /** Reads shot k: the sums that the search needs, and with `thorough` those on missing information too. */
  function read(k: number, fitted: number, state: StrikeState, thorough: boolean): void {
    sums.fill(0);
    const mishit = layOutNodes(k, state);
    const total = weighNodes(k, fitted, state);
    if (!(total > 0)) return;
    let information = 0;
    let pull = 0;
    let solid = 0;
    let scatter = 0;
    let scatterOfFit = 0;
    for (let j = 0; j < MOST_NODES; j++) {
      if (responsibility[j] === 0) continue;
      const r = responsibility[j] / total;
      responsibility[j] = r;
      const v = variance[j];
      const e = error[j];
      information += r / v;
      pull += (r * e) / v;
      sums[SUM.wordClass + NODE_CLASS[j]] += r;
      if (j >= FIRST_MISHIT) continue;
      const f = own[j] / v;
      const factor = state.scatter2 / own[j];
      solid += r;
      scatter += r * factor * (f * f * (e * e + spread[j]) + own[j] * (1 - f));
      scatterOfFit += r * factor * f * f;
    }
    sums[SUM.information] = information;
    sums[SUM.pull] = pull;
    sums[SUM.solid] = solid;
    sums[SUM.outlier] = responsibility[OUTLIER];
    sums[SUM.mishit] = 1 - solid - responsibility[OUTLIER];
    sums[SUM.loose] = responsibility[1];
    sums[SUM.scatter] = scatter;
    sums[SUM.scatterOfFit] = scatterOfFit;
    if (thorough) readMissing(k, mishit, state);
  }

  /** Moments of the scores over the nodes, for what is missing; a censored shot's score of ln σ² is its node's mean. */
  function readMissing(k: number, mishit: number, state: StrikeState): void {
    const capped = state.mishits * traits.mishitFactor[evidence.cell[k]] > mishit;
    const slopeMishit = capped ? 0 : 1 - state.mishits;
    const slopeSolid = (-mishit / (1 - mishit)) * slopeMishit;
    let meanT = 0;
    let meanU = 0;
    let tt = 0;
    let uu = 0;
    let pt = 0;
    let pu = 0;
    let pp = 0;
    for (let j = 0; j < MOST_NODES; j++) {
      const r = responsibility[j];
      if (r === 0) continue;
      const v = variance[j];
      const square = error[j] * error[j] + spread[j];
      const pull = error[j] / v;
      const f = own[j] / v;
      const t = j === OUTLIER ? 0 : j >= FIRST_MISHIT ? slopeMishit : slopeSolid;
      const u = 0.5 * f * (square / v - 1);
      pp += r * (square / (v * v));
      meanT += r * t;
      meanU += r * u;
      tt += r * t * t;
      uu += r * u * u;
      pt += r * pull * t;
      pu += r * pull * u;
      sums[SUM.scatterInformation] += r * 0.5 * f * f;
      sums[SUM.pullScatterInformation] += r * f * pull;
    }
    const pull = sums[SUM.pull];
    sums[SUM.missing] = pp - pull * pull;
    sums[SUM.pullMishits] = pt - pull * meanT;
    sums[SUM.pullScatter] = pu - pull * meanU;
    sums[SUM.mishitsMissing] = tt - meanT * meanT;
    sums[SUM.scatterMissing] = uu - meanU * meanU;
    sums[SUM.mishitsInformation] = capped ? 0 : mishit * (1 - mishit) * (1 - sums[SUM.outlier]);
  }

  return { sums, read };
}
