import * as z from 'zod/mini';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { type Round, roundSchema } from '../../src/golf/round.ts';
import { type Shot, shotSchema } from '../../src/golf/shot.ts';
import { type Swing, WEDGE_SWINGS } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { type Carries, drawAbility, drawCarries } from './ability.ts';
import { type BagClub, drawBag } from './bag.ts';
import { drawHabits, type Habits, labelStrike, readCarry } from './measuring.ts';
import { type RandomNumbers, randomNumbers } from './randomNumbers.ts';
import { drawLie, drawSeason, drawUses, type Outing, type Season } from './season.ts';
import { type Ball, drawBall, drawStriking, type Striking } from './strike.ts';
import type { World } from './worlds.ts';

/** Balls drawn to know the true distribution of the next one. */
const NEXT_BALLS = 500;

/** One cell as it really is, and as it was logged. */
export interface TrueCell {
  readonly club: Club;
  readonly specId: string;
  readonly swing: Swing;
  /** Whether the club is built like this now. */
  readonly current: boolean;
  /** Median carry of solid strikes from the reference lie, on the day asked for. */
  readonly stock_m: number;
  /** Carries of {@link NEXT_BALLS} next balls from the reference lie, mishits included, ascending. */
  readonly nextBalls_m: readonly number[];
  /** The golfer's own measured normal shots of the course logged under this cell, as written down. */
  readonly measured_m: readonly number[];
}

/** What the shot really was, for tests of the generator. */
export interface TrueShot {
  readonly ball: Ball;
  readonly clubId: string;
  readonly swing: Swing;
  readonly carry_m: number;
}

/** A synthetic golfer: what is written down, and what is true. */
export interface Golfer {
  readonly logbook: Logbook;
  readonly asOf: string;
  /** By `clubId|specId|swing`. */
  readonly cells: ReadonlyMap<string, TrueCell>;
  readonly shots: ReadonlyMap<string, TrueShot>;
  readonly striking: Striking;
  readonly habits: Habits;
  readonly season: Season;
}

/** The key of a cell in {@link Golfer.cells}. */
export const cellKey = (clubId: string, specId: string, swing: Swing) => `${clubId}|${specId}|${swing}`;

/** A club of the bag with its build before and after a change, if there was one. */
interface Build {
  readonly club: BagClub;
  readonly record: Club;
  readonly loftBefore_deg: number;
  readonly changedOn: string | null;
  /** ln by which the old build differs beyond its loft. */
  readonly before: number;
}

/** One golfer in five has one iron or wedge bent by 1 or 2° in the season. The loft of the bag is the one after. */
function buildBag(clubs: readonly BagClub[], carries: Carries, season: Season, numbers: RandomNumbers): Build[] {
  const bendable = clubs.filter((club) => club.kind === 'iron' || club.kind === 'wedge');
  const bent = numbers.chance(0.2) ? numbers.choice(bendable) : null;
  const turn_deg = numbers.choice([-2, -1, 1, 2]);
  const flattery = numbers.normal(0.03, 0.045);
  const claims = numbers.choice(['none', 'three', 'all'] as const, [0.6, 0.25, 0.15]);
  const favourite = clubs.findLast((club) => club.kind === 'wedge');
  return clubs.map((club) => {
    const changedOn = club === bent ? season.middle : null;
    const loftBefore_deg = club === bent ? club.loft_deg - turn_deg : club.loft_deg;
    const asked = club.kind === 'driver' || club.name === '7 iron' || club === favourite;
    const claimed =
      claims === 'all' || (claims === 'three' && asked)
        ? Math.round(Math.exp(carries.lnStock(club, 'full') + flattery + numbers.normal(0, 0.04)) / 5) * 5
        : null;
    const specPeriods = [{ id: `${club.id}a`, from: '2026-01-01', loft_deg: loftBefore_deg }];
    if (changedOn) specPeriods.push({ id: `${club.id}b`, from: changedOn, loft_deg: club.loft_deg });
    const record = z.parse(clubSchema, {
      id: club.id,
      kind: club.kind,
      name: club.name,
      claimed_m: claimed === null ? null : claimed * METRES_PER_YARD,
      specPeriods,
    });
    return { club, record, loftBefore_deg, changedOn, before: numbers.normal(0, 0.006) };
  });
}

