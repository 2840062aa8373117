import type { Round } from './round.ts';
import { holeAfter } from './roundOrder.ts';
import { scoreRound } from './scoreRound.ts';
import type { Shot } from './shot.ts';

/**
 * Number of the hole to go on with: the last one in the order played of which anything was logged, or the
 * one after it once it is over. A hole passed over without a shot does not call the golfer back.
 *
 * @throws RangeError when the round has no hole.
 */
export function holeToResume(round: Round, shots: readonly Shot[]): number {
  const { holes } = scoreRound(round, shots);
  const begun = holes.filter((hole) => hole.score.kind !== 'not started').at(-1);
  const hole = begun ?? holes[0];
  if (!hole) throw new RangeError(`round ${round.id} has no hole`);
  if (!begun || begun.score.kind === 'in play') return hole.number;
  return holeAfter(round, hole.number) ?? hole.number;
}
