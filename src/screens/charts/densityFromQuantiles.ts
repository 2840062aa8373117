import { normalDistribution } from '../../statistics/normal.ts';

/** A point of a curve: where, and how dense there, in one over the unit of where. */
export interface CurvePoint {
  readonly at: number;
  readonly density: number;
}

/** Mass between two neighbours of 19 quantiles (p05, p10 … p95), and beyond the first and the last. */
const SLAB_MASS = 0.05;

/** How far a tail is drawn beyond its last quantile, in widths of the last slab. Of the picture only, no source. */
const TAIL_SLABS = 2;

/** Width of the smoothing kernel as a share of the distance from p10 to p90. Of the picture only, no source. */
const SMOOTHING = 0.07;

/**
 * The density curve of a distribution known by its 19 quantiles p05, p10 … p95, for drawing.
 *
 * Between two quantiles lies a twentieth of the mass, taken as even; the tails beyond are drawn even
 * over two more widths of the slab beside them. The slabs are smoothed by a normal kernel, in closed form:
 * a slab from a to b of mass m gives m/(b−a)·(Φ((x−a)/h) − Φ((x−b)/h)) at x. The area under the curve is 1.
 *
 * @param quantiles 19 figures in rising order, in any unit of length; equal neighbours are allowed.
 * @param points how many points to give, evenly spaced from end to end of the tails; at least 2.
 * @throws RangeError when there are not 19 quantiles, or they all are one.
 */
export function densityFromQuantiles(quantiles: readonly number[], points: number): CurvePoint[] {
  if (quantiles.length !== 19) throw new RangeError(`19 quantiles are needed, ${quantiles.length} were given`);
  const spread = quantiles[17] - quantiles[1];
  if (!(spread > 0)) throw new RangeError(`quantiles from ${quantiles[0]} to ${quantiles[18]} have no spread`);
  const kernel = SMOOTHING * spread;
  const least = spread / 200;
  const first = quantiles[0] - TAIL_SLABS * Math.max(least, quantiles[1] - quantiles[0]);
  const last = quantiles[18] + TAIL_SLABS * Math.max(least, quantiles[18] - quantiles[17]);
  const edges = [first, ...quantiles, last];
  const from = first - 2 * kernel;
  const to = last + 2 * kernel;
  return Array.from({ length: points }, (_, i) => {
    const at = from + ((to - from) * i) / (points - 1);
    let density = 0;
    for (let k = 0; k + 1 < edges.length; k += 1) {
      const width = Math.max(least, edges[k + 1] - edges[k]);
      const middle = (edges[k] + edges[k + 1]) / 2;
      const above = normalDistribution((at - middle + width / 2) / kernel);
      const below = normalDistribution((at - middle - width / 2) / kernel);
      density += (SLAB_MASS / width) * (above - below);
    }
    return { at, density };
  });
}
