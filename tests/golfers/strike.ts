import type { Lie } from '../../src/golf/lie.ts';
import type { Strike } from '../../src/golf/shot.ts';
import type { Swing } from '../../src/golf/swing.ts';
import type { Carries } from './ability.ts';
import type { BagClub } from './bag.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { World } from './worlds.ts';

/** How a golfer strikes the ball. Carries are ln against the stock carry. */
export interface Striking {
  /** Share of mishits with a middling club (40°) from the fairway. */
  readonly mishits: number;
  /** SD of solid strikes of a full swing, as a fraction of carry. */
  readonly spread: number;
  readonly lies: Record<Lie, LieEffect>;
}

/** What a lie does: mean and SD of ln carry, and how many more mishits it makes. */
interface LieEffect {
  readonly ln: number;
  readonly sd: number;
  readonly mishits: number;
}

/** One ball as struck. */
export interface Ball {
  readonly strike: Strike;
  /** True strike off the sweet spot, whatever it cost. */
  readonly mishit: boolean;
  /** ln of carry against the stock carry. */
  readonly ln: number;
  readonly flier: boolean;
}

export function drawStriking(world: World, numbers: RandomNumbers): Striking {
  const poor = numbers.beta(2, 2.3);
  const [least, most] = world.mishits;
  const untidy = Math.min(1, Math.max(0, 0.5 * poor + 0.5 * numbers.beta(2, 2)));
  const cost = (mean: number, sd: number) => Math.min(0.01, numbers.normal(mean, sd));
  return {
    mishits: least + (most - least) * poor,
    spread: 0.03 + 0.03 * untidy,
    lies: {
      tee: { ln: 0, sd: 0, mishits: 0.95 },
      fairway: { ln: 0, sd: 0, mishits: 1 },
      'light rough': { ln: cost(-0.04, 0.02), sd: 0.035, mishits: 1.15 },
      'heavy rough': { ln: cost(-0.1, 0.035), sd: 0.06, mishits: 1.35 },
      'fairway bunker': { ln: cost(-0.08, 0.03), sd: 0.045, mishits: 1.4 },
      'greenside bunker': { ln: cost(-0.12, 0.04), sd: 0.08, mishits: 1.4 },
      bare: { ln: cost(-0.02, 0.015), sd: 0.035, mishits: 1.25 },
      other: { ln: cost(-0.04, 0.03), sd: 0.05, mishits: 1.2 },
    },
  };
}

/** Loft of the middle of the bag, where a golfer's mishits are what they are over all. */
const MIDDLE_LOFT_deg = 40;

/** Mishits grow with the length of the club: a third more with a driver, a quarter fewer with a lob wedge. */
export function mishitRate(striking: Striking, club: BagClub, lie: Lie): number {
  const length = 1 + 0.012 * (MIDDLE_LOFT_deg - club.loft_deg);
  const rate = striking.mishits * length * striking.lies[lie].mishits;
  return Math.min(0.6, Math.max(0.03, rate));
}

/** Which way it goes wrong: fat, thin, heel, toe. */
function wrongWay(club: BagClub): readonly number[] {
  if (club.loft_deg < 18.5 && club.kind !== 'iron') return [0.1, 0.3, 0.3, 0.3];
  return club.kind === 'wedge' ? [0.5, 0.4, 0.03, 0.07] : [0.38, 0.34, 0.11, 0.17];
}

/** Share of the carry lost. Many thin ones run low and carry nearly as far as a solid one. */
function shortfall(strike: Strike, numbers: RandomNumbers): number {
  if (strike === 'fat') return Math.min(0.65, 0.04 + 0.085 * numbers.gamma(1.6));
  if (strike !== 'thin') return Math.min(0.5, 0.015 + 0.04 * numbers.gamma(1.8));
  if (numbers.chance(0.5)) return numbers.between(-0.01, 0.07);
  return Math.min(0.75, 0.05 + 0.12 * numbers.gamma(1.5));
}

/** Scatter of a solid strike: median 0, SD about 1, a little longer on the short side. */
function scatter(world: World, numbers: RandomNumbers): number {
  const t = world.tails ? Math.max(-6, Math.min(6, 0.75 * numbers.studentT(world.tails))) : numbers.normal();
  return t < 0 ? 1.07 * t : 0.93 * t;
}

/** One ball with this club and swing from this lie. */
export function drawBall(
  world: World,
  striking: Striking,
  carries: Carries,
  club: BagClub,
  swing: Swing,
  lie: Lie,
  numbers: RandomNumbers,
): Ball {
  const effect = striking.lies[lie];
  const mishit = numbers.chance(mishitRate(striking, club, lie));
  const strike: Strike = mishit ? numbers.choice(['fat', 'thin', 'heel', 'toe'] as const, wrongWay(club)) : 'solid';
  let ln = effect.ln + numbers.normal(0, effect.sd);
  ln += striking.spread * carries.spreadFactor(club, swing) * scatter(world, numbers);
  if (mishit) ln += Math.log(1 - shortfall(strike, numbers));
  const flier = !mishit && numbers.chance(lie === 'light rough' ? 0.06 : 0.012);
  if (flier) ln += numbers.between(0.04, 0.1);
  return { strike, mishit, ln, flier };
}
