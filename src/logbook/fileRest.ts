import type { Logbook } from '../golf/logbook.ts';

const known: ReadonlySet<string> = new Set<keyof Logbook>([
  'player',
  'clubs',
  'rounds',
  'shots',
  'reviews',
  'done',
  'deleted',
]);

/** What a logbook read from a file holds beside the records this version knows. */
export function restOf(logbook: Logbook): Record<string, unknown> {
  return Object.fromEntries(Object.entries(logbook).filter(([key]) => !known.has(key)));
}
