import type { Club } from './club.ts';

/** Most clubs a golfer may start a round with. Source: R&A and USGA, Rules of Golf (2023), Rule 4.1b(1). */
export const BAG_LIMIT = 14;

/** Whether a bag may be carried in a round by the Rules, and how many clubs are in it. */
export type BagGate =
  | { readonly kind: 'within'; readonly clubs: number }
  | { readonly kind: 'too many'; readonly clubs: number; readonly over: number };

/** Counts the clubs in the bag, the putter too, against {@link BAG_LIMIT}. */
export function bagGate(clubs: readonly Pick<Club, 'inBag'>[]): BagGate {
  const count = clubs.filter((club) => club.inBag).length;
  return count <= BAG_LIMIT
    ? { kind: 'within', clubs: count }
    : { kind: 'too many', clubs: count, over: count - BAG_LIMIT };
}
