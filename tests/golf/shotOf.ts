import * as z from 'zod/mini';
import { type Round, roundSchema } from '../../src/golf/round.ts';
import { type Shot, shotSchema } from '../../src/golf/shot.ts';

/** An invented shot with the slots given; it stands on hole 1 of round r1 unless they say otherwise. */
export function shotOf(id: string, slots: Partial<Shot> = {}): Shot {
  return z.parse(shotSchema, { id, roundId: 'r1', hole: 1, clubId: 'c1', ...slots });
}

/** An invented open round with holes 1 to 18, par 4 each, unless the slots say otherwise. */
export function roundOf(id: string, slots: Partial<Round> = {}): Round {
  const holes = Array.from({ length: 18 }, (_, index) => ({ number: index + 1, par: 4 }));
  return z.parse(roundSchema, { id, date: '2026-05-02', closed: false, holes, ...slots });
}
