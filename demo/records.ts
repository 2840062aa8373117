import type * as z from 'zod/mini';
import type { clubSchema } from '../src/golf/club.ts';
import type { conditionsSchema } from '../src/golf/conditions.ts';
import type { holeSchema, puttSchema } from '../src/golf/hole.ts';
import type { doneSchema, reviewSchema } from '../src/golf/review.ts';
import type { roundSchema } from '../src/golf/round.ts';
import type { shotSchema } from '../src/golf/shot.ts';
import { METRES_PER_YARD } from '../src/units/yards.ts';

/** With every key there and none of them undefined. */
type Written<T> = { [Key in keyof T]-?: Exclude<T[Key], undefined> };

/** The records as they stand in a file, every key written. */
export type ClubRecord = Written<z.input<typeof clubSchema>>;
export type ConditionsRecord = Written<NonNullable<z.input<typeof conditionsSchema>>>;
export type PuttRecord = Written<z.input<typeof puttSchema>>;
export type HoleRecord = Written<z.input<typeof holeSchema>>;
export type RoundRecord = Written<z.input<typeof roundSchema>>;
export type ShotRecord = Written<z.input<typeof shotSchema>>;
export type ReviewRecord = Written<z.input<typeof reviewSchema>>;
export type DoneRecord = Written<z.input<typeof doneSchema>>;

/** Yards to metres; the tables of this folder are in yards, as a yardage book is, all else is in metres. */
export function fromYards(length_yd: number): number {
  return length_yd * METRES_PER_YARD;
}

/** To the centimetre, as it is written in the file. Never −0, which JSON would lose. */
export function centimetres(length_m: number): number {
  return Math.round(length_m * 100) / 100 + 0;
}

/** To the whole yard, in metres: what a golfer reads off and keys in. */
export function wholeYards(length_m: number): number {
  return centimetres(fromYards(Math.round(length_m / METRES_PER_YARD)));
}

/** The instant `minutes` after another, written as ISO 8601 to the millisecond. */
export function later(instant: string, minutes: number): string {
  return new Date(Date.parse(instant) + Math.round(minutes * 60_000)).toISOString();
}

/** Sorts records by id in code-unit order, which is the order of a Carrybook file. */
export function byId<T extends { id: string }>(records: readonly T[]): T[] {
  return [...records].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
