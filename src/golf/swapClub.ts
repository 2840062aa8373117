import type { ShotEdit } from './provisional.ts';
import type { Shot } from './shot.ts';

/**
 * The edits that put another club in place of one that was noted wrongly, in every shot it was noted for. All else of
 * the shots stays, their swing too. Nothing to edit when the two are one.
 *
 * @param from id of the club noted; null: the shots whose club was left open.
 * @param to id of the club it was.
 */
export function swapClub(
  shots: readonly Pick<Shot, 'id' | 'clubId'>[],
  from: string | null,
  to: string,
): readonly ShotEdit[] {
  if (from === to) return [];
  return shots.filter((shot) => shot.clubId === from).map(({ id }) => ({ id, changes: { clubId: to } }));
}
