import type { Hole } from './hole.ts';
import type { Shot } from './shot.ts';
import { countsAsStroke, shotsOfHole } from './shotOrder.ts';

/** How far a hole has come. */
export type HoleState = 'not started' | 'in play' | 'holed' | 'picked up' | 'conceded';

/** The score of one hole and what it is made of. All are whole numbers ≥ 0. */
export interface HoleScore {
  readonly kind: HoleState;
  /** Strokes and penalty strokes so far, or in all once the hole is over. */
  readonly strokes: number;
  /** Strokes logged as shots; a conceded stroke is one of them. */
  readonly shots: number;
  readonly putts: number;
  readonly penalties: number;
  /** Strokes of the score noted that no shot, putt or penalty stands for. */
  readonly notLogged: number;
  /** Shots, putts and penalties beyond the score noted: one of the two is wrong. */
  readonly overLogged: number;
}

type Scored = Pick<Shot, 'id' | 'hole' | 'number' | 'at' | 'outcome' | 'restLie' | 'penalty'>;

function stateOf(hole: Hole, counting: readonly Scored[]): HoleState {
  if (hole.result !== 'played') return hole.result;
  const last = counting.at(-1);
  if (last?.outcome === 'conceded') return 'conceded';
  const holed = hole.putts.at(-1)?.holed || last?.outcome === 'holed' || last?.restLie === 'holed';
  if (holed || hole.strokes !== null) return 'holed';
  return counting.length > 0 || hole.putts.length > 0 || hole.penalties > 0 ? 'in play' : 'not started';
}

/**
 * The score of a hole as it falls out of what was logged: shots, putts and penalty strokes, or the
 * score the golfer noted, with the strokes that were not logged.
 *
 * A provisional ball that was not put in play does not count. A hole marked conceded scores with the
 * conceded stroke, which counts once whether or not it was logged as a shot; a ball picked up has no
 * score, and `strokes` says how many were taken until then.
 *
 * @param shots shots of the round (or only of the hole), in any order.
 * Source: R&A and USGA, Rules of Golf (2023), Rule 3.2b(2): a conceded stroke completes the hole with
 * a score that includes it; Rule 18.3c: strokes with a provisional ball not in play do not count.
 */
export function holeScore(hole: Hole, shots: readonly Scored[]): HoleScore {
  const counting = shotsOfHole(shots, hole.number).filter(countsAsStroke);
  const kind = stateOf(hole, counting);
  const penalties = hole.penalties + counting.reduce((sum, shot) => sum + shot.penalty, 0);
  const putts = hole.putts.length;
  const holedOut = hole.putts.at(-1)?.holed || ['holed', 'conceded'].includes(counting.at(-1)?.outcome ?? '');
  const given = kind === 'conceded' && !holedOut ? 1 : 0;
  const logged = counting.length + given + putts + penalties;
  const strokes = hole.strokes ?? logged;
  return {
    kind,
    strokes,
    shots: counting.length + given,
    putts,
    penalties,
    notLogged: Math.max(0, strokes - logged),
    overLogged: Math.max(0, logged - strokes),
  };
}
