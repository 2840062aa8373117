import { conditionsNoted, gustOf } from './gusts.ts';
import { besideFlag, strikeLabel } from './measuring.ts';
import { type Golfer, specId, specIndexOn } from './people.ts';
import type { Outing } from './playRound.ts';
import { fromYards, later, type ShotRecord, wholeYards } from './records.ts';
import type { PracticePlan } from './seasonPlan.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import { stockOn, strikeBall } from './swing.ts';

/** What the practice ground makes of every ball: mats and no pressure with own balls, tired covers with range balls. */
const GROUND_FACTOR = { own: 1.012, range: 0.945 } as const;

/** A wedge ladder on the practice ground: so many balls a cell to a flag that was measured. */
export function practise(golfer: Golfer, plan: PracticePlan, id: string, numbers: SeededNumbers): Outing {
  const startedAt = `${plan.date}T17:30:00.000Z`;
  const shots: ShotRecord[] = [];
  for (const { clubId, swing, balls } of plan.ladder) {
    const club = golfer.clubs.find((candidate) => candidate.id === clubId);
    if (!club) throw new RangeError(`${golfer.name} has no club ${clubId}`);
    const flag_m = wholeYards(5 * Math.round(stockOn(golfer, club, swing, plan.date) / fromYards(5)) * fromYards(1));
    for (let ball = 0; ball < balls; ball++) {
      const number = shots.length + 1;
      const at = later(startedAt, 1.2 * number);
      const struck = strikeBall(
        {
          golfer,
          club,
          swing,
          lie: 'fairway',
          intent: 'normal',
          date: plan.date,
          weather: plan.weather,
          gust: gustOf(plan.weather, numbers),
          bearing_deg: 0,
          day: GROUND_FACTOR[plan.ball],
          rise_m: 0,
          flier: false,
        },
        numbers,
      );
      shots.push({
        id: `${id}-${String(number).padStart(2, '0')}`,
        roundId: id,
        hole: 1,
        number,
        at,
        clubId,
        specId: specId(club, specIndexOn(club, plan.date)),
        swing,
        lie: 'fairway',
        tags: [],
        strike: strikeLabel(struck.strike, numbers),
        intent: 'normal',
        flag_m,
        aim: { long_m: 0, right_m: 0 },
        carry: besideFlag(flag_m, struck.carry_m, numbers).carry,
        carryAtLeast_m: null,
        carryAtMost_m: null,
        total: null,
        offline_m: wholeYards(struck.offline_m),
        restLie: null,
        outcome: 'in play',
        penalty: 0,
        fromDrop: false,
        wind: 'calm',
        rise_m: null,
        note: '',
        marks: { ball: null, pitch: null, rest: null },
        changedAt: later(at, 0.5),
        device: golfer.device,
      });
    }
  }
  const closedAt = later(startedAt, 60);
  return {
    round: {
      id,
      date: plan.date,
      startedAt,
      closedAt,
      course: 'Larkfield Down practice ground (invented)',
      tees: '',
      startHole: 1,
      play: 'practice ground',
      closed: true,
      bag: golfer.clubs.filter((club) => club.inBag).map((club) => club.id),
      ball: plan.ball,
      distanceDevices: true,
      frozenBook: null,
      conditions: conditionsNoted({ weather: plan.weather, windNoted: true, play: 'casual' }),
      holes: [],
      changedAt: closedAt,
      device: golfer.device,
    },
    shots,
  };
}
