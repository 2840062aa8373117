import { endedAs, penaltyStrokes } from '../../../golf/endedAs.ts';
import { nextShot, type PlayedFrom } from '../../../golf/nextShot.ts';
import { provisionalEntry, type ShotEdit } from '../../../golf/provisional.ts';
import type { Outcome, Shot } from '../../../golf/shot.ts';
import type { ShotEntry } from '../../../golf/shotEntry.ts';
import { countsAsStroke } from '../../../golf/shotOrder.ts';

/** Another ball than the last one where it lies, or no further ball on this hole. */
export type NextBall =
  | { readonly kind: 'drop'; readonly strokes: 0 | 1 }
  | { readonly kind: 'same place' }
  | { readonly kind: 'provisional' }
  | { readonly kind: 'ended'; readonly outcome: Extract<Outcome, 'penalty area' | 'out of bounds' | 'lost'> };

/** What another ball comes to: changes of shots logged before, and the entry it starts with; null: the usual one. */
export interface BallPlayed {
  readonly edits: readonly ShotEdit[];
  readonly entry: ShotEntry | null;
}

/**
 * What playing another ball changes: the last shot takes the penalty stroke or the outcome, and the
 * next starts from where the Rules have it.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rules 16 (free relief), 17.1, 18.2 and 19 (one stroke in
 * all); a drop for a ball lost or out of bounds costs two by Local Rule E-5, from memory.
 *
 * @param onHole shots of the hole in the order played.
 */
export function ballPlayed(ball: NextBall, hole: number, onHole: readonly Shot[]): BallPlayed {
  const last = onHole.filter(countsAsStroke).at(-1) ?? null;
  // In all, not on top: what the outcome cost is counted already, and a key tapped twice costs once.
  const penalized = (strokes: number): ShotEdit[] => {
    if (last === null) return [];
    const penalty = penaltyStrokes(last.outcome) + strokes;
    return penalty === last.penalty ? [] : [{ id: last.id, changes: { penalty } }];
  };
  const from = (place: PlayedFrom): ShotEntry | null => {
    const next = nextShot(hole, onHole, place);
    return next.kind === 'shot' ? next.entry : null;
  };
  switch (ball.kind) {
    case 'drop':
      return { edits: penalized(ball.strokes), entry: from('drop') };
    case 'same place':
      return { edits: penalized(last?.outcome === 'in play' ? 1 : 0), entry: from('same place') };
    case 'provisional':
      return { edits: [], entry: provisionalEntry(hole, onHole) };
    case 'ended':
      return { edits: last === null ? [] : [{ id: last.id, changes: endedAs(ball.outcome) }], entry: null };
  }
}
