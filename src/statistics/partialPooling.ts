/** What one-way partial pooling finds. Deviations are in the unit of the values; `effects` follow the order of the groups. */
export type PartialPooling = {
  /** The common mean, each group counted by how much it tells. */
  readonly mean: number;
  /** Standard error of the common mean, the two deviations taken as known. */
  readonly meanError: number;
  /** Standard deviation of the groups' own means about the common mean; 0 when nothing speaks for a difference. */
  readonly betweenDeviation: number;
  /** Standard deviation of the values about their own group's mean. */
  readonly withinDeviation: number;
  /** Best linear prediction of (group mean − common mean): shrunk towards 0, and 0 for a group without values. */
  readonly effects: Float64Array;
};

/** The ratio γ is looked for from e^−16 to e^24; outside it the groups are as good as equal, or the values within them are. */
const LEAST_LOG_RATIO = -16;
const MOST_LOG_RATIO = 24;
const SCAN_STEPS = 160;
/** Halvings of a bracket of 0.25 in ln γ down to the last bit. */
const HALVINGS = 60;

/**
 * One-way random effects y_ij = μ + b_i + e_ij, b_i ~ N(0, τ²), e_ij ~ N(0, σ²), by restricted maximum likelihood;
 * groups may be of unequal size.
 *
 * With γ = τ²/σ², w_i = n_i/(1 + n_i γ), μ = Σ w_i ȳ_i / Σ w_i, Q = Σ w_i (ȳ_i − μ)² and W = ΣΣ (y_ij − ȳ_i)²,
 * σ² = (W + Q)/(N − 1) and −2 ln L = (N − 1) ln(W + Q) + Σ ln(1 + n_i γ) + ln Σ w_i + constant is minimised over γ ≥ 0.
 * Effects are γ w_i (ȳ_i − μ).
 *
 * @throws RangeError when fewer than two groups have values, a value is not finite, or no group varies within itself.
 * Source: Patterson & Thompson (1971), Biometrika 58, 545–554; Harville (1977), JASA 72, 320–338.
 */
export function partialPooling(groups: readonly ArrayLike<number>[]): PartialPooling {
  const { counts, means, within, total } = summarise(groups);
  const ratio = bestRatio(counts, means, within, total);
  const at = profile(counts, means, within, total, ratio);
  const sigma2 = (within + at.between) / (total - 1);
  return {
    mean: at.mean,
    meanError: Math.sqrt(sigma2 / at.weight),
    betweenDeviation: Math.sqrt(ratio * sigma2),
    withinDeviation: Math.sqrt(sigma2),
    // The leading 0 makes −0 into 0.
    effects: Float64Array.from(counts, (n, i) => 0 + ((ratio * n) / (1 + n * ratio)) * (means[i] - at.mean)),
  };
}

function summarise(groups: readonly ArrayLike<number>[]) {
  const counts = new Float64Array(groups.length);
  const means = new Float64Array(groups.length);
  let within = 0;
  let total = 0;
  let filled = 0;
  for (let i = 0; i < groups.length; i++) {
    const group = groups[i];
    counts[i] = group.length;
    if (group.length === 0) continue;
    filled++;
    total += group.length;
    let sum = 0;
    for (let j = 0; j < group.length; j++) {
      if (!Number.isFinite(group[j])) throw new RangeError(`value ${j} of group ${i} is ${group[j]}: not finite`);
      sum += group[j];
    }
    means[i] = sum / group.length;
    for (let j = 0; j < group.length; j++) within += (group[j] - means[i]) ** 2;
  }
  if (filled < 2) throw new RangeError(`${filled} groups with values: partial pooling needs at least two`);
  if (!(within > 0))
    throw new RangeError('no group varies within itself: the spread within groups cannot be estimated');
  return { counts, means, within, total };
}

/** The restricted likelihood at a ratio γ, profiled over μ and σ². */
function profile(counts: Float64Array, means: Float64Array, within: number, total: number, ratio: number) {
  let weight = 0;
  let squaredWeight = 0;
  let weighted = 0;
  let logs = 0;
  for (let i = 0; i < counts.length; i++) {
    const w = counts[i] / (1 + counts[i] * ratio);
    weight += w;
    squaredWeight += w * w;
    weighted += w * means[i];
    logs += Math.log1p(counts[i] * ratio);
  }
  const centre = weighted / weight;
  let between = 0;
  let fall = 0;
  for (let i = 0; i < counts.length; i++) {
    const w = counts[i] / (1 + counts[i] * ratio);
    const square = (means[i] - centre) ** 2;
    between += w * square;
    fall += w * w * square;
  }
  return {
    mean: centre,
    weight,
    between,
    deviance: (total - 1) * Math.log(within + between) + logs + Math.log(weight),
    slope: weight - squaredWeight / weight - ((total - 1) * fall) / (within + between),
  };
}

/** Least deviance over γ ≥ 0: a scan of ln γ finds the valley, bisection of the slope its floor. */
function bestRatio(counts: Float64Array, means: Float64Array, within: number, total: number): number {
  const step = (MOST_LOG_RATIO - LEAST_LOG_RATIO) / SCAN_STEPS;
  let best = 0;
  let least = profile(counts, means, within, total, 0).deviance;
  let before = LEAST_LOG_RATIO;
  let fallingBefore = profile(counts, means, within, total, Math.exp(before)).slope < 0;
  for (let k = 1; k <= SCAN_STEPS; k++) {
    const here = LEAST_LOG_RATIO + k * step;
    const falling = profile(counts, means, within, total, Math.exp(here)).slope < 0;
    if (fallingBefore && !falling) {
      let low = before;
      let high = here;
      for (let halving = 0; halving < HALVINGS; halving++) {
        const middle = 0.5 * (low + high);
        if (profile(counts, means, within, total, Math.exp(middle)).slope < 0) low = middle;
        else high = middle;
      }
      const ratio = Math.exp(0.5 * (low + high));
      const deviance = profile(counts, means, within, total, ratio).deviance;
      if (deviance < least) {
        least = deviance;
        best = ratio;
      }
    }
    before = here;
    fallingBefore = falling;
  }
  if (fallingBefore) throw new RangeError('the groups differ without bound compared with the spread within them');
  return best;
}
