import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { clubSchema, specOn } from '../../src/golf/club.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { shotSchema } from '../../src/golf/shot.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { type Golfer, makeGolfer } from './golfer.ts';
import { randomNumbers } from './randomNumbers.ts';
import { drawBall, mishitRate } from './strike.ts';
import { base, type World, worlds } from './worlds.ts';

const GOLFERS = 60;
const made = new Map<World, Golfer[]>();

function golfersOf(name: string): Golfer[] {
  const world = worlds.find((one) => one.name === name);
  if (!world) throw new RangeError(`no world ${name}`);
  const golfers = made.get(world) ?? Array.from({ length: GOLFERS }, (_, i) => makeGolfer(world, i + 1));
  made.set(world, golfers);
  return golfers;
}

const ordinary = () => golfersOf('base');
const share = <T>(items: readonly T[], is: (item: T) => boolean) => items.filter(is).length / items.length;
const sd = (values: readonly number[]) => {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (values.length - 1));
};
const quantile = (values: readonly number[], p: number) =>
  [...values].sort((a, b) => a - b)[Math.floor(p * values.length)];
/** Every logged shot beside what it really was. */
const shotsOf = (golfers: readonly Golfer[]) =>
  golfers.flatMap((golfer) =>
    golfer.logbook.shots.map((shot) => {
      const truth = golfer.shots.get(shot.id);
      if (!truth) throw new RangeError(`nothing is known of ${shot.id}`);
      return { golfer, shot, truth };
    }),
  );

test('the same seed gives the same golfer, another seed or world another', () => {
  const seen = (world: World, seed: number) => {
    const { logbook, asOf, cells, shots } = makeGolfer(world, seed);
    return JSON.stringify([logbook.clubs, logbook.rounds, logbook.shots, asOf, [...cells], [...shots]]);
  };
  expect(seen(base, 5)).toBe(seen(base, 5));
  expect(seen(base, 5)).not.toBe(seen(base, 6));
  expect(seen(base, 5)).not.toBe(seen(worlds[1], 5));
});

test.each(worlds.map((world) => world.name))('%s: every record is as a Carrybook file would have it', (name) => {
  for (const { logbook, asOf } of golfersOf(name).slice(0, 10)) {
    for (const club of logbook.clubs) expect(z.parse(clubSchema, club)).toEqual(club);
    for (const round of logbook.rounds) expect(z.parse(roundSchema, round)).toEqual(round);
    const clubs = new Map(logbook.clubs.map((club) => [club.id, club]));
    const rounds = new Set(logbook.rounds.map((round) => round.id));
    expect(new Set(logbook.shots.map((shot) => shot.id)).size).toBe(logbook.shots.length);
    for (const shot of logbook.shots) {
      expect(shotSchema.safeParse(shot).data).toEqual(shot);
      const club = clubs.get(shot.clubId ?? '');
      if (!club || !shot.at) throw new RangeError(`${shot.id} has no club or time`);
      expect(shot.specId).toBe(specOn(club, shot.at).id);
      expect(rounds.has(shot.roundId)).toBe(true);
      expect(shot.at < asOf).toBe(true);
    }
  }
});

