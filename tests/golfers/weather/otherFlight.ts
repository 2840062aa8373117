import { STANDARD_DENSITY } from '../../../src/flight/air.ts';
import type { DragAndLift } from '../../../src/flight/dragAndLift.ts';
import { type FlownClub, launchOf } from '../../../src/flight/flownClub.ts';
import { fly, type Launch, type Surroundings, still } from '../../../src/flight/trajectory.ts';
import { degrees } from '../../../src/units/degrees.ts';
import type { RandomNumbers } from '../randomNumbers.ts';

/** How this golfer's ball leaves the club against the usual for its loft. */
export interface OwnLaunch {
  readonly higher_deg: number;
  readonly spin: number;
}

/** The ball of these golfers: another one than the model's (invented for the test; drag and lift as the issue demands). */
export const OTHER_BALL: DragAndLift = {
  drag: (spinRatio) => 0.24 + 0.18 * spinRatio,
  lift: (spinRatio) => 0.54 * spinRatio ** 0.4,
};

/** No golfer is further than this from the usual, in standard deviations. */
const FURTHEST = 2.5;
/** Ball speeds between which carries are looked up, m/s. */
const SLOWEST = 2;
const STEP = 3;
const NODES = 45;
const LOWEST_LAUNCH_deg = 3;

/** Launch ± 2° and spin ± 15 %, golfer by golfer, one standard deviation. */
export function drawOwnLaunch(numbers: RandomNumbers): OwnLaunch {
  const deviate = () => Math.max(-FURTHEST, Math.min(FURTHEST, numbers.normal()));
  return { higher_deg: 2 * deviate(), spin: Math.exp(0.15 * deviate()) };
}

/** What really becomes of a ball that would carry `standard_m` in standard conditions; null: it meets the hill before. */
export type FlyBall = (standard_m: number, surroundings: Surroundings, risePerMetre: number) => number | null;

/**
 * The flight of one golfer's balls with one club. Every ball, mishits too, leaves at the speed at which
 * it would carry its own distance in standard conditions.
 */
export function otherFlight(club: FlownClub, own: OwnLaunch): FlyBall {
  const usual = launchOf(club);
  const launchAt = (speed: number): Launch => {
    const launch = usual(speed);
    return {
      ...launch,
      angle_deg: degrees(Math.max(LOWEST_LAUNCH_deg, launch.angle_deg + own.higher_deg)),
      spin_radps: launch.spin_radps * own.spin,
    };
  };
  const carryAt = (speed: number, surroundings: Surroundings, rise_m = 0) => {
    const flight = fly(launchAt(speed), surroundings, rise_m, OTHER_BALL);
    return flight.kind === 'landed' ? flight.carry_m : null;
  };
  const air = still(STANDARD_DENSITY);
  const speeds = [0];
  const carries = [0];
  for (let n = 0; n < NODES; n++) {
    const speed = SLOWEST + n * STEP;
    const carry = carryAt(speed, air);
    if (carry === null || carry <= carries[carries.length - 1]) break;
    speeds.push(speed);
    carries.push(carry);
  }
  const speedFor = (carry_m: number) => {
    let i = 1;
    while (i < carries.length - 1 && carries[i] < carry_m) i++;
    const share = (carry_m - carries[i - 1]) / (carries[i] - carries[i - 1]);
    return speeds[i - 1] + share * (speeds[i] - speeds[i - 1]);
  };
  return (standard_m, surroundings, risePerMetre) => {
    const speed = speedFor(standard_m);
    const standard = carryAt(speed, air);
    const level = carryAt(speed, surroundings);
    if (standard === null || level === null) throw new RangeError(`a ball at ${speed} m/s never lands`);
    const flown = risePerMetre === 0 ? level : carryAt(speed, surroundings, risePerMetre * level);
    return flown === null ? null : (standard_m * Math.max(0, flown)) / standard;
  };
}
