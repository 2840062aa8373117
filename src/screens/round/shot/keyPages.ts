/**
 * Keys in pages for a grid of so many places: all of them when they fit, else pages that each leave
 * one place for the key that turns the page.
 *
 * @param room places of the grid, at least 2.
 */
export function keyPages<T>(keys: readonly T[], room: number): (readonly T[])[] {
  if (keys.length <= room) return [keys];
  const pages: (readonly T[])[] = [];
  for (let start = 0; start < keys.length; start += room - 1) pages.push(keys.slice(start, start + room - 1));
  return pages;
}
