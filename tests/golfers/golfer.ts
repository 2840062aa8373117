import * as z from 'zod/mini';
import { clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { type Carries, drawAbility, drawCarries } from './ability.ts';
import { drawBag } from './bag.ts';
import { type Build, buildBag } from './builtBag.ts';
import { type LoggedShot, loggedShots, type TrueShot } from './loggedShots.ts';
import { drawHabits, type Habits } from './measuring.ts';
import { randomNumbers } from './randomNumbers.ts';
import { drawSeason, drawUses, type Season, type Use } from './season.ts';
import { drawStriking, type Striking } from './strike.ts';
import { type TrueCell, trueCells } from './trueCells.ts';
import type { World } from './worlds.ts';

/** What a golfer is, plays and does in a season, before a ball is hit. */
export interface Person {
  readonly world: World;
  readonly carries: Carries;
  readonly striking: Striking;
  readonly habits: Habits;
  readonly season: Season;
  readonly bag: readonly Build[];
  readonly uses: readonly Use[];
}

/** A synthetic golfer: what is written down, and what is true. */
export interface Golfer {
  readonly person: Person;
  readonly logbook: Logbook;
  readonly asOf: string;
  /** By `clubId|specId|swing`. */
  readonly cells: ReadonlyMap<string, TrueCell>;
  /** By the id of the shot. */
  readonly shots: ReadonlyMap<string, TrueShot>;
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
  const planned = uses.reduce((sum, use) => sum + use.shots, 0);
  const season = drawSeason(world, planned, numbers.fork('season'));
  const bag = buildBag(clubs, carries, season, numbers.fork('builds'));
  const person: Person = { world, carries, striking, habits, season, bag, uses };

  const logged = loggedShots(person, numbers.fork('play'));
  const logbook = composeLogbook(person, seed, logged);
  return {
    person,
    logbook,
    asOf: season.asOf,
    cells: trueCells(person, logbook, numbers),
    shots: new Map(logged.map(({ shot, truth }) => [shot.id, truth])),
  };
}

/** The records that Carrybook would have of this season. The weather is noted nowhere. */
function composeLogbook(person: Person, seed: number, logged: readonly LoggedShot[]): Logbook {
  const { bag, season, world } = person;
  const putter = { id: 'putter', kind: 'putter', name: 'putter', specPeriods: [{ id: 'puttera', loft_deg: 3 }] };
  const clubs = [...bag.map((build) => build.record), z.parse(clubSchema, putter)];
  const inBag = clubs.map((club) => club.id);
  const rounds = [...season.rounds, ...season.practice].map((outing) =>
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
    shots: logged.map(({ shot }) => shot),
    reviews: [],
    done: [],
    deleted: [],
  };
}
