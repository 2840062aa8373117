import type { Ground } from '../golf/conditions.ts';
import { type Metres, metres } from '../units/metres.ts';
import { BALL_RADIUS, GRAVITY, type Landed } from './trajectory.ts';

/** How a kind of ground takes a ball. */
interface GroundResponse {
  /** How much a landing ball tilts the turf up before itself, as a multiple of the measured green's. */
  readonly give: number;
  /** How much it bounces, as a multiple of the measured turf's restitution. */
  readonly bounce: number;
  /** Resistance of the grass to the ball running out, share of its weight. */
  readonly resistance: number;
}

/**
 * Own settings, not measured: the source's turf lets a drive run 60 yd, so give, bounce and resistance of
 * normal ground are set until the runs are those golfers see (a 230 yd drive about 20 yd, a 150 yd 7 iron
 * about 5, a full wedge about 0; common practice, no source). Soft and firm lie about it by judgement.
 */
const GROUND: Readonly<Record<Ground, GroundResponse>> = {
  soft: { give: 1.3, bounce: 0.55, resistance: 0.8 },
  normal: { give: 1.15, bounce: 0.7, resistance: 0.6 },
  firm: { give: 0.9, bounce: 0.85, resistance: 0.4 },
};

/** Tilt of the turf at 18.6 m/s and 44.4° of descent, proportional to both, degrees. Source: Penner 2002, from memory. */
const TILT = 15.4;
const TILT_SPEED = 18.6;
const TILT_ANGLE = 44.4;
/** Sliding friction of ball on turf. Source: Penner 2002, from memory. */
const FRICTION = 0.4;
/** A bounce rising slower than this is rolling, m/s: less than 2 cm high. Own choice. */
const LEAST_RISE = 0.6;
const MOST_BOUNCES = 30;

/** Coefficient of restitution of turf at a normal speed, m/s. Source: Penner 2002 (fit to Haake's drops), from memory. */
function restitution(speed: number): number {
  return speed < 20 ? 0.51 - 0.0375 * speed + 0.000903 * speed * speed : 0.12;
}

/**
 * How far a ball runs on from its pitch mark on level ground, bounces and roll together.
 *
 * The ball meets turf tilted up by its own dent, slides or grips there, bounces without air, and rolls
 * out on constant resistance. Backspin may bring it back: the run is then negative.
 *
 * @param landing how it came down: speed, angle, backspin.
 * @param ground soft, normal or firm.
 * @returns metres along the line, + on, − back; the spread about it is 40 % and 2 yd (roll.ts).
 * Source: form after Penner 2002 (run of a golf ball) and Penner 2003 (review), its values from memory; ground set by us.
 */
export function bounceAndRun(landing: Pick<Landed, 'speed_mps' | 'angle_deg' | 'spin_radps'>, ground: Ground): Metres {
  const { give, bounce, resistance } = GROUND[ground];
  const descent = (landing.angle_deg * Math.PI) / 180;
  let along = landing.speed_mps * Math.cos(descent);
  let down = landing.speed_mps * Math.sin(descent);
  let spin = landing.spin_radps;
  let run = 0;
  for (let n = 0; n < MOST_BOUNCES && down > LEAST_RISE; n++) {
    const speed = Math.hypot(along, down);
    const angle = (Math.atan2(down, Math.abs(along)) * 180) / Math.PI;
    const tilt =
      (Math.sign(along) * (Math.min(45, give * TILT * (speed / TILT_SPEED) * (angle / TILT_ANGLE)) * Math.PI)) / 180;
    const cos = Math.cos(tilt);
    const sin = Math.sin(tilt);
    const tangent = along * cos - down * sin;
    const normal = Math.max(0, along * sin + down * cos);
    const e = Math.min(0.9, bounce * restitution(normal));
    const slip = tangent + BALL_RADIUS * spin;
    const grip = (2 / 7) * Math.abs(slip);
    const slide = FRICTION * (1 + e) * normal;
    let off = tangent;
    if (slide < grip) {
      off -= Math.sign(slip) * slide;
      spin -= (Math.sign(slip) * 2.5 * slide) / BALL_RADIUS;
    } else {
      off = (5 / 7) * tangent - (2 / 7) * BALL_RADIUS * spin;
      spin = -off / BALL_RADIUS;
    }
    along = off * cos - e * normal * sin;
    down = Math.max(0, off * sin + e * normal * cos);
    run += (2 * along * down) / GRAVITY;
  }
  // What slip is left is ground off at once; then the ball rolls out, slowed by 5/7 of resistance × g.
  const rolling = (5 / 7) * along - (2 / 7) * BALL_RADIUS * spin;
  return metres(run + (Math.sign(rolling) * rolling * rolling) / (2 * (5 / 7) * resistance * GRAVITY));
}
