import type { ClubKind } from '../../src/golf/club.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { World } from './worlds.ts';

/** A club as it came out of the shop, before anything is known of how it is hit. */
export interface BagClub {
  readonly id: string;
  readonly kind: ClubKind;
  readonly name: string;
  readonly loft_deg: number;
}

/** Lofts of 3 iron to pitching wedge: the older way, and stronger as sets came to be built (common practice, no source). */
const OLDER_LOFTS = [20.5, 23.5, 27, 30.5, 34, 38, 42, 46];
const STRONGER_LOFTS = [19, 21.5, 24, 27, 30.5, 35, 39.5, 44.5];

/** Lofts are marked to half a degree. */
const marked = (loft_deg: number) => Math.round(loft_deg * 2) / 2;

/**
 * A bag of 11 to 14 clubs with the putter: a driver, one or two fairway woods, up to two hybrids,
 * irons down to the 9, and three or four wedges with the pitching wedge. Short hitters carry higher
 * lofts and fewer long irons.
 *
 * @param short how short the golfer hits, 0 (long) to 1 (short).
 */
export function drawBag(world: World, short: number, numbers: RandomNumbers): BagClub[] {
  const clubs: Omit<BagClub, 'id'>[] = [];
  const add = (kind: ClubKind, name: string, loft_deg: number) =>
    clubs.push({ kind, name, loft_deg: marked(loft_deg) });

  add('driver', 'driver', 9 + 2 * short + numbers.between(0, 1.5));
  const woods = numbers.chance(0.6) ? 2 : 1;
  const higher = numbers.chance(short);
  add('fairway wood', higher ? '4 wood' : '3 wood', (higher ? 16.5 : 15) + numbers.normal(0, 0.4));
  if (woods === 2) add('fairway wood', higher ? '7 wood' : '5 wood', (higher ? 21 : 18) + numbers.normal(0, 0.5));

  const hybrids = numbers.choice([0, 1, 2], [0.25, 0.4, 0.35]);
  let longest = numbers.choice([3, 4, 5], [0.25 * (1 - short), 0.6, 0.15 + 0.35 * short]);
  const lastLoft = () => clubs[clubs.length - 1].loft_deg;
  const hybridLoft = (number: number) => 19 + 3 * (number - 3);
  while (hybrids > 0 && hybridLoft(longest) < lastLoft() + 2.5) longest++;
  for (let i = 0; i < hybrids; i++) {
    const loft_deg = hybridLoft(longest) + numbers.normal(0, 0.5);
    const driving = hybrids === 1 && numbers.chance(0.1 * (1 - short));
    add(driving ? 'driving iron' : 'hybrid', driving ? 'driving iron' : `${longest} hybrid`, loft_deg);
    longest++;
  }
  const strong = world.oddClubs && numbers.chance(0.35) ? numbers.between(1.3, 2) : numbers.uniform();
  const ironLoft = (number: number) => {
    const i = number - 3;
    return OLDER_LOFTS[i] + strong * (STRONGER_LOFTS[i] - OLDER_LOFTS[i]) + numbers.normal(0, 0.35);
  };
  while (longest < 6 && ironLoft(longest) < lastLoft() + 1.5) longest++;
  for (let number = longest; number <= 9; number++) add('iron', `${number} iron`, ironLoft(number));

  const pitching = ironLoft(10);
  add('wedge', 'pitching wedge', pitching);
  const others = Math.min(numbers.choice([2, 3], [0.45, 0.55]), 13 - clubs.length);
  const last = numbers.choice([56, 58, 60], [0.25, 0.4, 0.35]);
  for (let i = 1; i <= others; i++) {
    const loft_deg = pitching + ((last - pitching) * i) / others + (i < others ? numbers.normal(0, 0.6) : 0);
    add('wedge', `${Math.round(loft_deg)}°`, loft_deg);
  }
  return clubs.slice(0, 13).map((club, i) => ({ ...club, id: `c${i + 1}` }));
}
