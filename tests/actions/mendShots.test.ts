import { expect, test } from 'vitest';
import { closeRound } from '../../src/actions/closeRound.ts';
import { joinShots } from '../../src/actions/joinShots.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { splitShot } from '../../src/actions/splitShot.ts';
import { swapClub } from '../../src/actions/swapClub.ts';
import { undo } from '../../src/actions/undo.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { aRound, entry, logbookOf, phone, refused, saved } from './phone.ts';

/** A shot without its stamp: that of a shot taken back is a new one. */
const slots = ({ changedAt: _changedAt, device: _device, ...rest }: { changedAt: string; device: string }) => rest;

test('a club is exchanged all through a round that is over, with its spec, and undo is one step', async () => {
  const keeper = phone().tab();
  const [wrong, right] = [
    saved(await saveClub(keeper, typicalBag()[5])),
    saved(await saveClub(keeper, typicalBag()[6])),
  ];
  const round = await aRound(keeper);
  for (const [index, clubId] of [wrong.id, null, wrong.id].entries()) {
    saved(await logShot(keeper, round.id, entry(index + 1, { clubId })));
  }
  saved(await closeRound(keeper, round.id));
  const before = (await logbookOf(keeper)).shots;
  expect(saved(await swapClub(keeper, round.id, wrong.id, right.id))).toBe(2);
  const { shots } = await logbookOf(keeper);
  expect(shots.map((shot) => shot.clubId)).toEqual([right.id, null, right.id]);
  expect(shots[0].specId).toBe(right.specPeriods[0].id);
  expect(saved(await undo(keeper)).what).toBe('swap club');
  expect((await logbookOf(keeper)).shots.map(slots)).toEqual(before.map(slots));
  expect(saved(await swapClub(keeper, round.id, 'no-club-noted', right.id))).toBe(0);
  expect(refused(await swapClub(keeper, round.id, wrong.id, 'no-club')).kind).toBe('gone');
  expect(refused(await swapClub(keeper, 'no-round', wrong.id, right.id)).kind).toBe('gone');
});

test('a shot split stands as two in its place, and undo makes them one again', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const a = saved(await logShot(keeper, round.id, entry(1, { lie: 'tee', restLie: 'green' })));
  const b = saved(await logShot(keeper, round.id, entry(2, { lie: 'bare' })));
  const before = (await logbookOf(keeper)).shots;
  const second = saved(await splitShot(keeper, a));
  const { shots } = await logbookOf(keeper);
  expect(shots.map((shot) => [shot.id, shot.restLie])).toEqual([
    [a.id, null],
    [second.id, 'green'],
    [b.id, null],
  ]);
  expect(saved(await undo(keeper)).what).toBe('split shot');
  expect((await logbookOf(keeper)).shots.map(slots)).toEqual(before.map(slots));
  expect(refused(await splitShot(keeper, { id: 'no', roundId: round.id })).kind).toBe('gone');
});

test('two entries joined are one shot, and undo brings the second back', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const a = saved(await logShot(keeper, round.id, entry(1, { lie: 'tee' })));
  const b = saved(await logShot(keeper, round.id, entry(2, { strike: 'fat', restLie: 'fairway' })));
  const before = (await logbookOf(keeper)).shots;
  saved(await joinShots(keeper, a, b.id));
  expect((await logbookOf(keeper)).shots).toMatchObject([{ id: a.id, lie: 'tee', strike: 'fat', restLie: 'fairway' }]);
  expect(saved(await undo(keeper)).what).toBe('join shots');
  expect((await logbookOf(keeper)).shots.map(slots)).toEqual(before.map(slots));
  expect(refused(await joinShots(keeper, a, a.id)).kind).toBe('gone');
  expect(refused(await joinShots(keeper, a, 'no')).kind).toBe('gone');
});
