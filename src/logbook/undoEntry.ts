import type { Club } from '../golf/club.ts';
import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';

/** What can be taken back. */
export type UndoWhat =
  | 'log shot'
  | 'edit shot'
  | 'move shot'
  | 'delete shot'
  | 'swap club'
  | 'split shot'
  | 'join shots'
  | 'restore shot'
  | 'set hole'
  | 'edit round'
  | 'close round'
  | 'reopen round'
  | 'delete round'
  | 'restore round'
  | 'save club'
  | 'remove club';

/**
 * One record as it was before an action, and the stamp that the action left on it. `before` is null
 * when the record did not exist, `after` when the action deleted it.
 */
export type Image =
  | {
      readonly of: 'shot';
      readonly id: string;
      readonly roundId: string;
      readonly before: Shot | null;
      readonly after: string | null;
    }
  | { readonly of: 'round'; readonly id: string; readonly before: Round | null; readonly after: string | null }
  | { readonly of: 'club'; readonly id: string; readonly before: Club | null; readonly after: string | null };

/** One action that can be taken back; `at` is its stamp and its place in the stack. */
export interface UndoEntry {
  readonly at: string;
  readonly what: UndoWhat;
  readonly images: readonly Image[];
}
