import { LEAST_MARK_ERROR, markError } from '../golf/markError.ts';
import type { KnownBy, Shot } from '../golf/shot.ts';
import { type Metres, metres } from '../units/metres.ts';

/*
 * Standard errors in metres of a carry by how it was known. Tuned by simulation and from common
 * practice; the figure for satellite marks follows from the accuracy that phones report.
 */
const LASER = 1.0; // 1.1 yd
const JUDGED_OFFSET_SHARE = 0.15;
const JUDGED_OFFSET_LEAST = 0.46; // .5 yd
const TYPED = 2.74; // 3 yd
const JUDGED = 5.03; // 5.5 yd; golfers' guesses heap on fives
const PACED_SHARE = 0.025;
/** How far from the flag a ball pitches when the shot does not say. */
const USUAL_OFFSET = 6;

/**
 * Standard error of a shot's measured carry: what was stored with it, else by how it was known.
 *
 * Laser to the flag and the pitch judged against it: √(laser² + (.15 offset + .5 yd)²). Two satellite
 * fixes of 95 % radius r₁, r₂: √(r₁² + r₂²) / 2.448. Paced: 2.5 %.
 *
 * @throws RangeError when the shot has no carry.
 */
export function carryError(shot: Shot): Metres {
  const { carry } = shot;
  if (!carry) throw new RangeError(`shot ${shot.id} has no carry: null m`);
  if (carry.error_m !== null) return metres(Math.max(0.1, carry.error_m));
  return metres(errorOf[carry.by](shot, carry.m));
}

/** A place of which no mark was kept: as uncertain as a phone usually is. */
const UNMARKED = { accuracy_m: null };

const errorOf: Record<KnownBy, (shot: Shot, carry_m: number) => number> = {
  laser: (shot, carry_m) => {
    const long = shot.flag_m === null ? USUAL_OFFSET : carry_m - shot.flag_m;
    const offset = Math.hypot(long, shot.offline_m ?? 0);
    return Math.hypot(LASER, JUDGED_OFFSET_SHARE * offset + JUDGED_OFFSET_LEAST);
  },
  gnss: ({ marks: { ball, pitch } }) => markError(ball ?? UNMARKED, pitch ?? UNMARKED),
  paced: (_, carry_m) => PACED_SHARE * carry_m,
  typed: () => TYPED,
  judged: () => JUDGED,
  total: (_, carry_m) => Math.hypot(0.03 * carry_m, LEAST_MARK_ERROR),
};

/** Standard error of a bound ("cleared 238", "short of it"): as uncertain as a typed distance. */
export const BOUND_ERROR: Metres = metres(TYPED);
