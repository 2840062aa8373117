/** One tap: when, in milliseconds, and where on the screen, in pixels. */
export interface Tap {
  readonly at_ms: number;
  readonly x: number;
  readonly y: number;
}

/** Two taps on one spot closer than this are one tap of a shaking hand. */
export const GUARD_MS = 300;

/** How far apart two taps on one spot may land, in pixels: half a key. */
const ONE_SPOT_PX = 40;

/**
 * Decides which taps count: one tap is one action. A tap that follows on the same spot within
 * {@link GUARD_MS} of the last is the same one bouncing; on another spot it is meant. A bounce starts
 * the time anew, so that a trembling thumb counts once.
 */
export function tapGuard(): (tap: Tap) => boolean {
  let last: Tap | null = null;
  return (tap) => {
    const bounces =
      last !== null && tap.at_ms - last.at_ms < GUARD_MS && Math.hypot(tap.x - last.x, tap.y - last.y) < ONE_SPOT_PX;
    last = tap;
    return !bounces;
  };
}
