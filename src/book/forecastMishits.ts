import type { Logbook } from '../golf/logbook.ts';
import { PRIOR } from '../yardages/priorTable.ts';
import type { CountedShot } from './countedShots.ts';

/** Unlogged strokes raise the share of mishits by at most this part of it: many of them are chips and tap-ins. */
const MOST_RAISED = 0.5;

/**
 * Share of mishits to expect of the next ball: π of the logged shots, raised for mishits that never
 * were logged. With u unlogged mishits a logged shot, π' = (π + u) / (1 + u).
 *
 * Where holes have scores, u is counted: strokes less shots, putts and penalties, a logged shot; where
 * none has, u is a quarter of π. Assumption: an unlogged stroke is a mishit as a rule.
 *
 * @param mishits π of the logged shots, 0 to 1. @param asOf instant of the book: later shots are not yet hit.
 */
export function forecastMishits(
  logbook: Logbook,
  counted: readonly CountedShot[],
  mishits: number,
  asOf: string,
): number {
  const logged = new Map<string, number>();
  const moment = Date.parse(asOf);
  for (const shot of logbook.shots) {
    if (shot.outcome === 'provisional unused' || (shot.at !== null && Date.parse(shot.at) > moment)) continue;
    const hole = `${shot.roundId}|${shot.hole}`;
    logged.set(hole, (logged.get(hole) ?? 0) + 1);
  }
  const rounds = new Set(counted.map(({ round }) => round));
  let scored = 0;
  let unlogged = 0;
  for (const round of rounds) {
    for (const hole of round.holes) {
      const shots = logged.get(`${round.id}|${hole.number}`) ?? 0;
      if (hole.strokes === null || shots === 0) continue;
      scored += shots;
      unlogged += Math.max(0, hole.strokes - shots - hole.putts.length - hole.penalties);
    }
  }
  const usual = PRIOR.unloggedMishits * mishits;
  const raised = scored === 0 ? usual : Math.min(MOST_RAISED * mishits, unlogged / scored);
  return (mishits + raised) / (1 + raised);
}
