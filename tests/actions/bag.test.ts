import { expect, test } from 'vitest';
import { putInBag, removeClub, startBag } from '../../src/actions/bagChanges.ts';
import { closeRound } from '../../src/actions/closeRound.ts';
import { exportBackup } from '../../src/actions/exportBackup.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { persistStorage } from '../../src/actions/persistStorage.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { savePlayer, saveSettings } from '../../src/actions/saveSettings.ts';
import { setHole } from '../../src/actions/setHole.ts';
import { undo } from '../../src/actions/undo.ts';
import type { Club } from '../../src/golf/club.ts';
import type { ClubForm } from '../../src/golf/clubForm.ts';
import type { Player } from '../../src/golf/player.ts';
import { puttsByCount } from '../../src/golf/putts.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { degrees } from '../../src/units/degrees.ts';
import { aRound, entry, logbookOf, phone, reading, refused, saved } from './phone.ts';

function formOf(club: Club, loft_deg: number): ClubForm {
  const { id: _id, from: _from, ...spec } = club.specPeriods[club.specPeriods.length - 1];
  return { ...club, spec: { ...spec, loft_deg: degrees(loft_deg) } };
}

test('a typical bag is thirteen clubs, once; starting from nothing is remembered too', async () => {
  const keeper = phone().tab();
  expect(saved(await startBag(keeper, 'nothing'))).toEqual([]);
  expect(await reading(keeper, (db) => db.settings.get('only'))).toMatchObject({ bagStarted: true });
  expect(saved(await startBag(keeper, 'typical'))).toHaveLength(13);
  expect(refused(await startBag(keeper, 'typical')).kind).toBe('bag not empty');
  expect((await logbookOf(keeper)).clubs).toHaveLength(13);
});

test('a club bent from a day on takes the shots since over to its new period, and undo takes all back', async () => {
  const keeper = phone().tab();
  const club = saved(await saveClub(keeper, typicalBag()[10]));
  const shots: string[] = [];
  for (const date of ['2026-04-30', '2026-05-01', '2026-05-20']) {
    const round = await aRound(keeper, { date });
    shots.push(saved(await logShot(keeper, round.id, entry(1, { clubId: club.id }))).id);
    if (date !== '2026-05-20') saved(await closeRound(keeper, round.id));
  }
  const bent = saved(await saveClub(keeper, formOf(club, 56), '2026-05-01'));
  expect(bent.specPeriods.map((period) => [period.from, period.loft_deg])).toEqual([
    ['1970-01-01', 54],
    ['2026-05-01', 56],
  ]);
  const [old, now] = bent.specPeriods.map((period) => period.id);
  const specs = async () => {
    const logged = (await logbookOf(keeper)).shots;
    return shots.map((id) => logged.find((shot) => shot.id === id)?.specId);
  };
  expect(await specs()).toEqual([old, now, now]);
  saved(await undo(keeper));
  expect(await specs()).toEqual([old, old, old]);
  expect((await logbookOf(keeper)).clubs[0].specPeriods).toHaveLength(1);
});

test('without a day the record is corrected; a loft that no club has is refused by its slot', async () => {
  const keeper = phone().tab();
  const club = saved(await saveClub(keeper, typicalBag()[10]));
  const right = saved(await saveClub(keeper, formOf(club, 55)));
  expect(right.specPeriods).toEqual([{ ...club.specPeriods[0], loft_deg: 55 }]);
  expect(refused(await saveClub(keeper, formOf(club, 99)))).toEqual({
    kind: 'not valid',
    path: 'specPeriods.0.loft_deg',
  });
  expect(refused(await saveClub(keeper, { ...formOf(club, 55), id: 'no' })).kind).toBe('gone');
});

