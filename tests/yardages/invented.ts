import type { Cell } from '../../src/yardages/cell.ts';
import type { ShotEvidence, StrikeWord } from '../../src/yardages/evidence.ts';
import { sharedIndex } from '../../src/yardages/sharedEffects.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { driftStep, evidenceOf } from './cells.ts';

/** How an invented golfer's shots are drawn, ln. */
export interface Drawn {
  readonly seed: string;
  readonly shots: number;
  readonly days: number;
  readonly scatter: number;
  readonly mishits: number;
  readonly word: (mishit: boolean) => StrikeWord;
}

/** Shots spread over the cells, round a stock carry a little longer than the prior's, with mishits that fall short. */
export function inventedShots(cells: readonly Cell[], means: ArrayLike<number>, drawn: Drawn): ShotEvidence[] {
  const numbers = randomNumbers(drawn.seed);
  return Array.from({ length: drawn.shots }, (_, k) => {
    const cell = k % cells.length;
    const mishit = numbers.chance(drawn.mishits);
    const short = mishit ? Math.log(1 - numbers.between(0.05, 0.4)) : 0;
    return evidenceOf(cell, means[cell] + 0.06 + numbers.normal(0, drawn.scatter) + short, {
      day: k % drawn.days,
      word: drawn.word(mishit),
      shared: k % 4 === 0 ? [[sharedIndex('rough'), 1] as const] : [[driftStep(0), 0.5] as const],
    });
  });
}
