import type { Lie } from '../src/golf/lie.ts';
import type { Intent, Strike } from '../src/golf/shot.ts';
import { type DemoClub, type Golfer, specIndexOn } from './people.ts';
import { fromYards } from './records.ts';
import type { Weather } from './seasonPlan.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import { type Gust, pushesRight, weatherFactor } from './weatherResponse.ts';

/** Median and SD of what a lie does to ln carry. Invented for the demo; not the engine's own table. */
const LIE_EFFECT: Readonly<Record<Lie, readonly [median: number, sd: number]>> = {
  tee: [0, 0],
  fairway: [0, 0],
  'light rough': [-0.04, 0.04],
  'heavy rough': [-0.1, 0.08],
  'fairway bunker': [-0.07, 0.05],
  'greenside bunker': [-0.1, 0.05],
  bare: [-0.015, 0.03],
  other: [-0.06, 0.06],
};

/** How much wider ln carry spreads with a shorter swing. Invented. */
const SPREAD_OF: Readonly<Record<string, number>> = { full: 1, '10:30': 1.2, '9:00': 1.35, '7:30': 1.6 };

/** Share of a carry that is left when the shot is kept low. Invented. */
const LEFT_BY_INTENT: Readonly<Record<Intent, number>> = { normal: 1, knockdown: 0.9, recovery: 0.62, chip: 1 };

export interface Swung {
  readonly golfer: Golfer;
  readonly club: DemoClub;
  readonly swing: string;
  readonly lie: Lie;
  readonly intent: Intent;
  readonly date: string;
  readonly weather: Weather;
  readonly gust: Gust;
  readonly bearing_deg: number;
  /** What the day does to every ball of the round, a factor near 1. */
  readonly day: number;
  readonly rise_m: number;
  readonly flier: boolean;
}

export interface Struck {
  readonly carry_m: number;
  readonly roll_m: number;
  /** Right of the line, m. */
  readonly offline_m: number;
  /** How it was truly struck. */
  readonly strike: Strike;
}

/** Days from the first of March to the export on 20 July. */
const SEASON_DAYS = 141;

/** The true stock carry of a cell on a day, m: the season's growth is complete on the day of the export. */
export function stockOn(golfer: Golfer, club: DemoClub, swing: string, date: string): number {
  const carry_yd = club.specs[specIndexOn(club, date)].carry_yd[swing];
  if (carry_yd === undefined) throw new RangeError(`${club.name} has no ${swing}`);
  const left = (Date.parse('2026-07-20') - Date.parse(date)) / 86_400_000 / SEASON_DAYS;
  return fromYards(carry_yd) * (1 - golfer.growth * left);
}

const mishitKinds: readonly [Strike, number, number, number][] = [
  ['thin', 0.3, 0.04, 0.16],
  ['fat', 0.3, 0.1, 0.38],
  ['heel', 0.18, 0.04, 0.15],
  ['toe', 0.22, 0.04, 0.15],
];

/** A mishit and the share of the carry it costs. */
function mishit(numbers: SeededNumbers): readonly [Strike, number] {
  let left = numbers.uniform();
  for (const [strike, weight, least, most] of mishitKinds) {
    left -= weight;
    if (left < 0) return [strike, numbers.between(least, most)];
  }
  return ['toe', 0.1];
}

function rollOf(swung: Swung, carry_m: number, strike: Strike, numbers: SeededNumbers): number {
  const loft = swung.club.specs[0].loft_deg;
  const share = Math.max(0.006, 0.105 - 0.0026 * loft);
  const ground = { soft: 0.6, normal: 1, firm: 1.5 }[swung.weather.ground];
  const thin = strike === 'thin' ? 1.8 : 1;
  return Math.max(-2, carry_m * share * ground * thin * (1 + 0.35 * numbers.normal()) + 0.4 * numbers.normal());
}

/** One swing at the ball: how far it truly carries and rolls, and how far off line. */
export function strikeBall(swung: Swung, numbers: SeededNumbers): Struck {
  const { golfer, club, swing, lie, intent } = swung;
  const bad = numbers.chance(golfer.mishits * (club.kind === 'wedge' ? 0.85 : 1.05));
  const [strike, lost] = bad ? mishit(numbers) : (['solid', 0] as const);
  const [median, sd] = LIE_EFFECT[lie];
  const spread = golfer.sigma * (SPREAD_OF[swing] ?? 1) * numbers.normal();
  const stance = median + sd * numbers.normal() + (swung.flier ? 0.1 : 0);
  const level =
    stockOn(golfer, club, swing, swung.date) *
    LEFT_BY_INTENT[intent] *
    swung.day *
    weatherFactor(swung.weather, swung.gust, swung.bearing_deg, swing, club.kind) *
    Math.exp(spread + stance) *
    (1 - lost);
  const descent = Math.min(52, 34 + 0.35 * club.specs[0].loft_deg);
  const carry_m = Math.max(1, level - swung.rise_m / Math.tan((descent * Math.PI) / 180));
  const width = golfer.offline * (bad ? 1.8 : 1) * (club.kind === 'wedge' ? 0.8 : 1);
  const side = strike === 'heel' ? -0.02 : strike === 'toe' ? 0.02 : 0;
  const hand = golfer.hand === 'right' ? 1 : -1;
  const drift = 0.0022 * pushesRight(swung.gust, swung.bearing_deg);
  const offline_m = carry_m * (width * numbers.normal() + hand * side + drift);
  return { carry_m, roll_m: rollOf(swung, carry_m, strike, numbers), offline_m, strike };
}
