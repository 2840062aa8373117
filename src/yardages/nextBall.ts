import { type GaussianMixture, mixtureQuantile } from '../statistics/gaussianMixture.ts';
import { type Cell, loftAboveAnchor, scatterFactor } from './cell.ts';
import { PRIOR } from './priorTable.ts';
import { mishitShare } from './strikeMixture.ts';

/** The 19 probabilities of a forecast: .05, .10 … .95. */
export const FORECAST_PROBABILITIES: readonly number[] = Array.from({ length: 19 }, (_, i) => (i + 1) / 20);

/**
 * Forecast of ln(carry in m) of the next ball from the reference lie in standard conditions, mishits
 * included: the mixture of strikes round θ, each node widened by what is not known of θ, the golfer's
 * scatter and a day's unevenness.
 *
 * @param mean θ of the cell. @param variance its posterior variance.
 * @param scatter2 σ² of a solid full swing. @param loose share of solid strikes that are loose.
 * @param mishits π at the anchor loft, already raised for mishits that were never logged.
 */
export function nextBall(
  cell: Cell,
  mean: number,
  variance: number,
  mishits: number,
  scatter2: number,
  loose: number,
): GaussianMixture {
  const own = scatter2 * scatterFactor(cell.swing) ** 2;
  const rest = variance + PRIOR.forecast ** 2;
  const mishit = mishitShare(mishits, Math.max(0.3, 1 - PRIOR.mishitPerDegree * loftAboveAnchor(cell)));
  const solid = 1 - mishit;
  const eased = cell.swing === 'full' ? PRIOR.eased : 0;
  const nodes: [weight: number, mean: number, variance: number][] = [
    [solid * (1 - loose - eased), mean, own + rest],
    [solid * loose, mean, own * PRIOR.looseFactor ** 2 + rest],
    [solid * eased, mean + Math.log(1 - PRIOR.easedBy), own + rest],
    ...PRIOR.shortfall.map((share, s): [number, number, number] => [
      mishit * PRIOR.shortfallWeight[s],
      mean + Math.log(1 - share),
      own + rest + PRIOR.mishitScatter ** 2,
    ]),
  ];
  const used = nodes.filter(([weight]) => weight > 0);
  return {
    weights: Float64Array.from(used, ([weight]) => weight),
    means: Float64Array.from(used, ([, centre]) => centre),
    deviations: Float64Array.from(used, ([, , v]) => Math.sqrt(v)),
  };
}

/** The 19 forecast quantiles in metres, p05 to p95. */
export function forecastQuantiles(forecast: GaussianMixture): number[] {
  return FORECAST_PROBABILITIES.map((p) => Math.exp(mixtureQuantile(forecast, p)));
}
