import { type Club, type SpecPeriod, specOn } from '../../golf/club.ts';

/** A club as it is built on a day. */
export interface BuiltClub {
  readonly club: Club;
  readonly spec: SpecPeriod;
}

/** The clubs in loft order, strongest first, those of one loft by name, the putter last. */
export function clubsInOrder(clubs: readonly Club[], day: string): BuiltClub[] {
  const last = ({ club }: BuiltClub) => (club.kind === 'putter' ? 1 : 0);
  return clubs
    .map((club) => ({ club, spec: specOn(club, day) }))
    .sort(
      (one, other) =>
        last(one) - last(other) ||
        one.spec.loft_deg - other.spec.loft_deg ||
        (one.club.name < other.club.name ? -1 : 1),
    );
}
