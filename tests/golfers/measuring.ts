import type { KnownBy, Strike } from '../../src/golf/shot.ts';
import type { Swing } from '../../src/golf/swing.ts';
import { METRES_PER_YARD } from '../../src/units/yards.ts';
import type { BagClub } from './bag.ts';
import type { RandomNumbers } from './randomNumbers.ts';
import type { Ball } from './strike.ts';
import type { World } from './worlds.ts';

/** How this golfer comes by distances and writes strikes down. */
export interface Habits {
  readonly by: Record<MeasuredBy, number>;
  /** r95 of a satellite fix, m. */
  readonly fix_m: number;
  /** Whether the phone notes the error of its fixes. */
  readonly notesError: boolean;
  /** Own length of a pace and own eye: ln of what is written against what is true. */
  readonly paceBias: number;
  readonly eyeBias: number;
  readonly noLabel: number;
  readonly wrongLabel: number;
  /** Share of costly mishits that never reach the logbook. */
  readonly forgotten: number;
  readonly wrongClub: number;
}

type MeasuredBy = Extract<KnownBy, 'gnss' | 'laser' | 'paced' | 'judged' | 'typed'>;

/** A distance as it gets into the logbook. */
export interface Reading {
  readonly carry: { readonly m: number; readonly by: MeasuredBy; readonly error_m: number | null };
  readonly flag_m: number | null;
}

export function drawHabits(world: World, numbers: RandomNumbers): Habits {
  const guessing = world.measures === 'guesses';
  const usual = { gnss: 5, laser: 2.2, typed: 1, judged: 1.2, paced: 0.6 };
  const guesses = { gnss: 0, laser: 0, typed: 0, judged: 3, paced: 2 };
  const by: Record<MeasuredBy, number> = { ...(guessing ? guesses : usual) };
  for (const way of Object.keys(by) as MeasuredBy[]) by[way] = by[way] > 0 ? numbers.gamma(by[way]) : 0;
  return {
    by,
    fix_m: numbers.between(3.6, 6.4),
    notesError: numbers.chance(0.3),
    paceBias: numbers.normal(0, 0.012),
    eyeBias: numbers.normal(0.003, 0.01),
    noLabel: world.labels ? numbers.between(0.2, 0.4) : 1,
    wrongLabel: numbers.between(0.1, 0.2),
    forgotten: numbers.between(0.05, 0.35),
    wrongClub: numbers.between(...world.wrongClub),
  };
}

/** Guesses come in fives, now and then in tens. */
function heaped(carry_yd: number, numbers: RandomNumbers): number {
  const step = numbers.choice([1, 5, 10], [0.2, 0.65, 0.15]);
  return Math.max(step, step * Math.round(carry_yd / step));
}

/** The carry as this golfer writes it down. Pacing is for short shots, marks by satellite for long ones. */
export function readCarry(carry_yd: number, swing: Swing, habits: Habits, numbers: RandomNumbers): Reading {
  const ways = Object.keys(habits.by) as MeasuredBy[];
  const near = carry_yd < 110 || swing !== 'full';
  const weights = ways.map(
    (way) =>
      habits.by[way] * (way === 'paced' ? (near ? 1.5 : 0.5) : way === 'laser' ? (carry_yd > 190 ? 0.4 : 1.2) : 1),
  );
  const by = numbers.choice(ways, weights);
  const wayward = (read_yd: number, error_m: number | null = null, flag_yd: number | null = null): Reading => ({
    carry: { m: Math.max(1, read_yd) * METRES_PER_YARD, by, error_m },
    flag_m: flag_yd === null ? null : Math.max(1, flag_yd) * METRES_PER_YARD,
  });
  switch (by) {
    case 'gnss': {
      const fix_m = habits.fix_m * Math.exp(numbers.normal(0, 0.25));
      // 2.448 standard deviations of one axis hold 95 % of a round two-dimensional normal distribution.
      const error_m = (Math.SQRT2 * fix_m) / 2.448;
      return wayward(carry_yd + numbers.normal(0, error_m / METRES_PER_YARD), habits.notesError ? error_m : null);
    }
    case 'laser': {
      const short_yd = numbers.normal(-0.02 * carry_yd, 7);
      const judged_yd = Math.round(short_yd + numbers.normal(0, 0.5 + 0.15 * Math.abs(short_yd)));
      const flag_yd = Math.round(carry_yd - short_yd + numbers.normal(0, 1));
      return wayward(flag_yd + judged_yd, null, flag_yd);
    }
    case 'paced':
      return wayward(Math.round(carry_yd * Math.exp(habits.paceBias + numbers.normal(0, 0.022))));
    case 'judged':
      return wayward(heaped(carry_yd * Math.exp(habits.eyeBias) + numbers.normal(0, 4 + 0.01 * carry_yd), numbers));
    case 'typed':
      return wayward(Math.round(carry_yd + numbers.normal(0, 3)));
  }
}

/** What is written beside the shot: nothing, the strike as it was, or the other thing. A slight mishit passes for solid. */
export function labelStrike(ball: Ball, club: BagClub, habits: Habits, numbers: RandomNumbers): Strike | null {
  if (numbers.chance(habits.noLabel)) return null;
  if (!ball.mishit) {
    if (!numbers.chance(0.75 * habits.wrongLabel)) return 'solid';
    return numbers.choice(
      ['thin', 'fat', 'heel', 'toe'] as const,
      club.kind === 'wedge' ? [3, 3, 0.5, 1] : [3, 2, 2, 2],
    );
  }
  const slight = ball.ln > Math.log(1 - 0.1);
  return numbers.chance((slight ? 2.6 : 0.9) * habits.wrongLabel) ? 'solid' : ball.strike;
}
