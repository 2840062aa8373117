/** The name of a file without its ending: what it is and the day, and a name only when one was chosen. */
export function fileStem(what: string, day: string, chosen: string): string {
  const safe = chosen.replace(/[^\p{L}\p{N}-]+/gu, '-').replace(/^-+|-+$/g, '');
  return [what, ...(safe ? [safe] : []), day].join('-');
}
