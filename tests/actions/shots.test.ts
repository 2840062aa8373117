import { expect, test } from 'vitest';
import { closeRound } from '../../src/actions/closeRound.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { editRound } from '../../src/actions/editRound.ts';
import { editShot } from '../../src/actions/editShot.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { moveShot } from '../../src/actions/moveShot.ts';
import { purgeBin, restoreFromBin } from '../../src/actions/restoreFromBin.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { undo } from '../../src/actions/undo.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { metres } from '../../src/units/metres.ts';
import { aRound, entry, logbookOf, phone, reading, refused, saved } from './phone.ts';

test('a logged shot stands in the logbook with its moment, its stamp and the spec of its club', async () => {
  const keeper = phone().tab();
  const club = saved(await saveClub(keeper, typicalBag()[0]));
  const round = await aRound(keeper);
  const shot = saved(await logShot(keeper, round.id, entry(1, { clubId: club.id, lie: 'tee' })));
  expect(shot).toMatchObject({ roundId: round.id, clubId: club.id, specId: club.specPeriods[0].id, lie: 'tee' });
  expect(shot.at).toBe('2026-06-01T12:00:00.000Z');
  expect(shot.device).not.toBe('');
  expect((await logbookOf(keeper)).shots).toEqual([shot]);
});

test('a value that no shot may hold is refused by its slot, and nothing is written', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const carry = { m: metres(5000), by: 'typed', error_m: null } as const;
  expect(refused(await logShot(keeper, round.id, entry(1, { carry })))).toEqual({ kind: 'not valid', path: 'carry.m' });
  const shot = saved(await logShot(keeper, round.id, entry(1)));
  expect(refused(await editShot(keeper, shot, { carry }))).toEqual({ kind: 'not valid', path: 'carry.m' });
  expect((await logbookOf(keeper)).shots).toEqual([shot]);
  expect(keeper.unsaved.value).toEqual([]);
});

test('a shot of a round that is gone is refused', async () => {
  const keeper = phone().tab();
  expect(refused(await logShot(keeper, 'no-round', entry(1))).kind).toBe('gone');
  expect(refused(await editShot(keeper, { id: 'no', roundId: 'no' }, { lie: 'tee' })).kind).toBe('gone');
  expect(refused(await moveShot(keeper, { id: 'no', roundId: 'no' }, { hole: 1, after: null })).kind).toBe('gone');
  expect(refused(await deleteShot(keeper, { id: 'no', roundId: 'no' })).kind).toBe('gone');
});

test('an edit changes its slots alone, and another club brings its own spec', async () => {
  const keeper = phone().tab();
  const [one, other] = [saved(await saveClub(keeper, typicalBag()[5])), saved(await saveClub(keeper, typicalBag()[6]))];
  const round = await aRound(keeper);
  const shot = saved(await logShot(keeper, round.id, entry(1, { clubId: one.id, strike: 'thin' })));
  const edited = saved(await editShot(keeper, shot, { clubId: other.id }));
  expect(edited).toEqual({
    ...shot,
    clubId: other.id,
    specId: other.specPeriods[0].id,
    changedAt: edited.changedAt,
  });
  expect(edited.changedAt > shot.changedAt).toBe(true);
  expect(saved(await editShot(keeper, edited, { clubId: null })).specId).toBeNull();
});

test('an edit that changes nothing writes nothing', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const shot = saved(await logShot(keeper, round.id, entry(1, { lie: 'tee' })));
  expect(saved(await editShot(keeper, shot, { lie: 'tee' }))).toEqual(shot);
});

test('shots of a closed round are edited, moved, deleted and added where they are kept', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const [a, b] = [saved(await logShot(keeper, round.id, entry(1))), saved(await logShot(keeper, round.id, entry(2)))];
  saved(await closeRound(keeper, round.id));
  const counts = async () => reading(keeper, async (db) => [await db.shots.count(), await db.closedShots.count()]);
  expect(await counts()).toEqual([0, 1]);
  saved(await editShot(keeper, a, { lie: 'bare' }));
  saved(await moveShot(keeper, b, { hole: 1, after: null }));
  const c = saved(await logShot(keeper, round.id, entry(3)));
  expect((await logbookOf(keeper)).shots.map((shot) => [shot.id, shot.lie])).toEqual([
    [b.id, null],
    [a.id, 'bare'],
    [c.id, null],
  ]);
  saved(await deleteShot(keeper, b));
  expect((await logbookOf(keeper)).shots.map((shot) => shot.id)).toEqual([a.id, c.id]);
  expect(await counts()).toEqual([0, 1]);
});

test('a move where no number is left renumbers the hole', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const a = saved(await logShot(keeper, round.id, entry(1)));
  const b = saved(await logShot(keeper, round.id, entry(1)));
  const c = saved(await logShot(keeper, round.id, entry(2)));
  const [first, second] = a.id < b.id ? [a, b] : [b, a];
  saved(await moveShot(keeper, c, { hole: 1, after: first.id }));
  const { shots } = await logbookOf(keeper);
  expect(shots.map((shot) => [shot.id, shot.number])).toEqual([
    [first.id, 1],
    [c.id, 2],
    [second.id, 3],
  ]);
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).shots.map((shot) => shot.number)).toEqual([1, 1, 2]);
});

