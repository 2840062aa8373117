import type { Round } from '../../../golf/round.ts';

/** A course and the tees it was played from. */
export interface EarlierCourse {
  readonly course: string;
  readonly tees: string;
}

/** The courses with a name that were played before, each with its tees once, the latest first. */
export function earlierCourses(rounds: readonly Round[]): EarlierCourse[] {
  const latest = [...rounds].sort((one, other) => (one.date < other.date ? 1 : one.date > other.date ? -1 : 0));
  const found = new Map<string, EarlierCourse>();
  for (const { course, tees, play } of latest) {
    const key = JSON.stringify([course, tees]);
    if (course !== '' && play !== 'practice ground' && !found.has(key)) found.set(key, { course, tees });
  }
  return [...found.values()];
}
