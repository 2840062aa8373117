import { type HoleScore, holeScore } from './holeScore.ts';
import type { Round } from './round.ts';
import { roundOrder } from './roundOrder.ts';
import type { Shot } from './shot.ts';

/** One line of the score card. */
export interface ScoredHole {
  readonly number: number;
  readonly par: number | null;
  readonly score: HoleScore;
}

/** The score of a round, its holes in the order played. */
export interface RoundScore {
  readonly holes: readonly ScoredHole[];
  /** Strokes on the holes that are over, penalties included. */
  readonly strokes: number;
  /** Par of the holes that are over; null when the par of one of them is not known. */
  readonly par: number | null;
  /** Strokes above par on the holes that are over (negative: under par); null with `par`. */
  readonly toPar: number | null;
  readonly putts: number;
  readonly penalties: number;
  readonly notLogged: number;
  /** Whether every hole is over and none was picked up. */
  readonly complete: boolean;
}

function isOver(hole: ScoredHole): boolean {
  return hole.score.kind === 'holed' || hole.score.kind === 'conceded';
}

/**
 * The score of a round as it falls out of the shots, putts and penalties logged. A hole picked up has
 * no score: its strokes count in nothing and the round is not complete.
 *
 * @param shots shots of this round, in any order.
 */
export function scoreRound(round: Round, shots: readonly Shot[]): RoundScore {
  const holes = roundOrder(round).flatMap((number): ScoredHole[] => {
    const hole = round.holes.find((candidate) => candidate.number === number);
    return hole ? [{ number, par: hole.par, score: holeScore(hole, shots) }] : [];
  });
  const over = holes.filter(isOver);
  const sum = (part: (score: HoleScore) => number, of = holes) =>
    of.reduce((total, hole) => total + part(hole.score), 0);
  const strokes = sum((score) => score.strokes, over);
  const par = over.reduce<number | null>(
    (total, hole) => (total === null || hole.par === null ? null : total + hole.par),
    0,
  );
  return {
    holes,
    strokes,
    par,
    toPar: par === null ? null : strokes - par,
    putts: sum((score) => score.putts),
    penalties: sum((score) => score.penalties),
    notLogged: sum((score) => score.notLogged),
    complete: holes.length > 0 && over.length === holes.length,
  };
}

/**
 * Number of the hole in play: the first in the order played that is not over; the last when all are.
 *
 * @throws RangeError when the round has no hole.
 */
export function holeInPlay(round: Round, shots: readonly Shot[]): number {
  const { holes } = scoreRound(round, shots);
  const open = holes.find((hole) => hole.score.kind === 'not started' || hole.score.kind === 'in play');
  const hole = open ?? holes.at(-1);
  if (!hole) throw new RangeError(`round ${round.id} has no hole`);
  return hole.number;
}
