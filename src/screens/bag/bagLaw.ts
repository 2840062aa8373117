import { bagChanged } from '../../golf/bagInPlay.ts';
import type { Club } from '../../golf/club.ts';
import { permissions } from '../../golf/permissions.ts';
import type { Round } from '../../golf/round.ts';
import { byTheRules } from '../words/byTheRules.ts';

/** Whether a round by the Rules is being played: builds and claims stay as they are until it is over. */
export function isBagHeld(round: Round | null): boolean {
  return !permissions(round).changingEvidence;
}

/** Why a club may not be put into the bag now, in words; null: it may. */
export function whyNotIn(round: Round | null, clubs: readonly Club[], clubId: string): string | null {
  if (round === null || !isBagHeld(round)) return null;
  const carried = clubs.filter((club) => club.inBag).map((club) => club.id);
  const verdict = bagChanged({ startedWith: round.bag.length, carried }, { kind: 'add', clubId, from: 'elsewhere' });
  if (verdict.kind === 'allowed') return null;
  return byTheRules[verdict.clause];
}
