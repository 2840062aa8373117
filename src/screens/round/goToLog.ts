import type { Round } from '../../golf/round.ts';
import { goTo } from '../route.ts';
import { shownHole } from './shownHole.ts';

/** Goes to the page that logs a hole. The round being played has the Round place itself. */
export function goToLog(round: Pick<Round, 'id' | 'closed'>, hole: number): void {
  if (round.closed) {
    goTo('round', 'log', round.id, String(hole));
    return;
  }
  shownHole.value = { roundId: round.id, hole };
  goTo('round');
}
