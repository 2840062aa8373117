import type { PriorScales } from './carryPrior.ts';
import { PRIOR } from './priorTable.ts';

/**
 * What many shots of one golfer have in common beside the cells, each an unknown of the joint
 * normal distribution: what rough and sand cost him, the practice ground, his response to wind
 * (and how it goes with loft), to air, and the run of the ball, and the steps of his drift.
 */
export const SHARED_EFFECTS = [
  'rough',
  'sand',
  'practice own',
  'range ball',
  'wind',
  'wind by loft',
  'air',
  'roll',
] as const;

export type SharedEffect = (typeof SHARED_EFFECTS)[number];

/** The golfer's own responses to wind and air, which a day's card needs beside the carries. */
export const RESPONSES = ['wind', 'wind by loft', 'air'] as const satisfies readonly SharedEffect[];

/** How many steps the drift is made of. */
export const DRIFT_STEPS = PRIOR.driftKnots_days.length - 1;

/** How many shared unknowns there are: named ones first, then the steps of the drift. */
export const SHARED_COUNT = SHARED_EFFECTS.length + DRIFT_STEPS;

/** The place of a named effect among the shared unknowns. */
export function sharedIndex(effect: SharedEffect): number {
  return SHARED_EFFECTS.indexOf(effect);
}

/**
 * Prior variances of the shared unknowns; their prior means are 0 (offsets and the response of 1 are
 * taken out of the shots beforehand).
 */
export function sharedVariances(scales: PriorScales): Float64Array {
  const named: Record<SharedEffect, number> = {
    rough: PRIOR.rough,
    sand: PRIOR.sand,
    'practice own': PRIOR.practiceOwn,
    'range ball': PRIOR.rangeBall,
    wind: PRIOR.windResponse,
    'wind by loft': PRIOR.windByLoft,
    air: PRIOR.airResponse,
    roll: 1,
  };
  const variances = new Float64Array(SHARED_COUNT);
  SHARED_EFFECTS.forEach((effect, i) => {
    variances[i] = named[effect] ** 2;
  });
  for (let step = 0; step < DRIFT_STEPS; step++) {
    const days = PRIOR.driftKnots_days[step + 1] - PRIOR.driftKnots_days[step];
    variances[SHARED_EFFECTS.length + step] = (PRIOR.driftPer210Days * scales.walk) ** 2 * (days / 210);
  }
  return variances;
}

/**
 * How much of each step of the drift lies between a shot and now: 1 for steps wholly passed, a share
 * for the one under way. A golfer's ln carry on that day is θ plus the sum of these times the steps.
 *
 * @param age_days days from the shot to the moment of the book, 0 or more.
 */
export function driftShares(age_days: number): number[] {
  const knots = PRIOR.driftKnots_days;
  return Array.from({ length: DRIFT_STEPS }, (_, step) =>
    Math.min(1, Math.max(0, (age_days - knots[step]) / (knots[step + 1] - knots[step]))),
  );
}
