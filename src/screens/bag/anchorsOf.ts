import type { Club } from '../../golf/club.ts';
import { type BuiltClub, clubsInOrder } from './clubsInOrder.ts';

/** The clubs that a new golfer is asked about; null: the bag holds none of that sort. */
export interface Anchors {
  readonly driver: Club | null;
  readonly iron: Club | null;
  readonly wedges: readonly Club[];
}

/** Loft of a usual 7 iron in degrees: the iron nearest to it is asked about. Common practice, from memory. */
const SEVEN_IRON_DEG = 32.5;

/** The driver, the 7 iron (by name, else by loft) and the wedges, weakest last, among the clubs in the bag. */
export function anchorsOf(clubs: readonly Club[], day: string): Anchors {
  const inBag = clubsInOrder(
    clubs.filter((club) => club.inBag),
    day,
  );
  const of = (kind: Club['kind']) => inBag.filter(({ club }) => club.kind === kind);
  const distance = ({ club, spec }: BuiltClub) =>
    /^7\b/.test(club.name) ? -1 : Math.abs(spec.loft_deg - SEVEN_IRON_DEG);
  const irons = of('iron').sort((one, other) => distance(one) - distance(other));
  return {
    driver: of('driver')[0]?.club ?? null,
    iron: irons[0]?.club ?? null,
    wedges: of('wedge').map(({ club }) => club),
  };
}
