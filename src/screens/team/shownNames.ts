import { teamWords } from '../words/team.ts';

/**
 * What each golfer is called on the screen: the nickname, told apart by a number where several have one,
 * always the same number for the same golfer.
 */
export function shownNames(
  members: readonly { readonly playerId: string; readonly name: string }[],
): Map<string, string> {
  const inOrder = members.toSorted((a, b) => (a.playerId < b.playerId ? -1 : 1));
  const seen = new Map<string, number>();
  const names = new Map<string, string>();
  for (const { playerId, name } of inOrder) {
    const called = name.trim() || teamWords.unnamed;
    const nth = (seen.get(called) ?? 0) + 1;
    seen.set(called, nth);
    names.set(playerId, nth === 1 ? called : teamWords.nth(called, nth));
  }
  return names;
}
