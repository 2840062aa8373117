import type { KnownBy } from '../golf/shot.ts';
import type { ShotEntry } from '../golf/shotEntry.ts';

/** A half-entered shot, stored on each change so that a reload lands on the same slot. */
export interface Draft {
  readonly roundId: string;
  readonly hole: number;
  /** The shot being edited; null: a new one. */
  readonly shotId: string | null;
  /** The slot whose keys are open, by the name the screen gives it; null: none. */
  readonly slot: string | null;
  /** What has been typed into that slot and not yet taken over. */
  readonly typed: string;
  readonly entry: ShotEntry;
  /** How the distances of this shot are known; absent from drafts of the first version: by laser. */
  readonly by?: KnownBy;
  /** Slots filled or skipped, by the names the screen gives them; absent from drafts of the first version: none. */
  readonly passed?: readonly string[];
}
