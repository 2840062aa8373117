import * as z from 'zod/mini';
import { type Shot, shotSchema } from '../../src/golf/shot.ts';
import { type Swing, WEDGE_SWINGS } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { type Build, lnStock } from './builtBag.ts';
import type { Person } from './golfer.ts';
import { labelStrike, readCarry } from './measuring.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import { drawLie, type Outing } from './season.ts';
import { type Ball, drawBall } from './strike.ts';

/** What the shot really was, for tests of the generator. */
export interface TrueShot {
  readonly ball: Ball;
  readonly clubId: string;
  readonly swing: Swing;
  readonly carry_m: number;
}

/** A shot as it got into the logbook, and what it really was. */
export interface LoggedShot {
  readonly shot: Shot;
  readonly truth: TrueShot;
}

/** A neighbour in the bag that plays this swing, taken for the club that was hit. */
function mistakenFor(build: Build, swing: Swing, bag: readonly Build[], numbers: RandomNumbers): Build {
  const i = bag.indexOf(build);
  const near = [bag[i - 1], bag[i + 1]].filter(
    (other) => other !== undefined && (swing === 'full' || other.club.kind === 'wedge'),
  );
  return near.length > 0 ? numbers.choice(near) : build;
}

/**
 * One stroke, or null when a costly mishit was never written down. A few tee shots are only known to
 * have cleared a bunker or not; a few shots were never measured, and some were no normal ones.
 *
 * @param number which stroke of the outing it is, from 1.
 */
function play(
  person: Person,
  build: Build,
  swing: Swing,
  outing: Outing,
  number: number,
  numbers: RandomNumbers,
): LoggedShot | null {
  const { world, striking, carries, habits, season, bag } = person;
  const old = build.changedOn !== null && outing.date < build.changedOn;
  const lie = outing.practice ? 'fairway' : drawLie(build.club, swing, numbers);
  const ball = drawBall(world, striking, carries, build.club, swing, lie, numbers);
  if (ball.mishit && ball.ln < Math.log(0.92) && numbers.chance(habits.forgotten)) return null;
  const offset = outing.practice ? season.practiceOffset[outing.ball] : 0;
  const intent = numbers.choice(['normal', 'knockdown', 'recovery', 'chip'] as const, [94, 3, 2, 1]);
  const held = { normal: 0, knockdown: -0.12, recovery: -0.5, chip: -1.2 }[intent];
  const ln = lnStock(carries, build, swing, old) + outing.form + outing.progress + offset + ball.ln + held;
  const carry_yd = Math.max(2, Math.exp(ln));
  const logged = numbers.chance(habits.wrongClub) ? mistakenFor(build, swing, bag, numbers) : build;
  const loggedOld = logged.changedOn !== null && outing.date < logged.changedOn;

  const id = `${outing.id}s${number}`;
  const minutes = 9 * 60 + 5 * number;
  const time = `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
  const teed = lie === 'tee' && build.club.loft_deg < 24;
  const censored = teed && numbers.chance(0.05);
  const bunker_yd = Math.round(Math.exp(carries.lnStock(build.club, swing)) * numbers.between(0.8, 1.08));
  const measured = !censored && !numbers.chance(0.05);
  const reading = measured ? readCarry(carry_yd, swing, habits, numbers) : null;
  const cleared = carry_yd * Math.exp(numbers.normal(0, 0.01)) > bunker_yd;
  const shot = z.parse(shotSchema, {
    id,
    roundId: outing.id,
    hole: outing.practice ? 1 : 1 + (Math.floor((number - 1) / 2) % 18),
    number,
    at: `${outing.date}T${time}:00Z`,
    clubId: logged.club.id,
    specId: logged.record.specPeriods[loggedOld || logged.changedOn === null ? 0 : 1].id,
    swing,
    lie,
    tags: ball.flier && lie === 'light rough' && numbers.chance(0.5) ? ['flier'] : [],
    strike: labelStrike(ball, build.club, habits, numbers),
    intent,
    carry: reading?.carry ?? null,
    flag_m: reading?.flag_m ?? null,
    carryAtLeast_m: censored && cleared ? bunker_yd * METRES_PER_YARD : null,
    carryAtMost_m: censored && !cleared ? bunker_yd * METRES_PER_YARD : null,
  });
  return { shot, truth: { ball, clubId: build.club.id, swing, carry_m: carry_yd * METRES_PER_YARD } };
}

/** Every shot of the season that was written down: the rounds, then the visits to the practice ground. */
export function loggedShots(person: Person, numbers: RandomNumbers): LoggedShot[] {
  const { season, bag, uses } = person;
  const logged: LoggedShot[] = [];
  const strokes = new Map<Outing, number>();
  const log = (build: Build, swing: Swing, outing: Outing) => {
    const number = (strokes.get(outing) ?? 0) + 1;
    const shot = play(person, build, swing, outing, number, numbers);
    if (!shot) return;
    strokes.set(outing, number);
    logged.push(shot);
  };
  const byRound = new Map<Outing, [Build, Swing][]>(season.rounds.map((round) => [round, []]));
  for (const use of uses) {
    const build = bag.find(({ club }) => club === use.club);
    if (!build) throw new RangeError(`${use.club.name} is not in the bag`);
    for (let i = 0; i < use.shots; i++) byRound.get(numbers.choice(season.rounds))?.push([build, use.swing]);
  }
  for (const [round, planned] of byRound) for (const [build, swing] of planned) log(build, swing, round);
  for (const visit of season.practice) {
    for (const build of bag) {
      if (build.club.kind !== 'wedge') continue;
      for (const swing of ['full', ...WEDGE_SWINGS]) {
        const balls = numbers.chance(0.6) ? numbers.whole(4, 14) : 0;
        for (let i = 0; i < balls; i++) log(build, swing, visit);
      }
    }
  }

  return logged;
}
