import * as z from 'zod/mini';
import { type Conditions, conditionsSchema } from './conditions.ts';
import { type Hole, holeSchema } from './hole.ts';
import type { Ball, Play, Round } from './round.ts';
import { holeNumbers } from './roundOrder.ts';

/** What the golfer says when a round begins. */
export interface RoundStart {
  readonly course: string;
  readonly tees: string;
  readonly holes: 9 | 18;
  readonly startHole: number;
  readonly play: Play;
  readonly ball: Ball;
  readonly distanceDevices: boolean;
  readonly conditions: Conditions;
  /** Day of the round as `YYYY-MM-DD`; absent: today. */
  readonly date?: string;
  readonly frozenBook?: Round['frozenBook'];
}

/** Latest round first: by date, then by when it began, then by id. */
function latestFirst(one: Round, other: Round): number {
  const key = (round: Round) => `${round.date} ${round.startedAt ?? ''} ${round.id}`;
  return key(one) < key(other) ? 1 : key(one) > key(other) ? -1 : 0;
}

/** A hole of which nothing is known but its number. @throws RangeError when that is no hole number. */
export function blankHole(number: number): Hole {
  const parsed = z.safeParse(holeSchema, { number });
  if (!parsed.success) throw new RangeError(`${number} is no hole number`);
  return parsed.data;
}

/**
 * What to offer when a round begins: course, tees, holes, way of play and conditions of the latest
 * round, or eighteen holes by the Rules with nothing noted when there is none.
 */
export function rememberedStart(rounds: readonly Round[]): RoundStart {
  const last = [...rounds].sort(latestFirst).find((round) => round.play !== 'practice ground');
  return {
    course: last?.course ?? '',
    tees: last?.tees ?? '',
    holes: last && last.holes.length === 9 ? 9 : 18,
    startHole: 1,
    play: last?.play ?? 'rules',
    ball: 'own',
    distanceDevices: last?.distanceDevices ?? true,
    conditions: last?.conditions ?? z.parse(conditionsSchema, undefined),
  };
}

/**
 * The holes of a round that begins, lowest number first. Par, length and bearing are those last noted
 * on the same course and tees; a course without a name is nobody's, and is not remembered. The
 * practice ground is one hole, number 1.
 */
export function startingHoles(start: RoundStart, earlier: readonly Round[]): Hole[] {
  if (start.play === 'practice ground') return [blankHole(1)];
  const known = new Map<number, Hole>();
  const same = earlier.filter(
    (round) => start.course !== '' && round.course === start.course && round.tees === start.tees,
  );
  for (const round of same.sort(latestFirst).reverse()) {
    for (const hole of round.holes) {
      const before = known.get(hole.number);
      known.set(hole.number, {
        ...blankHole(hole.number),
        par: hole.par ?? before?.par ?? null,
        length_m: hole.length_m ?? before?.length_m ?? null,
        bearing_deg: hole.bearing_deg ?? before?.bearing_deg ?? null,
      });
    }
  }
  return holeNumbers(start.holes, start.startHole)
    .sort((one, other) => one - other)
    .map((number) => known.get(number) ?? blankHole(number));
}
