import type { Club } from './club.ts';
import { builtDifferently } from './clubForm.ts';
import type { PlayEvent } from './rulesOfPlay.ts';

/** Whether the club was built differently on some day, or is another kind of club. */
function isAltered(before: Club, after: Club): boolean {
  if (before.kind !== after.kind || before.specPeriods.length !== after.specPeriods.length) return true;
  return before.specPeriods.some((period, i) => {
    const other = after.specPeriods[i];
    return period.id !== other.id || period.from !== other.from || builtDifferently(period, other);
  });
}

/** Whether what the golfer says of the club's numbers is another thing: claim, launch, swings not played. */
function isSaidOtherwise(before: Club, after: Club): boolean {
  const said = ({ claimed_m, launch, notPlayed }: Club) => JSON.stringify([claimed_m, launch, notPlayed]);
  return said(before) !== said(after);
}

/**
 * What a change of a club's record is in the eyes of the Rules: a change of the bag, of how a club plays, or of
 * what the book rests on. A name or a note is none of them, and a record that stays the same neither.
 *
 * @param startedWith ids of the clubs that the round was started with; empty: no round.
 * @param before null: the club is new. @param after null: it is removed.
 */
export function clubEvents(startedWith: readonly string[], before: Club | null, after: Club | null): PlayEvent[] {
  const events: PlayEvent[] = [];
  const clubId = before?.id ?? after?.id ?? '';
  if (before && after) {
    if (isAltered(before, after)) {
      events.push(
        before.inBag || startedWith.includes(clubId)
          ? { kind: 'bag', change: { kind: 'alter', clubId } }
          : { kind: 'change evidence' },
      );
    }
    if (isSaidOtherwise(before, after)) events.push({ kind: 'change evidence' });
  }
  if (before && !after && startedWith.includes(clubId)) events.push({ kind: 'change evidence' });
  const wasIn = before?.inBag ?? false;
  const isIn = after?.inBag ?? false;
  if (!wasIn && isIn) events.push({ kind: 'bag', change: { kind: 'add', clubId, from: 'elsewhere' } });
  if (wasIn && !isIn) events.push({ kind: 'bag', change: { kind: 'take out of play', clubId } });
  return events;
}
