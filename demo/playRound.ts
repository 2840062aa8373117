import { conditionsNoted } from './gusts.ts';
import type { Golfer } from './people.ts';
import { playHole } from './playHole.ts';
import { type HoleRecord, later, type RoundRecord, type ShotRecord } from './records.ts';
import { GREEN_HALF } from './resting.ts';
import type { RoundPlan } from './seasonPlan.ts';
import type { SeededNumbers } from './seededNumbers.ts';

/** SD of what a day does to every carry of a round. Invented. */
const DAY_SD = 0.008;
/** Minutes a hole takes. Common practice, no source. */
const HOLE_MINUTES = 14;

export interface Outing {
  readonly round: RoundRecord;
  readonly shots: readonly ShotRecord[];
}

/** Slots that were never filled in: now and then a club, a lie, or where the ball came to rest. */
function withOpenSlots(shot: ShotRecord, numbers: SeededNumbers): ShotRecord {
  const way = numbers.uniform();
  if (way < 0.012) return { ...shot, clubId: null, specId: null };
  if (way < 0.028) return { ...shot, lie: null };
  if (way < 0.048 && shot.outcome === 'in play') return { ...shot, restLie: null };
  return shot;
}

/** The log without one shot in the middle of the hole, which nobody wrote down: the score still counts it. */
function withoutOne(shots: readonly ShotRecord[]): ShotRecord[] {
  const plain = shots.findLastIndex((shot) => shot.number > 1 && shot.penalty === 0 && shot.outcome === 'in play');
  return shots.filter((_, index) => index !== plain);
}

/** One round as it stands in the logbook. */
export function playRound(golfer: Golfer, plan: RoundPlan, id: string, numbers: SeededNumbers): Outing {
  const startedAt = `${plan.date}T${plan.play === 'rules' ? '14:00' : '09:20'}:00.000Z`;
  const day = Math.exp(DAY_SD * numbers.normal());
  const holes: HoleRecord[] = [];
  const shots: ShotRecord[] = [];
  for (let played = 0; played < plan.holes; played++) {
    const hole = plan.course.holes[(plan.startHole - 1 + played) % 18];
    const cut = {
      along: GREEN_HALF.depth_m * numbers.between(-0.55, 0.55),
      right: GREEN_HALF.width_m * numbers.between(-0.55, 0.55),
    };
    const event = plan.events[hole.number];
    const startsAt = later(startedAt, HOLE_MINUTES * played);
    const done = playHole({ golfer, plan, hole, event, roundId: id, startsAt, day, cut }, numbers);
    holes.push(done.hole);
    const logged = event === 'shot not logged' ? withoutOne(done.shots) : done.shots;
    shots.push(...logged.map((shot) => withOpenSlots(shot, numbers)));
  }
  const closedAt = later(startedAt, HOLE_MINUTES * plan.holes + 6);
  const round: RoundRecord = {
    id,
    date: plan.date,
    startedAt,
    closedAt,
    course: plan.course.name,
    tees: plan.tees,
    startHole: plan.startHole,
    play: plan.play,
    closed: true,
    bag: golfer.clubs.filter((club) => club.inBag).map((club) => club.id),
    ball: 'own',
    distanceDevices: plan.devices,
    frozenBook: null,
    conditions: conditionsNoted(plan),
    holes: holes.sort((a, b) => a.number - b.number),
    changedAt: closedAt,
    device: golfer.device,
  };
  return { round, shots };
}
