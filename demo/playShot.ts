import type { Lie } from '../src/golf/lie.ts';
import type { Tag } from '../src/golf/shot.ts';
import { type Choice, chooseShot } from './choosing.ts';
import type { CourseHole } from './courses.ts';
import { gustOf, windNote } from './gusts.ts';
import { markedTotal } from './marking.ts';
import { measure, strikeLabel } from './measuring.ts';
import { noteFor } from './notes.ts';
import { type Golfer, specId, specIndexOn } from './people.ts';
import { centimetres, fromYards, later, type ShotRecord, wholeYards } from './records.ts';
import { distance, type Place, type Resting, reached, restOf } from './resting.ts';
import type { HoleEvent, RoundPlan } from './seasonPlan.ts';
import type { SeededNumbers } from './seededNumbers.ts';
import { type Struck, strikeBall } from './swing.ts';
import { against, weatherFactor } from './weatherResponse.ts';

/** A hole as it is about to be played. */
export interface HoleToPlay {
  readonly golfer: Golfer;
  readonly plan: RoundPlan;
  readonly hole: CourseHole;
  readonly event: HoleEvent | undefined;
  readonly roundId: string;
  readonly startsAt: string;
  readonly day: number;
  /** Where the hole is cut today, about the middle of the green, m. */
  readonly cut: Place;
}

/** A ball at rest, about to be played. */
export interface Ball {
  place: Place;
  lie: Lie;
  fromDrop: boolean;
}

/** One shot: what is logged of it, and what truly happened. */
export interface Played {
  shot: ShotRecord;
  struck: Struck;
  pitch: Place;
  rest: Place;
  resting: Resting;
}

function tagsOf(flier: boolean, wet: boolean, lie: Lie, numbers: SeededNumbers): Tag[] {
  const tags: Tag[] = [];
  if (flier) tags.push('flier');
  if (wet && lie !== 'tee' && numbers.chance(0.35)) tags.push('wet');
  const stance = (['uphill stance', 'downhill stance', 'ball above', 'ball below'] as const).slice();
  if (lie !== 'tee' && numbers.chance(0.06)) tags.push(numbers.pick(stance));
  return tags;
}

/** A chip or a splash: it ends near the hole, and now and then it is fluffed. */
function chipRest(place: Place, cut: Place, lie: Lie, numbers: SeededNumbers): Place {
  const far = distance(place, cut);
  const fluffed = numbers.chance(lie === 'fairway' ? 0.08 : 0.16);
  const ahead = fluffed
    ? far * numbers.between(0.25, 0.6)
    : far * (1 + 0.2 * numbers.normal()) + 0.5 * numbers.normal();
  return reached(place, cut, Math.max(1, ahead), (0.08 * far + 0.3) * numbers.normal());
}

/** One shot, chosen, struck and written down. */
export function playShot(to: HoleToPlay, ball: Ball, number: number, numbers: SeededNumbers): Played {
  const { golfer, plan, hole, cut } = to;
  const gust = gustOf(plan.weather, numbers);
  const toFlag_m = distance(ball.place, cut);
  const truly = weatherFactor(plan.weather, gust, hole.bearing_deg, 'full', 'iron');
  const choice: Choice = chooseShot(
    {
      golfer,
      hole,
      date: plan.date,
      lie: ball.lie,
      toFlag_m,
      reckoned: 1 + 0.8 * (truly - 1),
      intoWind_mps: against(gust, hole.bearing_deg),
    },
    numbers,
  );
  const approach = choice.atFlag && choice.intent !== 'chip';
  const aimRight_m = approach && numbers.chance(0.2) ? wholeYards(-cut.right) : 0;
  const towards = approach
    ? reached(ball.place, cut, toFlag_m, aimRight_m)
    : choice.atFlag
      ? cut
      : { along: 0, right: 0 };
  const flier = ball.lie === 'light rough' && plan.weather.ground === 'firm' && numbers.chance(0.12);
  const rise_m = hole.rise_m !== 0 && approach && toFlag_m < fromYards(210) ? hole.rise_m : 0;
  const struck = strikeBall(
    {
      golfer,
      club: choice.club,
      swing: choice.swing,
      lie: ball.lie,
      intent: choice.intent,
      date: plan.date,
      weather: plan.weather,
      gust,
      bearing_deg: hole.bearing_deg,
      day: to.day,
      rise_m,
      flier,
    },
    numbers,
  );
  const chip = choice.intent === 'chip';
  const run_m = struck.carry_m + struck.roll_m;
  const pitch = reached(ball.place, towards, struck.carry_m, struck.offline_m);
  const rest = chip
    ? chipRest(ball.place, cut, ball.lie, numbers)
    : reached(ball.place, towards, run_m, struck.offline_m * (run_m / struck.carry_m));
  const resting = restOf(hole, chip ? rest : pitch, rest, numbers);
  const found = resting.kind === 'at rest';
  const at = later(to.startsAt, 2.5 * number);
  const measured = measure(
    {
      choice,
      struck,
      hole,
      teeToGreen_m: hole.length_m[plan.tees],
      lie: ball.lie,
      toFlag_m,
      devices: plan.devices,
      found,
    },
    numbers,
  );
  const marked =
    measured.total && numbers.chance(0.16) ? markedTotal(hole, ball.place, rest, [at, later(at, 2)], numbers) : null;
  const shot: ShotRecord = {
    id: `${to.roundId}-h${String(hole.number).padStart(2, '0')}-${number}`,
    roundId: to.roundId,
    hole: hole.number,
    number,
    at,
    clubId: choice.club.id,
    specId: specId(choice.club, specIndexOn(choice.club, plan.date)),
    swing: choice.swing,
    lie: ball.lie,
    tags: tagsOf(flier, plan.weather.wet, ball.lie, numbers),
    strike: chip ? null : strikeLabel(struck.strike, numbers),
    intent: choice.intent,
    flag_m: measured.flag_m,
    aim: { long_m: choice.layUp_m > 0 ? -wholeYards(choice.layUp_m) : 0, right_m: aimRight_m },
    carry: measured.carry,
    carryAtLeast_m: measured.carryAtLeast_m,
    carryAtMost_m: measured.carryAtMost_m,
    total: marked ? marked.total : measured.total,
    offline_m: measured.offline_m,
    restLie: resting.kind === 'at rest' ? resting.lie : null,
    outcome: 'in play',
    penalty: 0,
    fromDrop: ball.fromDrop,
    wind: windNote(gust, hole.bearing_deg, numbers),
    rise_m: rise_m !== 0 ? centimetres(rise_m) : null,
    note: noteFor(struck.strike, choice.intent, ball.lie, numbers),
    marks: marked ? marked.marks : { ball: null, pitch: null, rest: null },
    changedAt: later(at, 1),
    device: golfer.device,
  };
  return { shot, struck, pitch, rest, resting };
}
