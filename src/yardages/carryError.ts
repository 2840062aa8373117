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
const GNSS_FLOOR = 1.83; // 2 yd; two fixes minutes apart share too much to do better
/** The 95 % radius of a two-dimensional normal error in units of its standard deviation: √(−2 ln .05). */
const R95 = 2.448;
/** A phone's usual reported accuracy when none was kept. */
const USUAL_ACCURACY = 4.9;
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

const errorOf: Record<KnownBy, (shot: Shot, carry_m: number) => number> = {
  laser: (shot, carry_m) => {
    const long = shot.flag_m === null ? USUAL_OFFSET : carry_m - shot.flag_m;
    const offset = Math.hypot(long, shot.offline_m ?? 0);
    return Math.hypot(LASER, JUDGED_OFFSET_SHARE * offset + JUDGED_OFFSET_LEAST);
  },
  gnss: (shot) => {
    const from = shot.marks.ball?.accuracy_m ?? USUAL_ACCURACY;
    const to = shot.marks.pitch?.accuracy_m ?? USUAL_ACCURACY;
    return Math.max(GNSS_FLOOR, Math.hypot(from, to) / R95);
  },
  paced: (_, carry_m) => PACED_SHARE * carry_m,
  typed: () => TYPED,
  judged: () => JUDGED,
  total: (_, carry_m) => Math.hypot(0.03 * carry_m, GNSS_FLOOR),
};

/** Standard error of a bound ("cleared 238", "short of it"): as uncertain as a typed distance. */
export const BOUND_ERROR: Metres = metres(TYPED);
