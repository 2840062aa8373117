import { type Club, specOn } from '../../../golf/club.ts';
import type { Round } from '../../../golf/round.ts';
import { clubName } from '../../clubName.ts';

/** A club as a key shows it. */
export interface BagClub {
  readonly id: string;
  readonly kind: Club['kind'];
  readonly name: string;
  readonly loft_deg: number;
  /** Swings that the golfer does not play with it. */
  readonly notPlayed: Club['notPlayed'];
}

function named(club: Club, date: string): BagClub {
  const spec = specOn(club, date);
  return {
    id: club.id,
    kind: club.kind,
    name: clubName(club, spec),
    loft_deg: spec.loft_deg,
    notPlayed: club.notPlayed,
  };
}

/**
 * The clubs carried in a round in the order of their lofts, the driver first and the putter last. A
 * round that names no bag is played with what is in the bag now; in an open round what came into the bag since
 * its start is carried too.
 */
export function clubsOfBag(
  clubs: readonly Club[],
  round: Pick<Round, 'bag' | 'date'> & Partial<Pick<Round, 'closed'>>,
): BagClub[] {
  const isAdded = (club: Club) => club.inBag && (round.bag.length === 0 || round.closed === false);
  const carried = clubs.filter((club) => round.bag.includes(club.id) || isAdded(club));
  const rank = (club: BagClub) => (club.kind === 'putter' ? 100 : club.loft_deg);
  return carried
    .map((club) => named(club, round.date))
    .sort((one, other) => rank(one) - rank(other) || (one.id < other.id ? -1 : 1));
}

/** What the golfer calls a club, also one no longer in the bag; null: the logbook does not know it. */
export function nameOfClub(clubs: readonly Club[], clubId: string | null, date: string): string | null {
  const club = clubs.find((club) => club.id === clubId);
  return club ? named(club, date).name : null;
}
