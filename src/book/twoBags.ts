import { clockHours, type Swing } from '../golf/swing.ts';
import { normalDistribution } from '../statistics/normal.ts';
import { type Metres, metres } from '../units/metres.ts';
import { DEVIATE_80 } from '../yardages/gaps.ts';
import { byBagOrder, type ClubColumn, clubColumn, columnKey } from './clubColumn.ts';
import type { TeamClub, TeamNumber, TeamPage } from './teamPage.ts';

/** A club of one bag with its number at one swing. */
export interface BagEntry {
  readonly club: TeamClub;
  readonly number: TeamNumber;
  /** Distance down to the next shorter full swing of the same bag, m; null for partial swings and the shortest. */
  readonly toNext_m: Metres | null;
}

/** What two bags have under one name. */
export interface BagPair {
  readonly column: ClubColumn;
  readonly swing: Swing;
  readonly first: BagEntry | null;
  readonly second: BagEntry | null;
  /** How much further the first carries than the second; null unless both have it. */
  readonly difference: BagDifference | null;
}

/** The difference of two stock carries: median, 80 % interval, and the odds that the first is the longer. */
export interface BagDifference {
  readonly m: Metres;
  readonly lo80_m: Metres;
  readonly hi80_m: Metres;
  readonly pLonger: number;
}

/**
 * How much further one stock carry is than another, from their 80 % intervals, taken as normal and as
 * independent: for two golfers they are, and for two seasons of one golfer it makes the difference look less
 * sure than it is, never surer.
 *
 * Metres; positive when the first is the longer.
 */
export function carryDifference(first: TeamNumber, second: TeamNumber): BagDifference {
  const deviation = (number: TeamNumber) => (number.hi80_m - number.lo80_m) / 2 / DEVIATE_80;
  const spread = Math.max(1e-6, Math.hypot(deviation(first), deviation(second)));
  const m = first.stock_m - second.stock_m;
  return {
    m: metres(m),
    lo80_m: metres(m - DEVIATE_80 * spread),
    hi80_m: metres(m + DEVIATE_80 * spread),
    pLonger: normalDistribution(m / spread),
  };
}

function entriesOf(page: TeamPage): Map<string, BagEntry> {
  const clubs = new Map(page.clubs.map((club) => [club.clubId, club]));
  const full = page.numbers.filter(({ swing }) => swing === 'full').sort((a, b) => b.stock_m - a.stock_m);
  const entries = new Map<string, BagEntry>();
  for (const number of page.numbers) {
    const club = clubs.get(number.clubId);
    if (!club) continue;
    const next = full[full.indexOf(number) + 1];
    const toNext_m = number.swing === 'full' && next ? metres(number.stock_m - next.stock_m) : null;
    const key = `${columnKey(clubColumn(club))}_${number.swing}`;
    const other = entries.get(key);
    // Of two clubs under one name the one that is played more speaks for both.
    if (!other || other.number.shots < number.shots) entries.set(key, { club, number, toNext_m });
  }
  return entries;
}

/** Two bags club by club, in bag order, partial swings after the full one of their club. */
export function twoBags(first: TeamPage, second: TeamPage): BagPair[] {
  const [ours, theirs] = [entriesOf(first), entriesOf(second)];
  const pairs = [...new Set([...ours.keys(), ...theirs.keys()])].flatMap((key): BagPair[] => {
    const [one, two] = [ours.get(key) ?? null, theirs.get(key) ?? null];
    const any = one ?? two;
    if (!any) return [];
    const difference = one && two ? carryDifference(one.number, two.number) : null;
    return [{ column: clubColumn(any.club), swing: any.number.swing, first: one, second: two, difference }];
  });
  return pairs.sort((a, b) => byBagOrder(a.column, b.column) || clockHours(b.swing) - clockHours(a.swing));
}

/** The club and swing of each bag that comes nearest to a distance. */
export interface YardageFilled {
  readonly distance_m: Metres;
  readonly first: BagEntry | null;
  readonly second: BagEntry | null;
}

/**
 * Which club and swing of each bag fills which distance: at each the one whose stock carry lies nearest, or
 * none when the nearest is further off than `most_m`.
 */
export function filledYardages(
  first: TeamPage,
  second: TeamPage,
  distances_m: readonly Metres[],
  most_m: Metres,
): YardageFilled[] {
  const bags = [entriesOf(first), entriesOf(second)].map((entries) => [...entries.values()]);
  return distances_m.map((distance_m) => {
    const [one, two] = bags.map((entries) => {
      let nearest: BagEntry | null = null;
      const off = ({ number }: BagEntry) => Math.abs(number.stock_m - distance_m);
      for (const entry of entries) if (off(entry) <= most_m && (!nearest || off(entry) < off(nearest))) nearest = entry;
      return nearest;
    });
    return { distance_m, first: one, second: two };
  });
}
