import type { Lie } from '../src/golf/lie.ts';
import type { Intent } from '../src/golf/shot.ts';
import type { CourseHole } from './courses.ts';
import type { DemoClub, Golfer } from './people.ts';
import { fromYards } from './records.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import { stockOn } from './swing.ts';

/** The shot a golfer settles on. `layUp_m`: how far short of the flag it is meant; 0 for at the flag or as far as it goes. */
export interface Choice {
  readonly club: DemoClub;
  readonly swing: string;
  readonly intent: Intent;
  readonly layUp_m: number;
  /** True when the flag is in reach, so that it is measured first. */
  readonly atFlag: boolean;
}

export interface Situation {
  readonly golfer: Golfer;
  readonly hole: CourseHole;
  readonly date: string;
  readonly lie: Lie;
  readonly toFlag_m: number;
  /** What the golfer reckons the weather makes of a carry, a factor. */
  readonly reckoned: number;
  readonly intoWind_mps: number;
}

/** Nearer than this a shot is a chip or a splash, which feeds no number. */
export const CHIP_m = fromYards(40);
/** What the golfers like to leave when they lay up. */
const FAVOURITE_m = fromYards(84);

interface Reach {
  readonly club: DemoClub;
  readonly swing: string;
  readonly carry_m: number;
}

function reachable(now: Situation, kinds: readonly string[]): Reach[] {
  return now.golfer.clubs
    .filter((club) => club.inBag && kinds.includes(club.kind))
    .flatMap((club) =>
      club.plays.map((swing) => ({
        club,
        swing,
        carry_m: stockOn(now.golfer, club, swing, now.date) * now.reckoned,
      })),
    );
}

function nearest(reaches: readonly Reach[], wanted_m: number, numbers: SeededNumbers): Reach {
  const scored = reaches.map((reach) => ({
    reach,
    miss: Math.abs(reach.carry_m - wanted_m) + Math.abs(1.5 * numbers.normal()),
  }));
  return scored.reduce((best, next) => (next.miss < best.miss ? next : best)).reach;
}

/** A club from the tee of a long hole: the driver, unless the hole is tight or the golfer is careful today. */
function fromTee(now: Situation, numbers: SeededNumbers): Reach {
  const safe = numbers.chance(now.hole.tight ? 0.9 : 0.12);
  const long = reachable(now, ['driver', 'fairway wood', 'hybrid', 'driving iron']);
  return safe ? numbers.pick(long.filter((reach) => reach.club.kind !== 'driver')) : long[0];
}

const kindsFor = (lie: Lie): string[] => {
  if (lie === 'heavy rough' || lie === 'fairway bunker' || lie === 'greenside bunker') return ['iron', 'wedge'];
  if (lie === 'light rough' || lie === 'bare') return ['hybrid', 'iron', 'wedge'];
  return ['fairway wood', 'hybrid', 'driving iron', 'iron', 'wedge'];
};

/** Which club and swing, and what for. */
export function chooseShot(now: Situation, numbers: SeededNumbers): Choice {
  const { lie, toFlag_m } = now;
  const chosen = (reach: Reach, intent: Intent, layUp_m = 0, atFlag = true): Choice => ({
    club: reach.club,
    swing: reach.swing,
    intent,
    layUp_m,
    atFlag,
  });
  if (toFlag_m < CHIP_m) {
    const wedges = reachable(now, ['wedge']).filter((reach) => reach.swing === '7:30');
    return chosen(numbers.pick(wedges), 'chip');
  }
  if (lie === 'tee' && now.hole.par > 3) return chosen(fromTee(now, numbers), 'normal', 0, false);
  if (lie === 'other') {
    const low = reachable(now, ['iron']).filter((reach) => reach.swing === 'full');
    const club = nearest(low, Math.min(toFlag_m * 0.9, fromYards(130)) / 0.62, numbers);
    return chosen(club, 'recovery', 0, false);
  }
  const usual = reachable(now, kindsFor(lie));
  const longest = Math.max(...usual.map((reach) => reach.carry_m));
  const wanted = toFlag_m - fromYards(2);
  if (wanted > longest + fromYards(4)) {
    const layUp = wanted - longest < fromYards(70) && numbers.chance(0.55);
    if (layUp) return chosen(nearest(usual, toFlag_m - FAVOURITE_m, numbers), 'normal', FAVOURITE_m);
    const far = usual.filter((reach) => reach.carry_m > 0.88 * longest);
    return chosen(numbers.pick(far), 'normal', 0, false);
  }
  const low = now.intoWind_mps > 2.5 && toFlag_m > fromYards(105) && numbers.chance(0.16);
  if (low) return chosen(nearest(usual, wanted / 0.9, numbers), 'knockdown');
  return chosen(nearest(usual, wanted, numbers), 'normal');
}
