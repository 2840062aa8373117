import { centimetres, type PuttRecord } from './records.ts';
import type { SeededNumbers } from './seededNumbers.ts';

/** How wide lengths are known: `false` where only the number of putts was written down. */
export interface Putting {
  readonly putterId: string;
  readonly evenPutt_m: number;
  readonly lengths: boolean;
}

/** Putts until the ball is in: the first of a length, each next one as long as the leave. */
export function puttsFrom(first_m: number, putting: Putting, numbers: SeededNumbers): PuttRecord[] {
  const putts: PuttRecord[] = [];
  let length_m = Math.max(0.2, first_m);
  for (;;) {
    const holed = putts.length === 3 || numbers.chance(1 / (1 + (length_m / putting.evenPutt_m) ** 2.2));
    putts.push({
      clubId: putting.putterId,
      length_m: putting.lengths ? centimetres(Math.round(length_m * 10) / 10) : null,
      holed,
    });
    if (holed) return putts;
    length_m = Math.max(0.2, 0.25 + 0.08 * length_m * Math.abs(numbers.normal()) + 0.2 * numbers.uniform());
  }
}
