import type { Club } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import type { Swing } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import { lnStock } from './builtBag.ts';
import type { Person } from './golfer.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import { drawBall } from './strike.ts';

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

/** The key of a cell: `clubId|specId|swing`. */
export const cellKey = (clubId: string, specId: string, swing: Swing) => `${clubId}|${specId}|${swing}`;

/** Every full swing, every wedge's three partial swings and every other swing the golfer plays, old builds too. */
export function trueCells(person: Person, logbook: Logbook, numbers: RandomNumbers): Map<string, TrueCell> {
  const { world, striking, carries, season, bag, uses } = person;
  const practice = new Set(season.practice.map((outing) => outing.id));
  const measured = new Map<string, number[]>();
  for (const shot of logbook.shots) {
    if (shot.intent !== 'normal' || !shot.carry || practice.has(shot.roundId)) continue;
    const key = cellKey(shot.clubId ?? '', shot.specId ?? '', shot.swing);
    measured.set(key, [...(measured.get(key) ?? []), shot.carry.m]);
  }
  const cells = new Map<string, TrueCell>();
  for (const build of bag) {
    for (const { club, swing } of uses) {
      if (club !== build.club) continue;
      build.record.specPeriods.forEach((spec, i) => {
        const current = i === build.record.specPeriods.length - 1;
        const key = cellKey(club.id, spec.id, swing);
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
