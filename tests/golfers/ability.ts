import { clockHours, type Swing, WEDGE_SWINGS } from '../../src/golf/swing.ts';
import type { BagClub } from './bag.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { World } from './worlds.ts';

/** What a golfer really carries, known to nobody but the test. */
export interface Ability {
  /** Carry of the 7 iron (34°), yd. */
  readonly seven_yd: number;
  /** 0 for the longest hitter of the world, 1 for the shortest. */
  readonly short: number;
}

/** Ability with a bag: the stock carry of every club at every swing. */
export interface Carries {
  /** ln of the stock carry in yards, at the end of the season, of a club of this loft. */
  lnStock(club: BagClub, swing: Swing, loft_deg?: number): number;
  /** How much the solid strikes of this club scatter against the others. */
  spreadFactor(club: BagClub, swing: Swing): number;
}

/** Carry as a share of the 34° iron's, irons and wedges of a middling hitter (invented, from common practice). */
const SHARE_BY_LOFT: readonly (readonly [number, number])[] = [
  [6, 1.42],
  [10, 1.37],
  [14, 1.32],
  [18, 1.26],
  [22, 1.2],
  [26, 1.135],
  [30, 1.07],
  [34, 1],
  [38, 0.93],
  [42, 0.857],
  [46, 0.78],
  [50, 0.702],
  [54, 0.623],
  [58, 0.542],
  [62, 0.46],
  [66, 0.38],
];

function lnShare(loft_deg: number): number {
  const last = SHARE_BY_LOFT.length - 2;
  const i = Math.min(last, Math.max(0, Math.floor((loft_deg - 6) / 4)));
  const [from, share] = SHARE_BY_LOFT[i];
  const [to, next] = SHARE_BY_LOFT[i + 1];
  return Math.log(share) + ((loft_deg - from) / (to - from)) * Math.log(next / share);
}

const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

/** How far a golfer of this world hits a 7 iron: from juniors and short hitters to strong ones. */
export function drawAbility(world: World, numbers: RandomNumbers): Ability {
  let seven_yd = clamp(numbers.normal(143, 20), 105, 185);
  if (world.curve === 'bunched or gappy') {
    seven_yd = numbers.chance(0.6) ? numbers.between(105, 140) : numbers.between(150, 185);
  }
  return { seven_yd, short: (185 - seven_yd) / 80 };
}

/** What a wood, hybrid or specialist wedge carries beyond an iron of its loft: mean and SD over golfers, ln. */
const KIND_OFFSET: Record<BagClub['kind'], readonly [number, number]> = {
  driver: [0.13, 0.04],
  'fairway wood': [0.08, 0.025],
  hybrid: [0.035, 0.02],
  'driving iron': [0.01, 0.015],
  iron: [0, 0],
  wedge: [0, 0],
  putter: [0, 0],
};

/** SD of one club about its kind's curve, ln. */
const CLUB_SD: Record<BagClub['kind'], number> = {
  driver: 0.02,
  'fairway wood': 0.028,
  hybrid: 0.024,
  'driving iron': 0.024,
  iron: 0.016,
  wedge: 0.016,
  putter: 0,
};

/** Partial swings as taught: share of the full carry, SD of ln over golfers, SD of ln over a golfer's wedges, spread. */
const TAUGHT: Record<string, readonly [number, number, number, number]> = {
  '7:30': [0.54, 0.07, 0.032, 1.5],
  '9:00': [0.72, 0.045, 0.022, 1.3],
  '10:30': [0.875, 0.022, 0.012, 1.12],
};

/** The same where every golfer has his own: least and most share, SD of ln over a golfer's wedges. */
const OWN: Record<string, readonly [number, number, number]> = {
  '7:30': [0.45, 0.68, 0.05],
  '9:00': [0.64, 0.82, 0.035],
  '10:30': [0.8, 0.95, 0.02],
};

function drawFractions(world: World, clubs: readonly BagClub[], numbers: RandomNumbers): Map<string, number> {
  const tempo = numbers.normal();
  const tilt = numbers.normal(0, 0.0025);
  const golfer: Record<string, number> = {};
  for (const swing of WEDGE_SWINGS) {
    const [share, sd] = TAUGHT[swing];
    const [least, most] = OWN[swing];
    golfer[swing] =
      world.swings === 'own'
        ? Math.log(numbers.between(least, most))
        : Math.log(share) + sd * (0.7 * tempo + 0.7 * numbers.normal());
  }
  const fractions = new Map<string, number>();
  for (const club of clubs) {
    let longer = Math.log(0.98);
    for (const swing of ['10:30', '9:00', '7:30']) {
      const sd = world.swings === 'own' ? OWN[swing][2] : TAUGHT[swing][2];
      const t = world.tails ? numbers.studentT(world.tails) : numbers.normal();
      const tilted = tilt * (club.loft_deg - 50) * (1 - Math.exp(golfer[swing])) * 2;
      const ln = Math.min(longer, golfer[swing] + tilted + clamp(sd * t, -0.2, 0.2));
      fractions.set(`${club.id}|${swing}`, ln);
      longer = ln - 0.04;
    }
  }
  return fractions;
}

