import { type Metres, metres } from '../units/metres.ts';
import type { Club } from './club.ts';
import { specOn } from './club.ts';
import type { Shot } from './shot.ts';
import { blankEntry, type ShotEntry } from './shotEntry.ts';
import { numberAfterLast } from './shotOrder.ts';
import { clockHours, type OwnSwing, type Swing, WEDGE_SWINGS } from './swing.ts';

/** Balls on one rung of the ladder. Common practice, no source. */
export const BALLS_A_RUNG = 10;

/** A rung: one club at one swing length. */
export interface Rung {
  readonly clubId: string;
  readonly swing: Swing;
}

/** A rung with the balls hit on it today. */
export interface RungDone extends Rung {
  readonly balls: number;
}

/**
 * The swing lengths offered with a club, longest last: for a wedge the three clock positions and full, for any
 * other club full; and the golfer's own positions for both. What is not played is left out.
 */
export function swingsOffered(club: Pick<Club, 'kind' | 'notPlayed'>, own: readonly OwnSwing[]): Swing[] {
  const usual: readonly Swing[] = club.kind === 'wedge' ? [...WEDGE_SWINGS, 'full'] : ['full'];
  return [...new Set([...usual, ...own.map(({ swing }) => swing)])]
    .filter((swing) => !club.notPlayed.includes(swing))
    .sort((a, b) => clockHours(a) - clockHours(b));
}

/**
 * The rungs of a ladder in the order they are climbed: from the shortest carry up, as far as carries are known,
 * else by swing and then from the most loft to the least. Climbing by carry keeps neighbours apart by a few yards
 * only, so that each is learned against the next. Common practice, no source.
 *
 * @param clubs the clubs to climb with, usually the wedges of the bag.
 * @param own the golfer's own swing positions.
 * @param carryOf stock carry of a rung; null: not known.
 * @param day whose build of the clubs counts, `YYYY-MM-DD`.
 */
export function ladderRungs(
  clubs: readonly Club[],
  own: readonly OwnSwing[],
  carryOf: (rung: Rung) => Metres | null,
  day: string,
): Rung[] {
  const lofts = new Map(clubs.map((club) => [club.id, specOn(club, day).loft_deg as number]));
  const rungs = clubs.flatMap((club) => swingsOffered(club, own).map((swing) => ({ clubId: club.id, swing })));
  const bySwing = (a: Rung, b: Rung) =>
    clockHours(a.swing) - clockHours(b.swing) || (lofts.get(b.clubId) ?? 0) - (lofts.get(a.clubId) ?? 0);
  const ordered = rungs.map((rung) => ({ rung, carry: carryOf(rung) }));
  const isKnown = ordered.every(({ carry }) => carry !== null);
  return ordered
    .sort((a, b) => (isKnown ? (a.carry ?? 0) - (b.carry ?? 0) : 0) || bySwing(a.rung, b.rung))
    .map(({ rung }) => rung);
}

/** Each rung with the balls hit on it, from the shots of the session. */
export function ladderDone(rungs: readonly Rung[], shots: readonly Pick<Shot, 'clubId' | 'swing'>[]): RungDone[] {
  return rungs.map((rung) => ({
    ...rung,
    balls: shots.filter((shot) => shot.clubId === rung.clubId && shot.swing === rung.swing).length,
  }));
}

/** Index of the rung to climb to from one: the next with balls left, from the bottom again after the top; null: none is left. */
export function nextRung(done: readonly RungDone[], from: number): number | null {
  for (let step = 1; step <= done.length; step++) {
    const index = (from + step) % done.length;
    if (done[index].balls < BALLS_A_RUNG) return index;
  }
  return null;
}

/** Where a ball pitched against the target: so far long of it (short is negative), or short of all that can be told. */
export type Pitched =
  | { readonly kind: 'pitched'; readonly long_m: Metres }
  | { readonly kind: 'well short'; readonly least_short_m: Metres };

/**
 * A ball of the ladder as a shot of the practice ground: from the mat or turf at a target whose distance was
 * measured, pitched so far long or short of it. A ball well short of it is known to have carried no more.
 *
 * @param target_m distance to the target, > 0. @param shots those of the session so far.
 * @throws RangeError when there is no target.
 */
export function ladderBall(
  rung: Rung,
  target_m: Metres,
  pitched: Pitched,
  shots: readonly Pick<Shot, 'number'>[],
): ShotEntry {
  if (!(target_m > 0)) throw new RangeError(`${target_m} m is no target`);
  const blank = blankEntry(1, numberAfterLast(shots));
  const aimed: ShotEntry = { ...blank, clubId: rung.clubId, swing: rung.swing, lie: 'fairway', flag_m: target_m };
  if (pitched.kind === 'well short') {
    return { ...aimed, carryAtMost_m: metres(Math.max(0, target_m - pitched.least_short_m)) };
  }
  const carry = metres(Math.max(0, target_m + pitched.long_m));
  return { ...aimed, carry: { m: carry, by: 'laser', error_m: null } };
}
