/** How the air resists and lifts a ball, against the spin ratio S = (surface speed of the spin)/(speed through the air). */
export interface DragAndLift {
  /** Drag coefficient at a spin ratio, S ≥ 0. */
  readonly drag: (spinRatio: number) => number;
  /** Lift coefficient at a spin ratio, S ≥ 0. */
  readonly lift: (spinRatio: number) => number;
}

/**
 * Share of the measured drag that a modern ball has. Own calibration, ± .1: with .90 the trajectory of
 * the Overall Distance Standard's launch carries what the standard's total implies.
 */
export const MODERN_DRAG = 0.9;

/**
 * Drag coefficient of the ball measured in the wind tunnel: min(.52, .2132 + .4269 S).
 * Source: own fit to Bearman & Harvey 1976 (hexagonal dimples, 2,000–6,000 rpm, 30–88 m/s), within .03.
 */
export function measuredDrag(spinRatio: number): number {
  return Math.min(0.52, 0.2132 + 0.4269 * spinRatio);
}

/**
 * Lift coefficient of the ball measured in the wind tunnel: .5954 S / (.2583 + S).
 * Source: own fit to Bearman & Harvey 1976, within .08.
 */
export function measuredLift(spinRatio: number): number {
  return (0.5954 * spinRatio) / (0.2583 + spinRatio);
}

/** The ball this book flies: the measured lift, and the measured drag scaled to a modern ball. */
export const MODERN_BALL: DragAndLift = {
  drag: (spinRatio) => MODERN_DRAG * measuredDrag(spinRatio),
  lift: measuredLift,
};