/** What makes a club of the odd world carry otherwise than its loft says, ln by club. */
function drawOddities(clubs: readonly BagClub[], ability: Ability, numbers: RandomNumbers): Map<string, number> {
  const odd = new Map<string, number>(clubs.map((club) => [club.id, 0]));
  const shift = (club: BagClub, ln: number) => odd.set(club.id, (odd.get(club.id) ?? 0) + ln);
  const count = numbers.choice([1, 2, 3], [0.4, 0.4, 0.2]);
  for (let i = 0; i < count; i++) {
    const club = numbers.choice(clubs);
    const carry_yd = ability.seven_yd * Math.exp(lnShare(club.loft_deg));
    const off_yd = numbers.between(10, 15) * (numbers.chance(0.6) ? -1 : 1);
    shift(club, Math.log(1 + clamp(off_yd / carry_yd, -0.14, 0.14)));
  }
  const seven = clubs.find((club) => club.name === '7 iron');
  if (seven && seven.loft_deg < 30) {
    for (const club of clubs) if (club.kind === 'iron') shift(club, -0.006 * (30.5 - seven.loft_deg) - 0.012);
  }
  if (numbers.chance(0.2)) {
    const others = numbers.normal(0, 0.05);
    for (const club of clubs) if (numbers.chance(0.5)) shift(club, others);
  }
  return odd;
}

/**
 * How far this golfer really hits each club of the bag. Long clubs gain less for the short hitter;
 * the wedge end falls off a little differently for each; every club has its own deviation.
 */
export function drawCarries(
  world: World,
  ability: Ability,
  clubs: readonly BagClub[],
  numbers: RandomNumbers,
): Carries {
  let long = clamp(0.62 + 0.006 * (ability.seven_yd - 105), 0.55, 1.12) * (1 + numbers.normal(0, 0.1));
  let high = 1 + numbers.normal(0, 0.06);
  let bunchedFrom_deg = 0;
  if (world.curve === 'bunched or gappy') {
    if (ability.seven_yd < 145) {
      long = numbers.between(0.7, 0.9);
      bunchedFrom_deg = numbers.between(24, 29);
    } else {
      long = numbers.between(1.15, 1.4);
    }
    high = numbers.between(0.82, 1.25);
  }
  const bunched = numbers.between(0.15, 0.45);
  const kind = new Map(
    Object.entries(KIND_OFFSET).map(([name, [mean, sd]]) => [name, mean + numbers.normal(0, sd)] as const),
  );
  const specialist = numbers.normal(0, 0.02);
  const odd = world.oddClubs ? drawOddities(clubs, ability, numbers) : new Map<string, number>();
  const deviation = new Map<string, number>();
  const spread = new Map<string, number>();
  for (const club of clubs) {
    const t = world.tails ? numbers.studentT(world.tails) : numbers.normal();
    deviation.set(club.id, clamp(CLUB_SD[club.kind] * t, -0.15, 0.15) + (odd.get(club.id) ?? 0));
    spread.set(club.id, Math.exp(numbers.normal(0, world.tails ? 0.3 : 0.1)));
  }
  const fractions = drawFractions(world, clubs, numbers);

  const onCurve = (loft_deg: number) => {
    if (loft_deg >= 34) return high * lnShare(loft_deg);
    const kept = Math.max(loft_deg, bunchedFrom_deg);
    return long * (lnShare(kept) + bunched * (lnShare(loft_deg) - lnShare(kept)));
  };
  return {
    lnStock(club, swing, loft_deg = club.loft_deg) {
      const full =
        Math.log(ability.seven_yd) +
        onCurve(loft_deg) +
        (kind.get(club.kind) ?? 0) * (bunchedFrom_deg > 0 ? 0.6 : 1) +
        (club.loft_deg >= 48 ? specialist : 0) +
        (deviation.get(club.id) ?? 0);
      return full + (fractions.get(`${club.id}|${swing}`) ?? 0);
    },
    spreadFactor(club, swing) {
      const partial = swing === 'full' ? 1 : (TAUGHT[swing]?.[3] ?? 1 + 0.1 * (12 - clockHours(swing)));
      return (spread.get(club.id) ?? 1) * partial * (club.loft_deg < 22 ? 1.06 : 1);
    },
  };
}
