import { type Club, specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import type { Round } from '../golf/round.ts';
import type { Shot } from '../golf/shot.ts';
import type { Degrees } from '../units/degrees.ts';
import type { LeftOut } from './book.ts';

/** A shot that may feed a number, with its round, club and spec period found. */
export interface CountedShot {
  readonly shot: Shot;
  readonly round: Round;
  readonly club: Club;
  readonly specId: string;
  /** When it was hit: its own instant, else the date of its round. */
  readonly when: string;
}

/** Shortest carry that says anything about a swing, metres: below it the ball was topped or duffed. */
const SHORTEST_CARRY = 3;

/** Whether "cleared" or "short of" says anything of the swing. */
export function hasBounds(shot: Shot): boolean {
  return (shot.carryAtLeast_m ?? 0) >= SHORTEST_CARRY || (shot.carryAtMost_m ?? 0) >= SHORTEST_CARRY;
}

/**
 * Divides a logbook's shots into those that feed the book and those that do not, with the reason in
 * words. Both lists are in order of the shots' ids, so that the order of the file does not matter.
 *
 * @param asOf instant of the book: later shots wait for a later book.
 */
export function countedShots(logbook: Logbook, asOf: string): { counted: CountedShot[]; leftOut: LeftOut[] } {
  const clubs = new Map(logbook.clubs.map((club) => [club.id, club]));
  const rounds = new Map(logbook.rounds.map((round) => [round.id, round]));
  const counted: CountedShot[] = [];
  const leftOut: LeftOut[] = [];
  const moment = Date.parse(asOf);
  const shots = [...logbook.shots].sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const shot of shots) {
    const verdict = judge(shot, clubs, rounds, moment);
    if (typeof verdict === 'string') leftOut.push({ shotId: shot.id, why: verdict });
    else counted.push(verdict);
  }
  return { counted, leftOut };
}

function judge(
  shot: Shot,
  clubs: ReadonlyMap<string, Club>,
  rounds: ReadonlyMap<string, Round>,
  moment: number,
): CountedShot | string {
  if (shot.clubId === null) return 'no club noted';
  const club = clubs.get(shot.clubId);
  if (!club) return 'its club was deleted';
  if (club.kind === 'putter') return 'a putter has no carry';
  const round = rounds.get(shot.roundId);
  if (!round) return 'its round was deleted';
  if (shot.intent !== 'normal') return `${shot.intent}: only normal swings feed the book`;
  const when = shot.at ?? round.date;
  if (Date.parse(when) > moment) return 'hit after the day of this book';
  const specId = club.specPeriods.some((period) => period.id === shot.specId)
    ? (shot.specId as string)
    : specOn(club, when).id;
  if (shot.carry && shot.carry.m < SHORTEST_CARRY) return `carry under ${SHORTEST_CARRY} m: topped or duffed`;
  if (shot.carry) return { shot, round, club, specId, when };
  const { carryAtLeast_m: least, carryAtMost_m: most } = shot;
  if (least !== null && most !== null && least > most) return 'the bounds of its carry contradict each other';
  if (!hasBounds(shot)) {
    if (!shot.total) return 'no distance noted';
    if (shot.total.m < SHORTEST_CARRY) return `total under ${SHORTEST_CARRY} m: topped or duffed`;
  }
  return { shot, round, club, specId, when };
}

/** Loft of the club as it was built for a shot, °. @throws RangeError when the club has no such spec period. */
export function loftOf({ club, specId }: Pick<CountedShot, 'club' | 'specId'>): Degrees {
  const spec = club.specPeriods.find((period) => period.id === specId);
  if (!spec) throw new RangeError(`club ${club.id} has no spec period ${specId}`);
  return spec.loft_deg;
}
