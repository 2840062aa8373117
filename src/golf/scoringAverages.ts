import type { Logbook } from './logbook.ts';
import { scoreRound } from './scoreRound.ts';
import type { Shot } from './shot.ts';

/** A mean and how many holes or rounds it is of. */
export interface Average {
  readonly mean: number;
  readonly of: number;
}

/** How a golfer scores, for the line-up. Null: nothing to say. */
export interface ScoringAverages {
  /** Strokes on a par 3, 4 and 5. */
  readonly par3: Average | null;
  readonly par4: Average | null;
  readonly par5: Average | null;
  /** Strokes above par over nine holes; complete rounds only, an eighteen-hole round counts as two nines. */
  readonly toParANine: Average | null;
  readonly puttsAHole: Average | null;
}

function average(values: readonly number[]): Average | null {
  if (values.length === 0) return null;
  return { mean: values.reduce((sum, value) => sum + value, 0) / values.length, of: values.length };
}

/**
 * Mean strokes on holes of each par, and mean strokes above par over nine holes, from rounds on the course
 * within a stretch of days. A nine-hole match counts like half a round, so that a team that plays nines and
 * one that plays eighteens can be compared. Holes picked up have no score and count in no mean; a conceded
 * hole counts with the conceded stroke.
 *
 * @param from first day that counts, `YYYY-MM-DD`. @param to last day.
 * Source: common practice, no source.
 */
export function scoringAverages(logbook: Pick<Logbook, 'rounds' | 'shots'>, from: string, to: string): ScoringAverages {
  const shotsOf = new Map<string, Shot[]>();
  for (const shot of logbook.shots) {
    const shots = shotsOf.get(shot.roundId);
    if (shots) shots.push(shot);
    else shotsOf.set(shot.roundId, [shot]);
  }
  const byPar: Record<number, number[]> = { 3: [], 4: [], 5: [] };
  const nines: number[] = [];
  const putts: number[] = [];
  for (const round of logbook.rounds) {
    if (round.play === 'practice ground' || !round.closed || round.date < from || round.date > to) continue;
    const score = scoreRound(round, shotsOf.get(round.id) ?? []);
    for (const { par, score: hole } of score.holes) {
      if (hole.kind !== 'holed' && hole.kind !== 'conceded') continue;
      if (par !== null) byPar[par]?.push(hole.strokes);
      if (hole.putts > 0) putts.push(hole.putts);
    }
    const count = score.holes.length;
    if (!score.complete || score.toPar === null || count % 9 !== 0) continue;
    for (let nine = 0; nine < count / 9; nine++) nines.push(score.toPar / (count / 9));
  }
  return {
    par3: average(byPar[3]),
    par4: average(byPar[4]),
    par5: average(byPar[5]),
    toParANine: average(nines),
    puttsAHole: average(putts),
  };
}
