import type { Shot } from '../golf/shot.ts';
import type { Keeper } from './keeper.ts';
import type { Unsaved } from './line.ts';

/** The shots of a round as they will be once everything unsaved is written. */
export function withUnsaved(unsaved: readonly Unsaved[], roundId: string, shots: readonly Shot[]): readonly Shot[] {
  return unsaved
    .filter((change) => change.roundId === roundId)
    .reduce<readonly Shot[]>((changed, change) => change.apply(changed), shots);
}

/** Tries everything unsaved at once; true when nothing is left unsaved. */
export function retryUnsaved(keeper: Keeper): Promise<boolean> {
  return keeper.line.retry();
}