test('a deleted shot leaves a tombstone that wins over it, and undo brings it back later than both', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const shot = saved(await logShot(keeper, round.id, entry(1)));
  saved(await deleteShot(keeper, shot));
  const after = await logbookOf(keeper);
  expect(after.shots).toEqual([]);
  expect(after.deleted).toMatchObject([{ id: shot.id, of: 'shot' }]);
  expect(after.deleted[0].at > shot.changedAt).toBe(true);
  expect(saved(await undo(keeper)).what).toBe('delete shot');
  const back = await logbookOf(keeper);
  expect(back.shots).toEqual([{ ...shot, changedAt: back.shots[0].changedAt }]);
  expect(back.shots[0].changedAt > after.deleted[0].at).toBe(true);
  expect(back.deleted).toEqual([]);
  expect(await reading(keeper, (db) => db.bin.count())).toBe(0);
});

test('undo takes back log, edit and move, one after the other, also after a reload', async () => {
  const mine = phone();
  const keeper = mine.tab();
  const round = await aRound(keeper);
  const a = saved(await logShot(keeper, round.id, entry(1)));
  saved(await logShot(keeper, round.id, entry(2)));
  saved(await editShot(keeper, a, { lie: 'bare' }));
  saved(await moveShot(keeper, a, { hole: 2, after: null }));
  keeper.close();
  const again = mine.tab();
  const places = async () => (await logbookOf(again)).shots.map((shot) => [shot.hole, shot.number, shot.lie]);
  expect(saved(await undo(again)).what).toBe('move shot');
  expect(await places()).toEqual([
    [1, 1, 'bare'],
    [1, 2, null],
  ]);
  expect(saved(await undo(again)).what).toBe('edit shot');
  expect(saved(await undo(again)).what).toBe('log shot');
  expect(await places()).toEqual([[1, 1, null]]);
  saved(await undo(again));
  expect(await places()).toEqual([]);
  expect(refused(await undo(again)).kind).toBe('nothing to undo');
});

test('undo leaves alone what another tab changed since', async () => {
  const mine = phone();
  const [here, there] = [mine.tab(), mine.tab()];
  const round = await aRound(here);
  const shot = saved(await logShot(here, round.id, entry(1)));
  await reading(there, (db) => db.shots.put({ ...shot, lie: 'bare', changedAt: '2026-06-02T00:00:00.000Z' }));
  expect(refused(await undo(here)).kind).toBe('changed since');
  expect((await logbookOf(here)).shots[0].lie).toBe('bare');
});

test('the undo stack forgets the oldest beyond fifty', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  for (let number = 1; number <= 53; number += 1) saved(await logShot(keeper, round.id, entry(number)));
  const kept = await reading(keeper, (db) => db.undo.toArray());
  expect(kept).toHaveLength(50);
  expect(saved(await undo(keeper)).images[0].id).toBe((kept.at(-1)?.images ?? [])[0].id);
});

test('the bin brings a shot back within thirty days, and lets it go after', async () => {
  const mine = phone();
  const keeper = mine.tab();
  const round = await aRound(keeper);
  const [a, b] = [saved(await logShot(keeper, round.id, entry(1))), saved(await logShot(keeper, round.id, entry(2)))];
  saved(await deleteShot(keeper, a));
  saved(await deleteShot(keeper, b));
  const bin = await reading(keeper, (db) => db.bin.toArray());
  mine.clock.ms += 29 * 86_400_000;
  expect(saved(await purgeBin(keeper))).toBe(0);
  const [first, second] = bin[0].id === a.id ? bin : bin.toReversed();
  saved(await restoreFromBin(keeper, first));
  expect((await logbookOf(keeper)).shots.map((shot) => shot.id)).toEqual([a.id]);
  expect((await logbookOf(keeper)).deleted.map((dead) => dead.id)).toEqual([b.id]);
  saved(await restoreFromBin(keeper, first));
  mine.clock.ms += 2 * 86_400_000;
  expect(saved(await purgeBin(keeper))).toBe(1);
  expect(refused(await restoreFromBin(keeper, second)).kind).toBe('gone');
  expect((await logbookOf(keeper)).deleted.map((dead) => dead.id)).toEqual([b.id]);
});

test('with the clock set back a day each change is still later than the one before', async () => {
  const mine = phone();
  const keeper = mine.tab();
  const round = await aRound(keeper);
  const stamps = [round.changedAt];
  const shot = saved(await logShot(keeper, round.id, entry(1)));
  stamps.push(shot.changedAt);
  mine.clock.ms -= 86_400_000;
  stamps.push(saved(await editShot(keeper, shot, { lie: 'tee' })).changedAt);
  stamps.push(saved(await editShot(mine.tab(), shot, { lie: 'bare' })).changedAt);
  expect(new Set(stamps).size).toBe(4);
  expect(stamps).toEqual([...stamps].sort());
});

test('a record from a phone with a clock years ahead is still edited later, and does not drag this phone along', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const shot = saved(await logShot(keeper, round.id, entry(1)));
  await reading(keeper, (db) => db.shots.put({ ...shot, changedAt: '2099-01-01T00:00:00.000Z' }));
  expect(saved(await editShot(keeper, shot, { lie: 'tee' })).changedAt).toBe('2099-01-01T00:00:00.001Z');
  expect(saved(await editRound(keeper, round.id, { tees: 'white' })).changedAt < '2027').toBe(true);
});
