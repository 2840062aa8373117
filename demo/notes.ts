import type { Lie } from '../src/golf/lie.ts';
import type { Intent, Strike } from '../src/golf/shot.ts';
import type { SeededNumbers } from './seededNumbers.ts';

const byStrike: Readonly<Record<Strike, readonly string[]>> = {
  solid: ['best of the day', 'right on the line', 'smooth'],
  thin: ['caught it low', 'low on the face'],
  fat: ['ground first', 'heavy'],
  heel: ['off the heel', 'too close to it'],
  toe: ['off the toe', 'reached for it'],
};

/** A few words on one shot in thirty, as golfers leave them. */
export function noteFor(strike: Strike, intent: Intent, lie: Lie, numbers: SeededNumbers): string {
  if (!numbers.chance(0.035)) return '';
  if (intent === 'recovery') return 'out sideways';
  if (intent === 'knockdown') return 'kept under the wind';
  if (lie === 'greenside bunker') return 'little sand under it';
  return numbers.pick(byStrike[strike]);
}
