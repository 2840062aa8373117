import type { Logbook } from '../golf/logbook.ts';
import { type ApproachDistances, approachDistances } from '../yardages/approachDistances.ts';
import type { FittedBook } from './fitBook.ts';

/** The approach distances of one set of tees, or of all rounds together (`null`). */
export interface FacedFromTees {
  readonly tees: string | null;
  readonly rounds: number;
  readonly approaches: ApproachDistances;
}

/**
 * What distances this golfer has faced on the course, all rounds together first, then by the tees
 * played. Approaches are shots with a distance to the flag noted; practice ground, recoveries and
 * chips are not among them. The wide default reaches as far as his longest club off the turf.
 */
export function approachesFaced(logbook: Logbook, { asOf, cells, theta }: FittedBook): FacedFromTees[] {
  const rounds = new Map(
    logbook.rounds.filter(({ play }) => play !== 'practice ground').map((round) => [round.id, round]),
  );
  const faced: { tees: string; roundId: string; flag_m: number }[] = [];
  for (const shot of logbook.shots) {
    const round = rounds.get(shot.roundId);
    if (!round || shot.flag_m === null || shot.outcome === 'provisional unused') continue;
    if (shot.intent === 'recovery' || shot.intent === 'chip') continue;
    if (Date.parse(shot.at ?? round.date) > Date.parse(asOf)) continue;
    faced.push({ tees: round.tees, roundId: round.id, flag_m: shot.flag_m });
  }
  const offTurf = cells.flatMap(({ kind }, i) => (kind === 'driver' ? [] : [Math.exp(theta[i])]));
  const reach_m = Math.max(0, ...offTurf);
  const from = (tees: string | null): FacedFromTees => {
    const those = faced.filter((one) => tees === null || one.tees === tees);
    return {
      tees,
      rounds: new Set(those.map(({ roundId }) => roundId)).size,
      approaches: approachDistances(
        those.map(({ flag_m }) => flag_m),
        reach_m,
      ),
    };
  };
  const tees = [...new Set(faced.map((one) => one.tees))].filter((name) => name !== '').sort();
  return [from(null), ...tees.map(from)];
}
