import fc from 'fast-check';
import * as z from 'zod/mini';
import { clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { doneSchema, reviewSchema } from '../../src/golf/review.ts';
import { roundSchema } from '../../src/golf/round.ts';
import { shotSchema } from '../../src/golf/shot.ts';
import { tombstoneSchema } from '../../src/golf/tombstone.ts';

// Few ids, few instants, few devices and few contents, so that states of one record really meet and tie.
const id = fc.constantFrom('a', 'b', 'c');
const instant = fc.constantFrom(
  '2026-05-01T08:00:00Z',
  '2026-05-01T08:00:00.000Z',
  '2026-05-02T08:00:00Z',
  '2026-05-03T08:00:00Z',
);
const stamp = { changedAt: instant, device: fc.constantFrom('', 'd1', 'd2') };
const words = fc.constantFrom('', 'one', 'two');

/** A piece with a stamp of its own, as a merge leaves it, or without. */
function piece<T extends Record<string, fc.Arbitrary<unknown>>>(content: T): fc.Arbitrary<unknown> {
  return fc.oneof(
    fc.record(content),
    fc.record({ ...content, ...stamp }),
    fc.record({ ...content, changedAt: instant }),
    fc.record({ ...content, changedAt: fc.constant('long ago') }),
  );
}

const spec = piece({
  id,
  from: fc.constantFrom('2026-01-01', '2026-02-01'),
  loft_deg: fc.constantFrom(50, 52),
  note: words,
});
const hole = piece({
  number: fc.integer({ min: 1, max: 3 }),
  par: fc.constantFrom(3, 4, null),
  strokes: fc.constantFrom(null, 4, 5),
});

function records(
  schema: z.core.$ZodType,
  content: Record<string, fc.Arbitrary<unknown>>,
  key = 'id',
): fc.Arbitrary<never[]> {
  return fc
    .uniqueArray(fc.record(content), { maxLength: 3, selector: (record) => `${record.of ?? ''}${record[key]}` })
    .map((list) => list.map((record) => z.parse(schema, record)) as never[]);
}

/** Logbooks of one golfer as different devices hold them. */
export const logbookArbitrary: fc.Arbitrary<Logbook> = fc
  .record(
    {
      player: fc.record({ id: fc.constant('p'), name: words, ...stamp }).map((player) => z.parse(playerSchema, player)),
      clubs: records(clubSchema, {
        id,
        kind: fc.constant('wedge'),
        name: words,
        specPeriods: fc.uniqueArray(spec, {
          minLength: 1,
          maxLength: 3,
          selector: (each) => (each as { id: string }).id,
        }),
        ...stamp,
      }),
      rounds: records(roundSchema, {
        id,
        date: fc.constant('2026-05-01'),
        course: words,
        holes: fc.uniqueArray(hole, { maxLength: 3, selector: (each) => (each as { number: number }).number }),
        ...stamp,
      }),
      shots: records(shotSchema, { id, roundId: id, clubId: id, hole: fc.constant(1), note: words, ...stamp }),
      reviews: records(reviewSchema, { id, note: words, ...stamp }),
      done: records(doneSchema, { reviewId: id, at: fc.option(instant, { nil: null }), ours: words }, 'reviewId'),
      deleted: records(tombstoneSchema, {
        id,
        of: fc.constantFrom('club', 'round', 'shot', 'review'),
        at: instant,
        device: fc.constantFrom('', 'd1'),
      }),
      ours: words,
    },
    { requiredKeys: ['player', 'clubs', 'rounds', 'shots', 'reviews', 'done', 'deleted'] },
  )
  .map((logbook) => logbook as Logbook);
