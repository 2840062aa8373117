import fc from 'fast-check';
import type { ClubKind } from '../../src/golf/club.ts';
import type { Cell } from '../../src/yardages/cell.ts';
import type { ShotEvidence } from '../../src/yardages/evidence.ts';
import { SHARED_EFFECTS } from '../../src/yardages/sharedEffects.ts';

/** A cell; club and period are numbers that only say which cells belong together. */
export function cellOf(kind: ClubKind, loft_deg: number, swing = 'full', club = 0, period = club): Cell {
  return { kind, loft_deg, swing, club, period };
}

/** The place of a step of the drift among the shared effects, the youngest 0. */
export const driftStep = (step: number): number => SHARED_EFFECTS.length + step;

/** A measured shot at ln carry `log` unless the slots say otherwise. */
export function evidenceOf(cell: number, log: number, slots: Partial<ShotEvidence> = {}): ShotEvidence {
  return { cell, day: 0, logLeast: log, logMost: log, variance: 0.03 ** 2, word: 'none', shared: [], ...slots };
}

/** An invented small bag: driver, hybrid, three irons, a wedge with its three partial swings. */
export const smallBag: readonly Cell[] = [
  cellOf('driver', 10.5, 'full', 0),
  cellOf('hybrid', 22, 'full', 1),
  cellOf('iron', 30, 'full', 2),
  cellOf('iron', 34, 'full', 3),
  cellOf('iron', 38, 'full', 4),
  cellOf('wedge', 54, 'full', 5),
  cellOf('wedge', 54, '10:30', 5),
  cellOf('wedge', 54, '9:00', 5),
  cellOf('wedge', 54, '7:30', 5),
];

const kinds: readonly ClubKind[] = ['driver', 'fairway wood', 'hybrid', 'driving iron', 'iron', 'wedge'];
const clock = fc
  .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 59 }))
  .map(([hour, minute]) => `${hour}:${String(minute).padStart(2, '0')}`);

/** Any bag: clubs of any loft (the same twice too), one to three spec periods, full and own swing positions. */
export const anyCells: fc.Arbitrary<Cell[]> = fc
  .array(
    fc.record({
      kind: fc.constantFrom(...kinds),
      lofts: fc.array(fc.oneof(fc.constantFrom(10.5, 34, 54), fc.double({ min: 0, max: 90, noNaN: true })), {
        minLength: 1,
        maxLength: 3,
      }),
      swings: fc.uniqueArray(fc.oneof(fc.constantFrom('full', '7:30', '9:00', '10:30'), clock), {
        minLength: 1,
        maxLength: 5,
      }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((clubs) =>
    clubs.flatMap(({ kind, lofts, swings }, club) =>
      lofts.flatMap((loft, period) => swings.map((swing) => cellOf(kind, loft, swing, club, 10 * club + period))),
    ),
  );
