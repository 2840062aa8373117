import type { Degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import { type MetresPerSecond, metresPerSecond } from '../units/metresPerSecond.ts';

/**
 * The wind on one shot, at its reference height: `head_mps` blows into the golfer's face (negative:
 * from behind), `fromRight_mps` from the right (negative: from the left).
 */
export interface Wind {
  readonly head_mps: MetresPerSecond;
  readonly fromRight_mps: MetresPerSecond;
  /** Height above ground that the speeds belong to: 2 m felt, 10 m forecast. */
  readonly reference_m: Metres;
  /** Roughness length of the ground; 0 is the limit of perfectly smooth ground, where the wind is uniform. */
  readonly roughness_m: Metres;
}

/** Roughness length of open country with short grass, m. Source: usual meteorological value, from memory. */
export const OPEN_GROUND = metres(0.03);
/** Height at which weather services give the wind, m. Source: WMO convention. */
export const FORECAST_HEIGHT = metres(10);
/** Height at which a golfer feels the wind, m. Own convention. */
export const FELT_HEIGHT = metres(2);

/** No wind at all. */
export const CALM: Wind = {
  head_mps: metresPerSecond(0),
  fromRight_mps: metresPerSecond(0),
  reference_m: FELT_HEIGHT,
  roughness_m: OPEN_GROUND,
};

/**
 * How strong the wind is at a height, as a multiple of its strength at the reference height.
 *
 * Logarithmic profile ln((y+z0)/z0)/ln((z_ref+z0)/z0); nothing at or below the height the ball was
 * struck from, since the ground below it is not known.
 *
 * @param height_m above the ball's start.
 * Source: logarithmic wind profile of neutral air, standard meteorology.
 */
export function windShare(height_m: number, reference_m: number, roughness_m: number): number {
  if (roughness_m === 0) return 1;
  if (height_m <= 0) return 0;
  return Math.log(1 + height_m / roughness_m) / Math.log(1 + reference_m / roughness_m);
}

function fromAngle(radians: number, speed: MetresPerSecond, reference_m: Metres): Wind {
  if (!(speed >= 0)) throw new RangeError(`wind speed ${speed} m/s: 0 or more is needed`);
  if (!(reference_m > 0)) throw new RangeError(`wind reference height ${reference_m} m: above 0 is needed`);
  return {
    head_mps: metresPerSecond(speed * Math.cos(radians)),
    fromRight_mps: metresPerSecond(speed * Math.sin(radians)),
    reference_m,
    roughness_m: OPEN_GROUND,
  };
}

/**
 * The wind as a golfer calls it: from 12 o'clock it blows into the face, from 3 from the right, from 6 from behind.
 *
 * @param fromClock hours on the clock face, any figure; 12 and 0 are the same.
 * @param speed 0 or more, m/s at `reference_m`.
 * @throws RangeError on a negative speed, a height not above 0, or a clock position that is not finite.
 */
export function windFromClock(fromClock: number, speed: MetresPerSecond, reference_m: Metres): Wind {
  if (!Number.isFinite(fromClock)) throw new RangeError(`wind from ${fromClock} o'clock: a finite number is needed`);
  return fromAngle((fromClock * Math.PI) / 6, speed, reference_m);
}

/**
 * The wind on a shot from two bearings, both clockwise from true north.
 *
 * @param windFrom the bearing the wind comes from.
 * @param shotBearing the bearing the shot is played along.
 * @param speed 0 or more, m/s at `reference_m`.
 * @throws RangeError on a negative speed or a height not above 0.
 */
export function windFromBearings(
  windFrom: Degrees,
  shotBearing: Degrees,
  speed: MetresPerSecond,
  reference_m: Metres,
): Wind {
  return fromAngle(((windFrom - shotBearing) * Math.PI) / 180, speed, reference_m);
}
