import type { Lie } from '../../src/golf/lie.ts';
import { type Swing, WEDGE_SWINGS } from '../../src/golf/swing.ts';
import type { BagClub } from './bag.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { World } from './worlds.ts';

/** The day the first season of all begins. */
const FIRST_DAY = '2026-03-01';

/** A day of play. `form` and `progress` are ln of carry against the end of the season. */
export interface Outing {
  readonly id: string;
  readonly date: string;
  readonly practice: boolean;
  readonly ball: 'own' | 'range';
  readonly form: number;
  readonly progress: number;
}

export interface Season {
  readonly rounds: readonly Outing[];
  readonly practice: readonly Outing[];
  readonly asOf: string;
  /** SD over days of how the ball flies, ln. */
  readonly daySpread: number;
  /** ln of carry on the practice ground against the course, by ball. */
  readonly practiceOffset: Record<'own' | 'range', number>;
  /** Change over the season, ln; positive: longer at the end. */
  readonly change: number;
  readonly middle: string;
}

/** A club at one swing length, and how many shots with it this season had. */
export interface Use {
  readonly club: BagClub;
  readonly swing: Swing;
  readonly shots: number;
}

const dayText = (day: number) => new Date(Date.parse(FIRST_DAY) + day * 86_400_000).toISOString().slice(0, 10);

/** How the change of a season comes about: steadily, by a lesson that took, or early and then no more. */
function drawShape(numbers: RandomNumbers): (share: number) => number {
  const shape = numbers.choice(['steady', 'lesson', 'early'] as const, [0.5, 0.3, 0.2]);
  const turn = numbers.between(0.2, 0.8);
  if (shape === 'steady') return (share) => share;
  if (shape === 'lesson') return (share) => 1 / (1 + Math.exp(-(share - turn) / 0.05));
  return (share) => 1 - (1 - share) ** 2;
}

/** Rounds over the days of a season, each with its day effect, and visits to the practice ground for some. */
export function drawSeason(world: World, shots: number, numbers: RandomNumbers): Season {
  const days = numbers.whole(...world.days);
  const [least, most] = world.drift;
  const change = (least + (most - least) * numbers.beta(1, 1.3)) * (numbers.chance(0.65) ? 1 : -1);
  const shape = drawShape(numbers);
  const daySpread = numbers.between(0.005, 0.015);
  const last = days + numbers.whole(1, 10);
  const outing = (id: string, day: number, ball: 'own' | 'range', practice: boolean): Outing => ({
    id,
    date: dayText(day),
    practice,
    ball,
    form: numbers.normal(0, daySpread),
    progress: change * (shape(day / days) - shape(1)),
  });
  const filled = Math.max(2, Math.min(days, Math.round(shots / numbers.between(10, 26))));
  const count = world.rounds ?? filled;
  const played = Array.from({ length: count }, (_, i) =>
    i === 0 ? 0 : i === count - 1 ? days : numbers.whole(0, days),
  ).sort((a, b) => a - b);
  const rounds = played.map((day, i) => outing(`r${i + 1}`, day, 'own', false));
  const visits = numbers.chance(0.4) ? numbers.whole(1, 3) : 0;
  const ball = numbers.chance(0.7) ? 'range' : 'own';
  const practice = Array.from({ length: visits }, (_, i) =>
    outing(`p${i + 1}`, numbers.whole(0, days), numbers.chance(0.85) ? ball : 'own', true),
  );
  return {
    rounds,
    practice,
    asOf: `${dayText(last)}T18:00:00.000Z`,
    daySpread,
    practiceOffset: { own: numbers.normal(0, 0.008), range: Math.log(numbers.between(0.94, 1)) },
    change,
    middle: dayText(Math.round(days * numbers.between(0.3, 0.7))),
  };
}

/** How often a club is hit against one of average use. */
function demand(club: BagClub, swing: Swing): number {
  if (swing !== 'full') return club.kind === 'wedge' ? 0.5 : 0.3;
  if (club.kind === 'driver') return 2.4;
  if (club.kind === 'wedge') return club.loft_deg > 56 ? 0.4 : 0.9;
  return club.kind === 'iron' ? 1 : 0.8;
}

/** Shots a cell over the season: a few favourites, many with a handful, some never hit. */
export function drawUses(world: World, clubs: readonly BagClub[], numbers: RandomNumbers): Use[] {
  const [least, most] = world.activity;
  const activity = Math.exp(numbers.between(Math.log(least), Math.log(most)));
  const partials = numbers.gamma(2) / 2;
  const ironSwing: Swing | null = numbers.chance(0.4) ? numbers.choice(['10:30', '9:00'] as const) : null;
  const uses: Use[] = [];
  for (const club of clubs) {
    const favour = numbers.gamma(1.3) / 1.3;
    const swings: Swing[] = ['full'];
    if (club.kind === 'wedge') swings.push(...WEDGE_SWINGS);
    else if (ironSwing && (club.name === '9 iron' || club.name === '8 iron')) swings.push(ironSwing);
    for (const swing of swings) {
      const liked = swing === 'full' ? favour : (partials * numbers.gamma(1.2)) / 1.2;
      const mean = activity * demand(club, swing) * liked;
      const shots = Math.min(world.mostShots, Math.floor(mean + numbers.uniform()));
      uses.push({ club, swing, shots });
    }
  }
  return uses;
}

/** Where balls of this club lie. */
export function drawLie(club: BagClub, swing: Swing, numbers: RandomNumbers): Lie {
  const lies = ['tee', 'fairway', 'light rough', 'heavy rough', 'fairway bunker', 'bare', 'other'] as const;
  if (club.kind === 'driver') return numbers.chance(0.98) ? 'tee' : 'fairway';
  if (club.kind === 'wedge' && swing !== 'full') return numbers.choice(lies, [0, 58, 26, 7, 3, 5, 1]);
  if (club.kind === 'wedge') return numbers.choice(lies, [4, 58, 24, 6, 4, 3, 1]);
  if (club.kind === 'iron') return numbers.choice(lies, [20, 50, 18, 5, 4, 2, 1]);
  return numbers.choice(lies, [35, 45, 16, 1, 1, 1, 1]);
}
