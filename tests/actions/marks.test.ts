import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { closeRound } from '../../src/actions/closeRound.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { undo } from '../../src/actions/undo.ts';
import { markSchema } from '../../src/golf/mark.ts';
import { aRound, entry, logbookOf, phone, saved } from './phone.ts';

const mark = (lat_deg: number) => z.parse(markSchema, { lat_deg, lon_deg: -1.1, accuracy_m: 4 });

test('when a round is over the distances between its marks are worked out, and undo takes that back too', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper, { play: 'rules' });
  const marks = { ball: mark(51.2), pitch: mark(51.2015), rest: mark(51.2016) };
  saved(await logShot(keeper, round.id, entry(1, { marks })));
  saved(await logShot(keeper, round.id, entry(2, { marks: { ball: null, pitch: null, rest: null } })));
  const before = await logbookOf(keeper);
  expect(before.shots.map(({ carry, total }) => [carry, total])).toEqual([
    [null, null],
    [null, null],
  ]);

  saved(await closeRound(keeper, round.id));
  const [first, second] = (await logbookOf(keeper)).shots;
  // One minute of latitude is a nautical mile of about 1,854 m at 51° north: .0015° is 166.9 m. From memory, to 0.3 %.
  expect(first.carry?.m).toBeGreaterThan(166.4);
  expect(first.carry?.m).toBeLessThan(167.4);
  expect(first.carry?.by).toBe('gnss');
  expect(first.total?.m).toBeGreaterThan(first.carry?.m ?? 0);
  expect([second.carry, second.total]).toEqual([null, null]);

  saved(await undo(keeper));
  const after = await logbookOf(keeper);
  expect(after.rounds[0].closed).toBe(false);
  expect(after.shots.map(({ carry, total }) => [carry, total])).toEqual([
    [null, null],
    [null, null],
  ]);
  keeper.close();
});