describe('the base world is as stated', () => {
  test('bags hold 11 to 14 clubs, a driver, woods, irons and three or four wedges', () => {
    for (const { logbook } of ordinary()) {
      expect(logbook.clubs.length).toBeGreaterThanOrEqual(11);
      expect(logbook.clubs.length).toBeLessThanOrEqual(14);
      const count = (kind: string) => logbook.clubs.filter((club) => club.kind === kind).length;
      expect([count('driver'), count('putter')]).toEqual([1, 1]);
      expect([1, 2]).toContain(count('fairway wood'));
      expect([3, 4]).toContain(count('wedge'));
      expect(count('hybrid') + count('driving iron')).toBeLessThanOrEqual(2);
      expect(count('iron')).toBeGreaterThanOrEqual(3);
    }
  });

  test('from juniors and short hitters to strong ones, with the usual shape of a bag', () => {
    const carry = (golfer: Golfer, name: string) =>
      [...golfer.cells.values()].filter((cell) => cell.club.name === name && cell.swing === 'full')[0]?.stock_m;
    const sevens = ordinary().flatMap((golfer) => carry(golfer, '7 iron') ?? []);
    expect(quantile(sevens, 0.05) / METRES_PER_YARD).toBeLessThan(125);
    expect(quantile(sevens, 0.95) / METRES_PER_YARD).toBeGreaterThan(165);
    const ratios = ordinary().flatMap((golfer) => {
      const seven = carry(golfer, '7 iron');
      return seven ? [(carry(golfer, 'driver') ?? 0) / seven] : [];
    });
    // A drive carries about 1.35 to 1.6 times a 7 iron (common practice, no source).
    expect(quantile(ratios, 0.5)).toBeGreaterThan(1.35);
    expect(quantile(ratios, 0.5)).toBeLessThan(1.6);
  });

  test('0 to 40 shots a cell: some never hit, most with a handful', () => {
    const planned = ordinary().flatMap((golfer) => golfer.person.uses.map((use) => use.shots));
    expect(Math.min(...planned)).toBe(0);
    expect(Math.max(...planned)).toBeLessThanOrEqual(40);
    expect(Math.max(...planned)).toBeGreaterThan(25);
    const measured = ordinary().flatMap((golfer) => [...golfer.cells.values()].map((cell) => cell.measured_m.length));
    expect(share(measured, (n) => n === 0)).toBeGreaterThan(0.08);
    expect(share(measured, (n) => n === 0)).toBeLessThan(0.3);
    expect(quantile(measured, 0.5)).toBeLessThanOrEqual(5);
  });

  test('10 to 30 % mishits, more with long clubs, and they fall short by 2 to 75 %', () => {
    for (const { person } of ordinary()) {
      expect(person.striking.mishits).toBeGreaterThanOrEqual(0.1);
      expect(person.striking.mishits).toBeLessThanOrEqual(0.3);
      const [driver] = person.bag;
      const wedge = person.bag[person.bag.length - 1];
      expect(mishitRate(person.striking, driver.club, 'fairway')).toBeGreaterThan(
        1.3 * mishitRate(person.striking, wedge.club, 'fairway'),
      );
    }
    const shots = shotsOf(ordinary());
    const mishits = share(shots, ({ truth }) => truth.ball.mishit);
    expect(mishits).toBeGreaterThan(0.13);
    expect(mishits).toBeLessThan(0.23);
    const lost = shots.filter(({ truth }) => truth.ball.mishit).map(({ truth }) => 1 - Math.exp(truth.ball.ln));
    expect(quantile(lost, 0.5)).toBeGreaterThan(0.06);
    expect(quantile(lost, 0.5)).toBeLessThan(0.16);
    expect(quantile(lost, 0.95)).toBeGreaterThan(0.28);
    const fat = shots
      .filter(({ truth }) => truth.ball.strike === 'fat')
      .map(({ truth }) => 1 - Math.exp(truth.ball.ln));
    expect(quantile(fat, 0.5)).toBeGreaterThan(0.1);
    expect(quantile(fat, 0.5)).toBeLessThan(0.25);
    const thin = shots.filter(({ truth }) => truth.ball.strike === 'thin');
    expect(share(thin, ({ truth }) => truth.ball.ln > Math.log(0.92))).toBeGreaterThan(0.3);
  });

  test('solid strikes scatter by 3 to 6 % about the stock carry, more with partial swings', () => {
    const [{ person }] = ordinary();
    const numbers = randomNumbers('scatter');
    const iron = person.bag.find(({ club }) => club.kind === 'iron')?.club;
    const wedge = person.bag[person.bag.length - 1].club;
    if (!iron) throw new RangeError('a bag without irons');
    const solids = (club: typeof iron, swing: string) =>
      Array.from({ length: 6000 }, () =>
        drawBall(base, person.striking, person.carries, club, swing, 'fairway', numbers),
      ).flatMap((ball) => (ball.mishit || ball.flier ? [] : [ball.ln]));
    const full = solids(iron, 'full');
    expect(Math.abs(quantile(full, 0.5))).toBeLessThan(0.003);
    expect(sd(full)).toBeGreaterThan(0.024);
    expect(sd(full)).toBeLessThan(0.075);
    expect(sd(solids(wedge, '7:30'))).toBeGreaterThan(1.35 * sd(solids(wedge, 'full')));
    for (const golfer of ordinary()) {
      expect(golfer.person.striking.spread).toBeGreaterThanOrEqual(0.03);
      expect(golfer.person.striking.spread).toBeLessThanOrEqual(0.06);
    }
  });

  test('labels: 20 to 40 % missing, 10 to 20 % of the others wrong', () => {
    const shots = shotsOf(ordinary());
    const missing = share(shots, ({ shot }) => shot.strike === null);
    expect(missing).toBeGreaterThan(0.25);
    expect(missing).toBeLessThan(0.35);
    const labelled = shots.filter(({ shot }) => shot.strike !== null);
    const wrong = share(labelled, ({ shot, truth }) => (shot.strike === 'solid') === truth.ball.mishit);
    expect(wrong).toBeGreaterThan(0.1);
    expect(wrong).toBeLessThan(0.2);
  });

  test('1 to 2 % are logged under a neighbour in the bag', () => {
    const wrong = share(shotsOf(ordinary()), ({ shot, truth }) => shot.clubId !== truth.clubId);
    expect(wrong).toBeGreaterThan(0.007);
    expect(wrong).toBeLessThan(0.023);
  });

  test('distances err as their kind does', () => {
    const readings = shotsOf(ordinary()).flatMap(({ shot, truth }) =>
      shot.carry ? [{ ...shot.carry, error_yd: (shot.carry.m - truth.carry_m) / METRES_PER_YARD, truth, shot }] : [],
    );
    const by = (way: string) => readings.filter((reading) => reading.by === way);
    // Error SD in yards about those of common practice: GNSS 3, laser 1 to 3, typed 3, judged 5 to 6.
    for (const [way, least, most] of [
      ['gnss', 2.6, 3.8],
      ['laser', 1.2, 3],
      ['typed', 2.6, 3.5],
      ['judged', 4.2, 6.5],
    ] as const) {
      const error = sd(by(way).map((reading) => reading.error_yd));
      expect(error, way).toBeGreaterThan(least);
      expect(error, way).toBeLessThan(most);
    }
    const paced = sd(by('paced').map((reading) => reading.m / reading.truth.carry_m - 1));
    expect(paced).toBeGreaterThan(0.018);
    expect(paced).toBeLessThan(0.035);
    expect(share(by('judged'), (reading) => Math.round(reading.m / METRES_PER_YARD) % 5 === 0)).toBeGreaterThan(0.75);
    const noted = by('gnss').filter((reading) => reading.error_m !== null);
    expect(noted.length).toBeGreaterThan(100);
    const stated = sd(noted.map((reading) => (reading.error_yd * METRES_PER_YARD) / (reading.error_m ?? 1)));
    expect(Math.abs(stated - 1)).toBeLessThan(0.12);
    expect(by('laser').every((reading) => reading.shot.flag_m !== null)).toBe(true);
  });

  test('some shots are no normal ones, some not measured, some only known by a bunker', () => {
    const shots = shotsOf(ordinary());
    const odd = share(shots, ({ shot }) => shot.intent !== 'normal');
    expect(odd).toBeGreaterThan(0.03);
    expect(odd).toBeLessThan(0.09);
    const unmeasured = share(shots, ({ shot }) => shot.carry === null);
    expect(unmeasured).toBeGreaterThan(0.03);
    expect(unmeasured).toBeLessThan(0.1);
    const bounds = shots.flatMap(({ shot, truth }) => {
      const bound = shot.carryAtLeast_m ?? shot.carryAtMost_m;
      return bound === null ? [] : [{ shot, ratio: truth.carry_m / bound, least: shot.carryAtLeast_m !== null }];
    });
    expect(bounds.length).toBeGreaterThan(20);
    expect(new Set(bounds.map((bound) => bound.least)).size).toBe(2);
    for (const { shot, ratio, least } of bounds) {
      expect(shot.carry).toBeNull();
      expect(least ? ratio : 1 / ratio).toBeGreaterThan(0.95);
    }
  });

  test('a fifth of the golfers had a club bent; some work on the practice ground, some claim', () => {
    const golfers = ordinary();
    const bent = share(golfers, ({ logbook }) => logbook.clubs.some((club) => club.specPeriods.length > 1));
    expect(bent).toBeGreaterThan(0.08);
    expect(bent).toBeLessThan(0.36);
    const practising = share(golfers, ({ logbook }) =>
      logbook.rounds.some((round) => round.play === 'practice ground'),
    );
    expect(practising).toBeGreaterThan(0.2);
    expect(practising).toBeLessThan(0.6);
    const claims = golfers.flatMap((golfer) =>
      golfer.logbook.clubs.flatMap((club) => {
        const now = [...golfer.cells.values()].find(
          (cell) => cell.club === club && cell.swing === 'full' && cell.current,
        );
        return club.claimed_m !== null && now ? [Math.log(club.claimed_m / now.stock_m)] : [];
      }),
    );
    expect(claims.length).toBeGreaterThan(30);
    const mean = claims.reduce((sum, claim) => sum + claim, 0) / claims.length;
    expect(mean).toBeGreaterThan(0.005);
    expect(mean).toBeLessThan(0.055);
    for (const { person } of golfers) {
      expect(Math.exp(person.season.practiceOffset.range)).toBeGreaterThanOrEqual(0.94);
      expect(person.season.practiceOffset.range).toBeLessThanOrEqual(0);
      expect(Math.abs(person.season.change)).toBeLessThanOrEqual(0.05);
      const days = (Date.parse(person.season.asOf) - Date.parse(person.season.rounds[0].date)) / 86_400_000;
      expect(days).toBeGreaterThan(60);
      expect(days).toBeLessThan(212);
    }
  });

  test('a longer swing of a wedge carries further, and the next ball falls a little short of the stock carry', () => {
    for (const { cells } of ordinary()) {
      for (const cell of cells.values()) {
        const middle = cell.nextBalls_m[cell.nextBalls_m.length / 2];
        expect(middle / cell.stock_m).toBeGreaterThan(0.9);
        expect(middle / cell.stock_m).toBeLessThan(1.01);
        if (cell.swing === 'full') continue;
        const full = [...cells.values()].find((other) => other.specId === cell.specId && other.swing === 'full');
        expect(cell.stock_m).toBeLessThan(full?.stock_m ?? 0);
      }
    }
  });
});