test('a club nobody played is removed; one with a shot or a putt goes out of the bag', async () => {
  const keeper = phone().tab();
  const clubs = saved(await startBag(keeper, 'typical'));
  const [driver, wood, , , , , , , , , , , putter] = clubs;
  const round = await aRound(keeper);
  saved(await logShot(keeper, round.id, entry(1, { clubId: driver.id })));
  saved(await setHole(keeper, round.id, 1, { putts: puttsByCount(1, putter.id) }));
  saved(await closeRound(keeper, round.id));
  expect(saved(await removeClub(keeper, driver.id))).toBe('out of bag');
  expect(saved(await removeClub(keeper, putter.id))).toBe('out of bag');
  expect(saved(await removeClub(keeper, wood.id))).toBe('removed');
  const after = await logbookOf(keeper);
  expect(after.clubs).toHaveLength(12);
  expect(
    after.clubs
      .filter((club) => !club.inBag)
      .map((club) => club.name)
      .sort(),
  ).toEqual(['driver', 'putter']);
  expect(after.deleted).toMatchObject([{ id: wood.id, of: 'club' }]);
  expect(saved(await removeClub(keeper, wood.id))).toBe('removed');
  expect(refused(await removeClub(keeper, 'no')).kind).toBe('gone');
  saved(await undo(keeper));
  const back = await logbookOf(keeper);
  expect(back.clubs).toHaveLength(13);
  expect(back.deleted).toEqual([]);
});

test('undo of a new club removes it; in and out of the bag', async () => {
  const keeper = phone().tab();
  const club = saved(await saveClub(keeper, typicalBag()[0]));
  saved(await putInBag(keeper, club.id, false));
  expect((await logbookOf(keeper)).clubs[0].inBag).toBe(false);
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).clubs[0].inBag).toBe(true);
  saved(await undo(keeper));
  const after = await logbookOf(keeper);
  expect(after.clubs).toEqual([]);
  expect(after.deleted).toMatchObject([{ of: 'club', id: club.id }]);
});

test('settings and player keep what was not changed; a name too long is refused', async () => {
  const keeper = phone().tab();
  saved(await saveSettings(keeper, { theme: 'glare' }));
  saved(await saveSettings(keeper, { windSpeed: 'km/h' }));
  expect(await reading(keeper, (db) => db.settings.get('only'))).toMatchObject({ theme: 'glare', windSpeed: 'km/h' });
  saved(await savePlayer(keeper, { hand: 'left' }));
  saved(await savePlayer(keeper, { name: 'Finch (invented)' }));
  expect((await logbookOf(keeper)).player).toMatchObject({ hand: 'left', name: 'Finch (invented)', units: 'yards' });
  expect(refused(await savePlayer(keeper, { name: 'x'.repeat(61) }))).toEqual({ kind: 'not valid', path: 'name' });
});

test('the browser is asked to keep the logbook, and each answer is told', async () => {
  const yes = async () => true;
  const no = async () => false;
  expect(await persistStorage({ persist: yes, persisted: no })).toBe('granted');
  expect(await persistStorage({ persist: no, persisted: yes })).toBe('granted');
  expect(await persistStorage({ persist: no, persisted: no })).toBe('refused');
  expect(await persistStorage({})).toBe('not offered');
  expect(await persistStorage({ persist: () => Promise.reject(new TypeError('opaque origin')) })).toBe('refused');
});

test('own swings that an earlier version kept among the settings are the golfer’s, and go with the backup', async () => {
  const keeper = phone().tab();
  const own = [{ swing: '8:15', label: 'knee to knee' }];
  await reading(keeper, async (db) => {
    const { swings: _swings, ...player } = (await db.player.toArray())[0];
    await db.player.put(player as Player);
    await db.settings.put({ key: 'only', ownSwings: own });
  });
  expect((await logbookOf(keeper)).player.swings).toEqual(own);
  const backup = await exportBackup(keeper);
  expect(backup.kind === 'ok' && JSON.parse(backup.text).player.swings).toEqual(own);
  saved(await savePlayer(keeper, { hand: 'left' }));
  saved(await saveSettings(keeper, { ownSwings: [] }));
  expect((await logbookOf(keeper)).player.swings).toEqual(own);
  saved(await savePlayer(keeper, { swings: [] }));
  expect((await logbookOf(keeper)).player.swings).toEqual([]);
  expect(refused(await savePlayer(keeper, { swings: [{ swing: 'half', label: '' }] })).kind).toBe('not valid');
});
