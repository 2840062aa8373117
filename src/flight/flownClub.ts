import type { ClubKind } from '../golf/club.ts';
import { type Degrees, degrees } from '../units/degrees.ts';
import { metresPerSecond } from '../units/metresPerSecond.ts';
import { BALL_MASS, BALL_RADIUS, type Launch } from './trajectory.ts';

/** A club that flies the ball. */
export type FlownKind = Exclude<ClubKind, 'putter'>;

/** Launch height against the usual for the loft. */
export type LaunchHeight = 'low' | 'mid' | 'high';

/** How a club meets the ball at full speed. Angles in degrees; attack below 0 hits down. */
interface Delivery {
  readonly loft: number;
  /** Loft presented at impact. */
  readonly dynamicLoft: number;
  readonly attack: number;
  /** Coefficient of restitution of the strike. */
  readonly restitution: number;
  /** Mass of the head, kg. */
  readonly headMass: number;
  /** Ball speed up to which this delivery is the usual one, m/s. */
  readonly usualSpeed: number;
}

/** Typical deliveries, from memory: none is measured on the golfer. */
const DRIVER: Delivery = {
  loft: 10.5,
  dynamicLoft: 13.5,
  attack: -1,
  restitution: 0.82,
  headMass: 0.2,
  usualSpeed: 63,
};
const OTHERS: readonly Delivery[] = [
  { loft: 15, dynamicLoft: 15, attack: -2, restitution: 0.8, headMass: 0.21, usualSpeed: 58 },
  { loft: 22, dynamicLoft: 19.5, attack: -3, restitution: 0.79, headMass: 0.23, usualSpeed: 54 },
  { loft: 34, dynamicLoft: 26.5, attack: -3.5, restitution: 0.77, headMass: 0.27, usualSpeed: 46 },
  { loft: 46, dynamicLoft: 36, attack: -3.5, restitution: 0.75, headMass: 0.285, usualSpeed: 40 },
  { loft: 56, dynamicLoft: 44, attack: -3, restitution: 0.72, headMass: 0.3, usualSpeed: 34 },
];
/** Degrees of spin loft a driver gains per degree of loft: the table's step from driver to fairway wood. From memory. */
const DRIVER_SPIN_LOFT_PER_DEGREE = (17 - 14.5) / 4.5;
/** What "low" or "high" takes from or adds to the dynamic loft, degrees. Own choice, from memory. */
const LAUNCH_HEIGHT_STEP = 3;
/** Degrees of dynamic loft that faster swings take off per m/s of ball speed above the usual, and the most. From memory. */
const LESS_LOFT_PER_SPEED = 0.2;
const MOST_LOFT_OFF_BY_SPEED = 5;
/** Spin loft is kept within these: outside, the impact formula means nothing. */
const LEAST_SPIN_LOFT = 4;
const MOST_SPIN_LOFT = 70;

function between(low: Delivery, high: Delivery, loft: number): Delivery {
  const share = (loft - low.loft) / (high.loft - low.loft);
  // Beyond the table the angles go on as in its last step; mass and restitution stay as they are.
  const inside = Math.min(1, Math.max(0, share));
  const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
  return {
    loft,
    dynamicLoft: mix(low.dynamicLoft, high.dynamicLoft, share),
    attack: mix(low.attack, high.attack, inside),
    restitution: mix(low.restitution, high.restitution, inside),
    headMass: mix(low.headMass, high.headMass, inside),
    usualSpeed: mix(low.usualSpeed, high.usualSpeed, inside),
  };
}

function usualDelivery(kind: FlownKind, loft: number): Delivery {
  if (kind === 'driver') {
    return { ...DRIVER, loft, dynamicLoft: DRIVER.dynamicLoft + (loft - DRIVER.loft) * DRIVER_SPIN_LOFT_PER_DEGREE };
  }
  let row = 0;
  while (row < OTHERS.length - 2 && loft > OTHERS[row + 1].loft) row++;
  return between(OTHERS[row], OTHERS[row + 1], loft);
}

/** A club of one kind, loft and launch height: what its launch at any ball speed follows from. */
export interface FlownClub {
  readonly kind: FlownKind;
  readonly loft_deg: Degrees;
  /** The golfer's own launch height; null: as usual for the loft. */
  readonly height: LaunchHeight | null;
}

/**
 * How the ball leaves a club at each ball speed: launch angle and backspin.
 *
 * A sphere that rolls on the face by the end of impact: tanθ = tan(spin loft)(1+μ)/((1+e)(3.5+μ)) is
 * how far the ball leaves from the face's normal, launch = dynamic loft − θ, spin ratio 2.5 sin θ.
 * Partial swings are taken to deliver the club as full ones do; faster swings than usual flatter.
 *
 * @param club any club but the putter; static loft 0 to 90°; launch height low or high is 3° of dynamic loft.
 * @returns a function of the ball speed in m/s, 0 or more.
 * @throws RangeError when the loft is outside 0 to 90°.
 * Source: impulse and angular impulse of a uniform sphere; the delivery table is from memory.
 */
export function launchOf(club: FlownClub): (ballSpeed: number) => Launch {
  const { kind, loft_deg: loft, height } = club;
  if (!(loft >= 0 && loft <= 90)) throw new RangeError(`loft ${loft}° is outside 0° to 90°`);
  const usual = usualDelivery(kind, loft);
  const own = height === 'low' ? -LAUNCH_HEIGHT_STEP : height === 'high' ? LAUNCH_HEIGHT_STEP : 0;
  const ratio = BALL_MASS / usual.headMass;
  const share = (1 + ratio) / ((1 + usual.restitution) * (3.5 + ratio));
  return (ballSpeed) => {
    const fast = Math.min(MOST_LOFT_OFF_BY_SPEED, Math.max(0, LESS_LOFT_PER_SPEED * (ballSpeed - usual.usualSpeed)));
    const spinLoft = Math.min(MOST_SPIN_LOFT, Math.max(LEAST_SPIN_LOFT, usual.dynamicLoft + own - fast - usual.attack));
    const theta = Math.atan(Math.tan((spinLoft * Math.PI) / 180) * share);
    return {
      speed_mps: metresPerSecond(ballSpeed),
      angle_deg: degrees(spinLoft + usual.attack - (theta * 180) / Math.PI),
      spin_radps: (2.5 * Math.sin(theta) * ballSpeed) / BALL_RADIUS,
    };
  };
}
