import { type Degrees, degrees } from '../units/degrees.ts';
import { type Metres, metres } from '../units/metres.ts';
import { type MetresPerSecond, metresPerSecond } from '../units/metresPerSecond.ts';
import { type DragAndLift, MODERN_BALL } from './dragAndLift.ts';
import { CALM, type Wind } from './wind.ts';

/** How the ball leaves the club: speed, angle above the horizon, backspin in rad/s. It starts straight along the line. */
export interface Launch {
  readonly speed_mps: MetresPerSecond;
  readonly angle_deg: Degrees;
  readonly spin_radps: number;
}

/** What the ball flies through. */
export interface Surroundings {
  /** Density of the air, kg/m³; 0 is a vacuum. */
  readonly density: number;
  readonly wind: Wind;
}

/** A flight that came down: carry along the line, offline (+ right), and how it came down. */
export interface Landed {
  readonly kind: 'landed';
  readonly carry_m: Metres;
  readonly offline_m: Metres;
  /** Greatest height above the ball's start. */
  readonly apex_m: Metres;
  readonly time_s: number;
  readonly speed_mps: MetresPerSecond;
  /** Angle of descent below the horizon. */
  readonly angle_deg: Degrees;
  readonly spin_radps: number;
}

/** A flight that never comes down at the height asked for. */
export interface Unreachable {
  readonly kind: 'unreachable';
  readonly why: 'above the top of the flight' | 'still in the air after a minute';
}

/** How a flight ended. */
export type Trajectory = Landed | Unreachable;

/** Greatest mass of a ball, kg. Source: Equipment Rules (R&A/USGA), 45.93 g. */
export const BALL_MASS = 0.04593;
/** Half the least diameter of a ball, m. Source: Equipment Rules (R&A/USGA), 42.67 mm. */
export const BALL_RADIUS = 0.04267 / 2;
/** Standard acceleration of free fall, m/s². Source: ISO 80000-3. */
export const GRAVITY = 9.80665;
/** How fast spin dies: ω̇ = −2e-5 ω |v| / r. From memory of published measurements (about 4 % a second). */
const SPIN_DECAY = 2e-5;
/** Time step, s: within .05 m of a tenth of it. */
const STEP = 0.1;
/** No ball stays up longer; the loop is bounded by it, s. */
const LONGEST = 60;

// The state is x along the line, y up, z right, their rates, and the spin: one scratch set for the
// whole module keeps the loop free of allocations; a flight is computed in one go, so it is never shared.
const SIZE = 7;
const now = new Float64Array(SIZE);
const after = new Float64Array(SIZE);
const probe = new Float64Array(SIZE);
const k1 = new Float64Array(SIZE);
const k2 = new Float64Array(SIZE);
const k3 = new Float64Array(SIZE);
const k4 = new Float64Array(SIZE);

let airFactor = 0;
let windAlong = 0;
let windRight = 0;
let windy = false;
let roughness = 0;
let ball: DragAndLift = MODERN_BALL;

function rates(s: Float64Array, out: Float64Array): void {
  let vx = s[3];
  const vy = s[4];
  let vz = s[5];
  out[0] = vx;
  out[1] = vy;
  out[2] = vz;
  if (windy) {
    const height = s[1];
    const strength = roughness === 0 ? 1 : height > 0 ? Math.log(1 + height / roughness) : 0;
    vx -= windAlong * strength;
    vz -= windRight * strength;
  }
  const speed = Math.sqrt(vx * vx + vy * vy + vz * vz);
  if (speed < 1e-9) {
    out[3] = 0;
    out[4] = -GRAVITY;
    out[5] = 0;
    out[6] = 0;
    return;
  }
  const spinRatio = (s[6] * BALL_RADIUS) / speed;
  const drag = airFactor * speed * ball.drag(spinRatio);
  const lift = airFactor * speed * ball.lift(spinRatio);
  out[3] = -drag * vx - lift * vy;
  out[4] = -drag * vy + lift * vx - GRAVITY;
  out[5] = -drag * vz;
  out[6] = (-SPIN_DECAY * s[6] * speed) / BALL_RADIUS;
}

/** One step of the classical Runge–Kutta method of fourth order, from `now` into `after`; k1 holds the rates at `now`. */
function advance(h: number): void {
  for (let i = 0; i < SIZE; i++) probe[i] = now[i] + 0.5 * h * k1[i];
  rates(probe, k2);
  for (let i = 0; i < SIZE; i++) probe[i] = now[i] + 0.5 * h * k2[i];
  rates(probe, k3);
  for (let i = 0; i < SIZE; i++) probe[i] = now[i] + h * k3[i];
  rates(probe, k4);
  for (let i = 0; i < SIZE; i++) after[i] = now[i] + (h / 6) * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
}

/** Height within the step just taken, at share s of it: the cubic through both ends' heights and climb rates. */
function heightWithin(s: number, h: number): number {
  const r = 1 - s;
  return r * r * (1 + 2 * s) * now[1] + s * s * (3 - 2 * s) * after[1] + h * s * r * (r * now[4] - s * after[4]);
}

/** Share of the step at which the climb of that cubic turns over, 0 to 1; its climb rate changes sign within. */
function turnWithin(h: number): number {
  const rise = (after[1] - now[1]) / h;
  const a = 3 * (now[4] + after[4] - 2 * rise);
  const b = 2 * (3 * rise - 2 * now[4] - after[4]);
  const c = now[4];
  let low = 0;
  let high = 1;
  for (let i = 0; i < 40; i++) {
    const mid = 0.5 * (low + high);
    if ((a * mid + b) * mid + c > 0) low = mid;
    else high = mid;
  }
  return 0.5 * (low + high);
}

