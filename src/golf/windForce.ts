import { type MetresPerSecond, metresPerSecond } from '../units/metresPerSecond.ts';

/** A wind as the eye judges it, by its force on the Beaufort scale. */
export type WindForce = 2 | 3 | 4 | 5 | 6;

/** The forces that golf is played in, the lightest first. */
export const windForces: readonly WindForce[] = [2, 3, 4, 5, 6];

/**
 * Least and most wind speed of each force in m/s, 10 m above open ground. Source: World Meteorological
 * Organization, Manual on Codes (WMO-No. 306), code table 1100, from memory.
 */
const SPEED_MPS: Readonly<Record<WindForce, readonly [number, number]>> = {
  2: [1.6, 3.3],
  3: [3.4, 5.4],
  4: [5.5, 7.9],
  5: [8.0, 10.7],
  6: [10.8, 13.8],
};

/** Height above the ground that the speeds of the scale belong to, in metres. Source: as {@link SPEED_MPS}. */
export const FORCE_REFERENCE_M = 10;

/** The middle of a force's range of wind speeds, positive, at {@link FORCE_REFERENCE_M}. */
export function speedOfForce(force: WindForce): MetresPerSecond {
  const [least, most] = SPEED_MPS[force];
  return metresPerSecond((least + most) / 2);
}

/** The force whose range a wind speed at {@link FORCE_REFERENCE_M} falls in; the strongest beyond it, null below the lightest. */
export function forceOfSpeed(speed: MetresPerSecond): WindForce | null {
  const reached = windForces.filter((force) => speed >= SPEED_MPS[force][0]);
  return reached.at(-1) ?? null;
}

/** How near a speed must be to the middle of a force to stand for it, m/s: what a stored figure may lose by rounding. */
const SAME_MPS = 0.005;

/** The force that a wind speed is the very middle of, as it is when the golfer told the force alone; null: of none. */
export function forceOfMiddle(speed: MetresPerSecond): WindForce | null {
  return windForces.find((force) => Math.abs(speedOfForce(force) - speed) < SAME_MPS) ?? null;
}
