import { signal } from '@preact/signals';
import { holeToResume } from '../../golf/holeToResume.ts';
import type { Draft } from '../../logbook/draft.ts';
import type { RoundWithShots } from '../../logbook/live.ts';

/** The hole that was last on the screen to be logged, and of which round; null: none since the app was opened. */
export const shownHole = signal<{ readonly roundId: string; readonly hole: number } | null>(null);

/**
 * The hole to show of a round that is being played: the one last on the screen, else that of the
 * half-entered shot, else the one to go on with.
 */
export function holeOnScreen({ round, shots }: RoundWithShots, draft: Draft | null): number {
  const there = (hole: number) => round.holes.some((each) => each.number === hole);
  const shown = shownHole.value;
  if (shown?.roundId === round.id && there(shown.hole)) return shown.hole;
  if (draft?.roundId === round.id && there(draft.hole)) return draft.hole;
  return holeToResume(round, shots);
}