function checked(launch: Launch, surroundings: Surroundings, rise: number, step: number): void {
  const { speed_mps: speed, angle_deg: angle, spin_radps: spin } = launch;
  if (!(speed >= 0 && speed <= 200)) throw new RangeError(`ball speed ${speed} m/s is outside 0 to 200 m/s`);
  if (!(angle >= -90 && angle <= 90)) throw new RangeError(`launch angle ${angle}° is outside −90° to 90°`);
  if (!(spin >= 0 && spin <= 10_000)) throw new RangeError(`spin ${spin} rad/s is outside 0 to 10000 rad/s`);
  const { density, wind } = surroundings;
  if (!(density >= 0 && density <= 2)) throw new RangeError(`air density ${density} kg/m³ is outside 0 to 2 kg/m³`);
  if (!(Math.hypot(wind.head_mps, wind.fromRight_mps) <= 100)) {
    throw new RangeError(`wind ${wind.head_mps} and ${wind.fromRight_mps} m/s is above 100 m/s`);
  }
  if (!(wind.roughness_m >= 0 && wind.reference_m >= 0.1)) {
    throw new RangeError(
      `wind reference ${wind.reference_m} m (0.1 or more), roughness ${wind.roughness_m} m (0 or more)`,
    );
  }
  if (!Number.isFinite(rise)) throw new RangeError(`landing height ${rise} m is not finite`);
  if (!(step >= 1e-4 && step <= STEP)) throw new RangeError(`time step ${step} s is outside 0.0001 to ${STEP} s`);
}

/**
 * Where a struck ball comes down.
 *
 * A point ball with drag, backspin lift and dying spin in air of one density and a wind that grows with
 * height: a = −K|v|C_D v + K|v|C_L (ẑ×v) − g, K = ρA/2m, v relative to the wind. The spin axis is level,
 * so only the wind moves the ball offline. "Landed" is the first time it falls through the height asked
 * for; a target above the top of the flight is `unreachable`, and so is one not met within 60 s.
 *
 * @param rise_m height of the landing point above the ball's start; negative: below.
 * @param dragAndLift another ball's coefficients; left out: the modern ball.
 * @param step_s time step, at most .1 s.
 * @throws RangeError on a figure outside its range (speed 0–200 m/s, angle ±90°, spin 0–10,000 rad/s, density 0–2 kg/m³).
 * Source: equations of motion as in Bearman & Harvey 1976; coefficients in dragAndLift.ts. Step error ≤ .05 m.
 */
export function fly(
  launch: Launch,
  surroundings: Surroundings,
  rise_m = 0,
  dragAndLift: DragAndLift = MODERN_BALL,
  step_s: number = STEP,
): Trajectory {
  checked(launch, surroundings, rise_m, step_s);
  const { wind } = surroundings;
  ball = dragAndLift;
  airFactor = (surroundings.density * Math.PI * BALL_RADIUS * BALL_RADIUS) / (2 * BALL_MASS);
  roughness = wind.roughness_m;
  windy = wind.head_mps !== 0 || wind.fromRight_mps !== 0;
  const scale = roughness === 0 ? 1 : 1 / Math.log(1 + wind.reference_m / roughness);
  windAlong = -wind.head_mps * scale;
  windRight = -wind.fromRight_mps * scale;

  const angle = (launch.angle_deg * Math.PI) / 180;
  now.fill(0);
  now[3] = launch.speed_mps * Math.cos(angle);
  now[4] = launch.speed_mps * Math.sin(angle);
  now[6] = launch.spin_radps;

  let apex = 0;
  const steps = Math.ceil(LONGEST / step_s);
  for (let n = 0; n < steps; n++) {
    rates(now, k1);
    advance(step_s);
    let low = 0;
    if (now[4] > 0 && after[4] <= 0) {
      low = turnWithin(step_s);
      apex = Math.max(apex, heightWithin(low, step_s));
    } else {
      apex = Math.max(apex, after[1]);
    }
    if (after[4] <= 0 && after[1] < rise_m) {
      if (apex < rise_m) return { kind: 'unreachable', why: 'above the top of the flight' };
      return landing(low, n * step_s, step_s, rise_m, apex);
    }
    now.set(after);
  }
  return { kind: 'unreachable', why: 'still in the air after a minute' };
}

function landing(from: number, time: number, step: number, rise: number, apex: number): Landed {
  let low = from;
  let high = 1;
  for (let i = 0; i < 40; i++) {
    const mid = 0.5 * (low + high);
    if (heightWithin(mid, step) >= rise) low = mid;
    else high = mid;
  }
  // The cubic finds the moment; stepping there afresh and one straight correction keep the order of the method.
  let part = low * step;
  advance(part);
  if (after[4] < -1e-3) {
    const late = (rise - after[1]) / after[4];
    part += late;
    for (let i = 0; i < 3; i++) after[i] += late * after[i + 3];
  }
  const across = Math.hypot(after[3], after[5]);
  return {
    kind: 'landed',
    carry_m: metres(after[0]),
    offline_m: metres(after[2]),
    apex_m: metres(apex),
    time_s: time + part,
    speed_mps: metresPerSecond(Math.hypot(across, after[4])),
    angle_deg: degrees((Math.atan2(-after[4], across) * 180) / Math.PI),
    spin_radps: after[6],
  };
}

/** Still air of one density. */
export function still(density: number): Surroundings {
  return { density, wind: CALM };
}
