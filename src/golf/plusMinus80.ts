import { type Metres, metres } from '../units/metres.ts';

/** Standard normal deviate of an interval that holds 8 in 10: Φ⁻¹(.9). */
const DEVIATE_80 = 1.2815515655446;

/**
 * Half of the interval that holds a measured distance 8 times in 10, from its standard error: the ± that is
 * shown beside every number of the app, so that all mean the same.
 */
export function plusMinus80(error: Metres): Metres {
  return metres(DEVIATE_80 * error);
}