/** ln of the stock carry in yards, on the last day, of a club as built in one of its periods. */
function lnStock(carries: Carries, build: Build, swing: Swing, old: boolean): number {
  if (!old) return carries.lnStock(build.club, swing);
  return carries.lnStock(build.club, swing, build.loftBefore_deg) + build.before;
}

/** A neighbour in the bag that plays this swing, taken for the club that was hit. */
function mistakenFor(build: Build, swing: Swing, bag: readonly Build[], numbers: RandomNumbers): Build {
  const i = bag.indexOf(build);
  const near = [bag[i - 1], bag[i + 1]].filter(
    (other) => other !== undefined && (swing === 'full' || other.club.kind === 'wedge'),
  );
  return near.length > 0 ? numbers.choice(near) : build;
}

/** A golfer of this world; the same for the same seed. */
export function makeGolfer(world: World, seed: number): Golfer {
  const numbers = randomNumbers(`${world.name}/${seed}`);
  const ability = drawAbility(world, numbers.fork('ability'));
  const clubs = drawBag(world, ability.short, numbers.fork('bag'));
  const carries = drawCarries(world, ability, clubs, numbers.fork('carries'));
  const striking = drawStriking(world, numbers.fork('striking'));
  const habits = drawHabits(world, numbers.fork('habits'));
  const uses = drawUses(world, clubs, numbers.fork('uses'));
  const season = drawSeason(
    world,
    uses.reduce((sum, use) => sum + use.shots, 0),
    numbers.fork('season'),
  );
  const bag = buildBag(clubs, carries, season, numbers.fork('builds'));
  const play = numbers.fork('play');

  const shots: Record<string, unknown>[] = [];
  const truths = new Map<string, TrueShot>();
  const strokes = new Map<string, number>();
  const log = (build: Build, swing: Swing, outing: Outing) => {
    const old = build.changedOn !== null && outing.date < build.changedOn;
    const lie = outing.practice ? 'fairway' : drawLie(build.club, swing, play);
    const ball = drawBall(world, striking, carries, build.club, swing, lie, play);
    if (ball.mishit && ball.ln < Math.log(0.92) && play.chance(habits.forgotten)) return;
    const offset = outing.practice ? season.practiceOffset[outing.ball] : 0;
    const intent = play.choice(['normal', 'knockdown', 'recovery', 'chip'] as const, [94, 3, 2, 1]);
    const held = { normal: 0, knockdown: -0.12, recovery: -0.5, chip: -1.2 }[intent];
    const ln = lnStock(carries, build, swing, old) + outing.form + outing.progress + offset + ball.ln + held;
    const carry_yd = Math.max(2, Math.exp(ln));
    const logged = play.chance(habits.wrongClub) ? mistakenFor(build, swing, bag, play) : build;
    const loggedOld = logged.changedOn !== null && outing.date < logged.changedOn;

    const stroke = (strokes.get(outing.id) ?? 0) + 1;
    strokes.set(outing.id, stroke);
    const id = `${outing.id}s${stroke}`;
    const minutes = 9 * 60 + 5 * stroke;
    const time = `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    const teed = lie === 'tee' && build.club.loft_deg < 24;
    const censored = teed && play.chance(0.05);
    const bunker_yd = Math.round(Math.exp(carries.lnStock(build.club, swing)) * play.between(0.8, 1.08));
    const measured = !censored && !play.chance(0.05);
    const reading = measured ? readCarry(carry_yd, swing, habits, play) : null;
    const cleared = carry_yd * Math.exp(play.normal(0, 0.01)) > bunker_yd;
    shots.push({
      id,
      roundId: outing.id,
      hole: outing.practice ? 1 : 1 + (Math.floor((stroke - 1) / 2) % 18),
      number: stroke,
      at: `${outing.date}T${time}:00Z`,
      clubId: logged.club.id,
      specId: logged.record.specPeriods[loggedOld || logged.changedOn === null ? 0 : 1].id,
      swing,
      lie,
      tags: ball.flier && lie === 'light rough' && play.chance(0.5) ? ['flier'] : [],
      strike: labelStrike(ball, build.club, habits, play),
      intent,
      carry: reading?.carry ?? null,
      flag_m: reading?.flag_m ?? null,
      carryAtLeast_m: censored && cleared ? bunker_yd * METRES_PER_YARD : null,
      carryAtMost_m: censored && !cleared ? bunker_yd * METRES_PER_YARD : null,
    });
    truths.set(id, { ball, clubId: build.club.id, swing, carry_m: carry_yd * METRES_PER_YARD });
  };

  const byRound = new Map<Outing, [Build, Swing][]>(season.rounds.map((round) => [round, []]));
  for (const use of uses) {
    const build = bag[clubs.indexOf(use.club)];
    for (let i = 0; i < use.shots; i++) byRound.get(play.choice(season.rounds))?.push([build, use.swing]);
  }
  for (const [round, planned] of byRound) for (const [build, swing] of planned) log(build, swing, round);
  for (const visit of season.practice) {
    for (const build of bag) {
      if (build.club.kind !== 'wedge') continue;
      for (const swing of ['full', ...WEDGE_SWINGS]) {
        const balls = play.chance(0.6) ? play.whole(4, 14) : 0;
        for (let i = 0; i < balls; i++) log(build, swing, visit);
      }
    }
  }

  const logbook = composeLogbook(world, seed, bag, season, shots);
  const cells = trueCells(
    world,
    striking,
    carries,
    season,
    bag,
    uses.map((use) => [use.club.id, use.swing]),
    logbook,
    numbers,
  );
  return { logbook, asOf: season.asOf, cells, shots: truths, striking, habits, season };
}

function composeLogbook(
  world: World,
  seed: number,
  bag: readonly Build[],
  season: Season,
  shots: readonly Record<string, unknown>[],
): Logbook {
  const clubs: Club[] = bag.map((build) => build.record);
  const putter = { id: 'putter', kind: 'putter', name: 'putter', specPeriods: [{ id: 'puttera', loft_deg: 3 }] };
  clubs.push(z.parse(clubSchema, putter));
  const inBag = clubs.map((club) => club.id);
  const rounds: Round[] = [...season.rounds, ...season.practice].map((outing) =>
    z.parse(roundSchema, {
      id: outing.id,
      date: outing.date,
      play: outing.practice ? 'practice ground' : 'casual',
      ball: outing.ball,
      bag: inBag,
    }),
  );
  return {
    player: z.parse(playerSchema, { id: `golfer-${seed}`, name: `invented, ${world.name} ${seed}` }),
    clubs,
    rounds,
    shots: shots.map((shot): Shot => z.parse(shotSchema, shot)),
    reviews: [],
    done: [],
    deleted: [],
  };
}

/** Every full swing, every wedge's three partial swings and every other swing the golfer plays, old builds too. */
function trueCells(
  world: World,
  striking: Striking,
  carries: Carries,
  season: Season,
  bag: readonly Build[],
  played: readonly (readonly [string, Swing])[],
  logbook: Logbook,
  numbers: RandomNumbers,
): Map<string, TrueCell> {
  const practice = new Set(season.practice.map((outing) => outing.id));
  const measured = new Map<string, number[]>();
  for (const shot of logbook.shots) {
    if (shot.intent !== 'normal' || !shot.carry || practice.has(shot.roundId)) continue;
    const key = cellKey(shot.clubId ?? '', shot.specId ?? '', shot.swing);
    measured.set(key, [...(measured.get(key) ?? []), shot.carry.m]);
  }
  const cells = new Map<string, TrueCell>();
  for (const build of bag) {
    for (const [clubId, swing] of played) {
      if (clubId !== build.club.id) continue;
      build.record.specPeriods.forEach((spec, i) => {
        const current = i === build.record.specPeriods.length - 1;
        const key = cellKey(clubId, spec.id, swing);
        const stock_yd = Math.exp(lnStock(carries, build, swing, !current));
        const stream = numbers.fork(key);
        const lie = build.club.kind === 'driver' ? 'tee' : 'fairway';
        const nextBalls_m = Array.from({ length: NEXT_BALLS }, () => {
          const ball = drawBall(world, striking, carries, build.club, swing, lie, stream);
          return stock_yd * METRES_PER_YARD * Math.exp(ball.ln + stream.normal(0, season.daySpread));
        }).sort((a, b) => a - b);
        cells.set(key, {
          club: build.record,
          specId: spec.id,
          swing,
          current,
          stock_m: stock_yd * METRES_PER_YARD,
          nextBalls_m,
          measured_m: measured.get(key) ?? [],
        });
      });
    }
  }
  return cells;
}
