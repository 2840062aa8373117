import type { Adjusted } from '../flight/standardise.ts';
import { PRIOR } from '../yardages/priorTable.ts';
import { sharedIndex } from '../yardages/sharedEffects.ts';

/**
 * How an adjustment loads on the golfer's own response to wind and air: pairs of [index of the shared
 * effect, loading of ln carry in these conditions].
 *
 * The flight model's error about wind and air is the same for all of a golfer's shots in like
 * conditions. It is therefore no variance but an unknown of his own: of the size of the model's error,
 * in units of the response's width in the prior. His response to wind may also lean with loft, since
 * another ball or launch helps long clubs where it hurts short ones.
 *
 * @param loft_deg of the club as built then.
 */
export function responseLoadings(adjusted: Adjusted, loft_deg: number): [index: number, loading: number][] {
  const { windLog, airLog, sigmas } = adjusted;
  const loadings: [number, number][] = [];
  if (windLog !== 0) {
    const wind = (Math.sign(windLog) * sigmas.windModelLog) / PRIOR.windResponse;
    loadings.push([sharedIndex('wind'), wind]);
    loadings.push([sharedIndex('wind by loft'), (wind * (loft_deg - PRIOR.anchorLoft_deg)) / PRIOR.windLoftSpan_deg]);
  }
  if (airLog !== 0) loadings.push([sharedIndex('air'), (Math.sign(airLog) * sigmas.airModelLog) / PRIOR.airResponse]);
  return loadings;
}
