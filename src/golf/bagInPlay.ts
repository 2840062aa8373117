import { BAG_LIMIT } from './bagGate.ts';
import type { Clause } from './clause.ts';

/** How a club came to harm during the round. */
export type Harm = 'damaged without abuse' | 'damaged by abuse' | 'lost' | 'none';

/** A change of the bag while a round is played. */
export type BagChange =
  | {
      readonly kind: 'add';
      readonly clubId: string;
      readonly from: 'elsewhere' | 'carried parts' | 'a player on the course';
    }
  | { readonly kind: 'repair'; readonly clubId: string; readonly harm: Harm }
  | { readonly kind: 'replace'; readonly clubId: string; readonly by: string; readonly harm: Harm }
  | { readonly kind: 'alter'; readonly clubId: string }
  | { readonly kind: 'take out of play'; readonly clubId: string };

/** The bag of a round that is being played. */
export interface BagInPlay {
  /** How many clubs the round was started with. */
  readonly startedWith: number;
  /** Ids of the clubs carried now. */
  readonly carried: readonly string[];
}

/** Whether a change of the bag may be made, and the bag after it; if not, by which clause. */
export type BagVerdict =
  | { readonly kind: 'allowed'; readonly bag: BagInPlay }
  | { readonly kind: 'not allowed'; readonly clause: Clause };

const allowed = (bag: BagInPlay): BagVerdict => ({ kind: 'allowed', bag });
const notAllowed = (clause: Clause): BagVerdict => ({ kind: 'not allowed', clause });
const without = (ids: readonly string[], id: string) => ids.filter((each) => each !== id);

/**
 * What the Rules say of a change of the bag during a round.
 *
 * A club may be added only by a golfer who started with fewer than fourteen, up to fourteen, and not one built
 * from parts that are carried, nor one of somebody who is playing. A club damaged during the round, though not in
 * anger, may be repaired or replaced; a lost one is not damaged and may only be made up for by an addition. Nobody
 * may change how a club plays. A club too many is taken out of play, at once and for good, which is always allowed.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rules 4.1a(2), 4.1a(3), 4.1b and 4.1c, from memory.
 */
export function bagChanged(bag: BagInPlay, change: BagChange): BagVerdict {
  const { carried, startedWith } = bag;
  switch (change.kind) {
    case 'take out of play':
      return allowed({ ...bag, carried: without(carried, change.clubId) });
    case 'alter':
      return notAllowed('4.1a(3)');
    case 'repair':
      return change.harm === 'damaged without abuse' ? allowed(bag) : notAllowed('4.1a(2)');
    case 'replace':
      if (change.harm !== 'damaged without abuse' || !carried.includes(change.clubId)) return notAllowed('4.1a(2)');
      if (carried.includes(change.by)) return notAllowed('4.1b');
      return allowed({ ...bag, carried: [...without(carried, change.clubId), change.by] });
    case 'add':
      if (carried.includes(change.clubId)) return allowed(bag);
      if (change.from !== 'elsewhere') return notAllowed('4.1b');
      if (startedWith >= BAG_LIMIT || carried.length >= BAG_LIMIT) return notAllowed('4.1b');
      return allowed({ ...bag, carried: [...carried, change.clubId] });
  }
}

/** How many clubs more than fourteen are carried: so many are to be taken out of play before the next stroke. Rule 4.1c. */
export function excessClubs(bag: BagInPlay): number {
  return Math.max(0, bag.carried.length - BAG_LIMIT);
}