describe('the other worlds differ as they say', () => {
  test('no strike labels', () => {
    expect(shotsOf(golfersOf('no strike labels')).every(({ shot }) => shot.strike === null)).toBe(true);
  });

  test('rough and ready: paced and judged only, 4 % under the wrong club, few shots', () => {
    const shots = shotsOf(golfersOf('rough and ready'));
    const ways = new Set(shots.flatMap(({ shot }) => shot.carry?.by ?? []));
    expect([...ways].sort()).toEqual(['judged', 'paced']);
    const wrong = share(shots, ({ shot, truth }) => shot.clubId !== truth.clubId);
    expect(wrong).toBeGreaterThan(0.028);
    expect(wrong).toBeLessThan(0.05);
    expect(shots.length).toBeLessThan(0.85 * shotsOf(ordinary()).length);
  });

  test('more mishits: 25 to 40 %', () => {
    const golfers = golfersOf('more mishits');
    expect(golfers.every(({ person }) => person.striking.mishits >= 0.25 && person.striking.mishits <= 0.4)).toBe(true);
    expect(share(shotsOf(golfers), ({ truth }) => truth.ball.mishit)).toBeGreaterThan(0.25);
  });

  test('fast drift: 5 to 12 % over the season', () => {
    for (const { person } of golfersOf('fast drift')) {
      expect(Math.abs(person.season.change)).toBeGreaterThanOrEqual(0.05);
      expect(Math.abs(person.season.change)).toBeLessThanOrEqual(0.12);
    }
  });

  test('other swing fractions: spread out, and not the same for all wedges of a golfer', () => {
    const fractions = (name: string, swing: string) =>
      golfersOf(name).flatMap((golfer) =>
        [...golfer.cells.values()].flatMap((cell) => {
          const full = golfer.cells.get(`${cell.club.id}|${cell.specId}|full`);
          return cell.swing === swing && full && cell.current ? [cell.stock_m / full.stock_m] : [];
        }),
      );
    for (const swing of ['7:30', '9:00', '10:30']) {
      expect(sd(fractions('other swing fractions', swing))).toBeGreaterThan(1.25 * sd(fractions('base', swing)));
    }
  });

  test('other loft curve: the long end is bunched for short hitters and spread for the others', () => {
    const span = (golfer: Golfer) => {
      const full = [...golfer.cells.values()].filter((cell) => cell.swing === 'full' && cell.current);
      const iron = full.filter((cell) => cell.club.kind === 'iron').map((cell) => cell.stock_m);
      return full[0].stock_m / Math.min(...iron);
    };
    const unlike = golfersOf('other loft curve').map(span);
    const usual = ordinary().map(span);
    expect(quantile(unlike, 0.2)).toBeLessThan(quantile(usual, 0.1));
    expect(quantile(unlike, 0.8)).toBeGreaterThan(quantile(usual, 0.9));
  });

  test('heavy tails: now and then far off', () => {
    const kurtosis = (name: string) => {
      const [{ person }] = golfersOf(name);
      const numbers = randomNumbers('tails');
      const balls = Array.from({ length: 6000 }, () =>
        drawBall(person.world, person.striking, person.carries, person.bag[5].club, 'full', 'fairway', numbers),
      ).flatMap((ball) => (ball.mishit || ball.flier ? [] : [ball.ln]));
      return balls.reduce((sum, ln) => sum + (ln / sd(balls)) ** 4, 0) / balls.length;
    };
    expect(kurtosis('base')).toBeLessThan(3.5);
    expect(kurtosis('heavy tails')).toBeGreaterThan(4.5);
  });

  test('odd clubs: many more clubs off the line of their neighbours', () => {
    const offLine = (golfer: Golfer) => {
      const irons = [...golfer.cells.values()]
        .filter((cell) => cell.swing === 'full' && cell.current && cell.club.kind === 'iron')
        .map((cell) => cell.stock_m / METRES_PER_YARD);
      return irons.slice(1, -1).map((carry, i) => Math.abs(carry - (irons[i] + irons[i + 2]) / 2));
    };
    const far = (golfers: readonly Golfer[]) => share(golfers.flatMap(offLine), (yd) => yd > 8);
    expect(far(golfersOf('odd clubs'))).toBeGreaterThan(2 * far(ordinary()));
    expect(far(golfersOf('odd clubs'))).toBeGreaterThan(0.06);
  });
});
