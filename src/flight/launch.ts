import { type Metres, metres } from '../units/metres.ts';
import { STANDARD_DENSITY } from './air.ts';
import { type FlownClub, launchOf } from './flownClub.ts';
import { fly, type Launch, still } from './trajectory.ts';

/** The launch whose carry in standard conditions is the stock carry. */
export interface ClubLaunch {
  readonly kind: 'launch';
  readonly club: FlownClub;
  readonly launch: Launch;
  /** What that launch carries in standard conditions: the stock carry to within .1 mm. */
  readonly standardCarry_m: Metres;
}

/** No ball speed within reason carries that far with that club. */
export interface NoLaunch {
  readonly kind: 'no launch';
  readonly why: string;
}

/** Ball speeds searched, m/s. The fastest ever measured are near 100 (from memory). */
const SLOWEST = 1;
const FASTEST = 150;
const CLOSE_ENOUGH_M = 1e-4;
const MOST_FLIGHTS = 60;

const STANDARD_AIR = still(STANDARD_DENSITY);

/**
 * Carry of a launch in standard conditions on level ground, m; NaN-free: a ball that never lands is a breach.
 * @throws RangeError when the flight has no landing, which still standard air does not allow.
 */
export function standardCarry(launch: Launch): Metres {
  const flight = fly(launch, STANDARD_AIR);
  if (flight.kind !== 'landed') {
    throw new RangeError(`ball speed ${launch.speed_mps} m/s never lands in still standard air`);
  }
  return flight.carry_m;
}

/**
 * How the ball must leave this club to carry its stock carry in standard conditions.
 *
 * Launch angle and spin follow from kind, loft and ball speed; only the ball speed is sought (a secant kept
 * inside a bracket, at most 60 flights, about 6 as a rule). A partial swing is the same club at a lower
 * speed, so give its own stock carry.
 *
 * @param stockCarry_m above 0. Every club reaches 20 to 200 m, woods and irons 330 m.
 * @returns the launch, or `no launch` when no ball speed up to 150 m/s carries that far.
 * @throws RangeError when the carry is not above 0, or the loft outside 0 to 90°.
 * Source: flownClub.ts (from memory) and trajectory.ts.
 */
export function launchFor(club: FlownClub, stockCarry_m: Metres): ClubLaunch | NoLaunch {
  if (!(stockCarry_m > 0)) throw new RangeError(`stock carry ${stockCarry_m} m: above 0 is needed`);
  const launchAt = launchOf(club);
  let low = SLOWEST;
  let high = FASTEST;
  // A first guess: carry grows about in proportion to speed, and as its square for short shots.
  let speed = Math.min(120, Math.max(3, 6 + 1.9 * Math.sqrt(stockCarry_m) + 0.14 * stockCarry_m));
  let lastSpeed = 0;
  let lastMiss = 0;
  for (let n = 0; n < MOST_FLIGHTS && high - low > 1e-9; n++) {
    const launch = launchAt(speed);
    const carry = standardCarry(launch);
    const miss = carry - stockCarry_m;
    if (Math.abs(miss) <= CLOSE_ENOUGH_M) {
      return { kind: 'launch', club, launch, standardCarry_m: metres(carry) };
    }
    if (miss > 0) high = speed;
    else low = speed;
    const slope = n === 0 ? (1.6 * stockCarry_m) / speed : (miss - lastMiss) / (speed - lastSpeed);
    lastSpeed = speed;
    lastMiss = miss;
    const next = slope > 0 ? speed - miss / slope : Number.NaN;
    speed = next > low && next < high ? next : 0.5 * (low + high);
  }
  return {
    kind: 'no launch',
    why: `no ball speed up to ${FASTEST} m/s carries ${stockCarry_m.toFixed(0)} m with ${club.loft_deg}° of loft`,
  };
}
