import { type Lie, lies, type RestLie } from './lie.ts';
import type { Shot } from './shot.ts';
import { blankEntry, type ShotEntry } from './shotEntry.ts';
import { numberAfterLast, shotsOfHole } from './shotOrder.ts';

/**
 * From where the next ball is played: where the last came to rest, from a drop, or from the place of
 * the last shot again (re-tee, replay after lost or out of bounds, provisional ball).
 */
export type PlayedFrom = 'rest' | 'drop' | 'same place';

/** What comes next on a hole: a shot with its prefilled slots, a putt, or nothing, for the ball is holed. */
export type NextShot =
  | { readonly kind: 'shot'; readonly entry: ShotEntry }
  | { readonly kind: 'putt' }
  | { readonly kind: 'holed' };

function playableLie(rest: RestLie | null): Lie | null {
  return lies.find((lie) => lie === rest) ?? null;
}

/** From where the ball after this one is played, when the golfer has said nothing else. */
function usualPlace(last: Shot): PlayedFrom {
  if (last.outcome === 'lost' || last.outcome === 'out of bounds') return 'same place';
  return last.outcome === 'penalty area' ? 'drop' : 'rest';
}

/**
 * What comes next on a hole, with the slots filled that follow from the shots before: the first ball
 * lies on the tee, each next one where the last came to rest; the swing is full. After a ball lost or
 * out of bounds the same place is played again, after a penalty area a ball is dropped. A provisional
 * ball that was not put in play is passed over.
 *
 * The club and the flag stay open: they are the golfer's to say. The satellite mark of the ball is
 * that of the last one's rest; a drop or a replay breaks that chain.
 *
 * @param hole number of the hole.
 * @param shots shots of the round (or only of the hole), in any order.
 * @param from where the golfer plays from, if not the usual for what became of the last ball.
 */
export function nextShot(hole: number, shots: readonly Shot[], from?: PlayedFrom): NextShot {
  const onHole = shotsOfHole(shots, hole);
  const last = onHole.filter((shot) => shot.outcome !== 'provisional unused').at(-1);
  const entry = blankEntry(hole, numberAfterLast(onHole));
  if (!last) return { kind: 'shot', entry: { ...entry, lie: 'tee' } };

  const place = from ?? usualPlace(last);
  if (place === 'same place') {
    return { kind: 'shot', entry: { ...entry, lie: last.lie, fromDrop: last.lie !== 'tee' } };
  }
  if (place === 'drop') return { kind: 'shot', entry: { ...entry, fromDrop: true } };
  if (last.outcome === 'holed' || last.outcome === 'conceded' || last.restLie === 'holed') return { kind: 'holed' };
  if (last.restLie === 'green') return { kind: 'putt' };
  const marks = { ...entry.marks, ball: last.marks.rest };
  return { kind: 'shot', entry: { ...entry, lie: playableLie(last.restLie), marks } };
}
