import { effect } from '@preact/signals';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { startBag } from '../../src/actions/bagChanges.ts';
import { closeRound } from '../../src/actions/closeRound.ts';
import { deleteEverything, removeDemo } from '../../src/actions/deleteEverything.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { exportBackup, noteBackup } from '../../src/actions/exportBackup.ts';
import type { Keeper } from '../../src/actions/keeper.ts';
import { loadDemo } from '../../src/actions/loadDemo.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { restoreBackup } from '../../src/actions/restoreBackup.ts';
import { savePlayer } from '../../src/actions/saveSettings.ts';
import { openShelf } from '../../src/actions/shelf.ts';
import {
  carrybookFileOf,
  logbookOf as logbookOfFile,
  readCarrybookFile,
  writeCarrybookFile,
} from '../../src/exchange/carrybookFile.ts';
import { settledLogbook } from '../../src/exchange/merge.ts';
import { openRoundId } from '../../src/logbook/roundStore.ts';
import { fileArbitrary } from '../exchange/fileArbitrary.ts';
import { breakStore, mendStore } from '../faults/brokenStore.ts';
import { aRound, entry, logbookOf, phone, reading, refused, saved } from './phone.ts';

async function backupOf(keeper: Keeper): Promise<string> {
  const backup = await exportBackup(keeper);
  if (backup.kind !== 'ok') throw new Error(backup.kind);
  return backup.text;
}

async function played(keeper: Keeper) {
  const clubs = saved(await startBag(keeper, 'typical'));
  saved(await savePlayer(keeper, { name: 'Finch (invented)' }));
  const closed = await aRound(keeper);
  saved(await logShot(keeper, closed.id, entry(1, { clubId: clubs[5].id })));
  saved(await closeRound(keeper, closed.id));
  const open = await aRound(keeper);
  const shots = [1, 2].map(async (number) => saved(await logShot(keeper, open.id, entry(number))));
  saved(await deleteShot(keeper, (await Promise.all(shots))[1]));
  return { closed, open };
}

test('a backup restored on an empty phone is the same to the byte, the open round with it', async () => {
  const keeper = phone('a').tab();
  const { open } = await played(keeper);
  const text = await backupOf(keeper);
  const other = phone('b').tab();
  expect(saved(await restoreBackup(other, text, 'merge'))).toEqual({ clubs: 13, rounds: 2, shots: 2, merge: null });
  expect(await backupOf(other)).toBe(text);
  expect(await reading(other, openRoundId)).toBe(open.id);
  expect(await reading(other, async (db) => [await db.shots.count(), await db.closedShots.count()])).toEqual([1, 1]);
});

test('whatever a file holds, restoring and exporting it gives it back settled', async () => {
  await fc.assert(
    fc.asyncProperty(fileArbitrary, async (file) => {
      const keeper = phone().tab();
      const text = JSON.stringify({ ...file, scope: 'backup' });
      const read = readCarrybookFile(text);
      if (read.kind !== 'read') throw new Error('the invented file must be readable');
      saved(await restoreBackup(keeper, text, 'replace'));
      const expected = carrybookFileOf(settledLogbook(logbookOfFile(read.value)), '2026-06-01T12:00:00.000Z', 'backup');
      expect(await backupOf(keeper)).toBe(writeCarrybookFile(expected));
      keeper.close();
    }),
    { numRuns: 25 },
  );
});

test('two phones that merge each other end with one logbook, and merging again changes nothing', async () => {
  const [a, b] = [phone('a').tab(), phone('b').tab()];
  const { open, closed } = await played(a);
  saved(await restoreBackup(b, await backupOf(a), 'replace'));
  saved(await logShot(a, open.id, entry(3)));
  saved(await logShot(b, closed.id, entry(4)));
  const [fromA, fromB] = [await backupOf(a), await backupOf(b)];
  const { merge } = saved(await restoreBackup(a, fromB, 'merge'));
  expect(merge?.shots).toMatchObject({ new: 1, removed: 0 });
  saved(await restoreBackup(b, fromA, 'merge'));
  const merged = await backupOf(a);
  expect(await backupOf(b)).toBe(merged);
  saved(await restoreBackup(a, fromB, 'merge'));
  expect(await backupOf(a)).toBe(merged);
  expect((await logbookOf(a)).shots).toHaveLength(4);
  expect(await reading(a, openRoundId)).toBe(open.id);
});

test('a file that is broken, shared or of another golfer is refused in words, and nothing is written', async () => {
  const keeper = phone('a').tab();
  await played(keeper);
  const before = await backupOf(keeper);
  const stranger = phone('b').tab();
  saved(await savePlayer(stranger, { name: 'Wren (invented)' }));
  const wrong = refused(await restoreBackup(keeper, before.replace('"hole":1', '"hole":"one"'), 'replace'));
  expect(wrong).toMatchObject({
    kind: 'unreadable',
    refusals: [{ path: expect.stringMatching(/^shots\[\d\]\.hole$/) }],
  });
  expect(refused(await restoreBackup(keeper, 'no file', 'merge')).kind).toBe('unreadable');
  const share = before.replace('"scope": "backup"', '"scope": "share"');
  expect(refused(await restoreBackup(keeper, share, 'replace')).kind).toBe('share');
  expect(refused(await restoreBackup(keeper, await backupOf(stranger), 'merge'))).toEqual({
    kind: 'another player',
    name: 'Wren (invented)',
  });
  expect(await backupOf(keeper)).toBe(before);
});

test('nothing is imported during a round by the Rules', async () => {
  const keeper = phone('a').tab();
  await aRound(keeper, { play: 'rules' });
  const text = await backupOf(phone('b').tab());
  expect(refused(await restoreBackup(keeper, text, 'replace')).kind).toBe('round by the Rules');
});

test('a backup that fails half way through restoring leaves what was there', async () => {
  const [a, b] = [phone('a').tab(), phone('b').tab()];
  await played(a);
  await played(b);
  const before = await backupOf(b);
  breakStore('quota at commit');
  const outcome = await restoreBackup(b, await backupOf(a), 'replace');
  mendStore();
  expect(outcome).toEqual({ kind: 'unsaved', why: { kind: 'quota' } });
  expect(await backupOf(b)).toBe(before);
});

test('a backup names its day and what is not in it yet, and is noted when handed over', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  breakStore('quota');
  await logShot(keeper, round.id, entry(1));
  expect(await exportBackup(keeper)).toMatchObject({ kind: 'ok', fileName: 'carrybook-2026-06-01.json', unsaved: 1 });
  mendStore();
  expect(await exportBackup(keeper)).toMatchObject({ kind: 'ok', unsaved: 0 });
  saved(await noteBackup(keeper));
  expect(await reading(keeper, (db) => db.settings.get('only'))).toMatchObject({
    lastBackupAt: '2026-06-01T12:00:00.000Z',
  });
  expect(await exportBackup(phone().tab({ factory: null }))).toEqual({ kind: 'unread', why: { kind: 'no storage' } });
});

test('the demo is shown in a logbook of its own; removing it leaves the own one as it was', async () => {
  const mine = phone('mine');
  const shelf = openShelf({ factory: mine.factory, clock: mine.clock, newId: mine.newId });
  const shown: string[] = [];
  const stop = effect(() => {
    shown.push(shelf.shown.value.connection.name);
  });
  await played(shelf.own);
  const before = await backupOf(shelf.own);
  const season = phone('demo').tab();
  await played(season);
  const text = await backupOf(season);
  expect(saved(await loadDemo(shelf, text)).shots).toBe(2);
  await expect.poll(() => shown.at(-1)).toBe('carrybook-demo');
  expect(await backupOf(shelf.demo)).toBe(text);
  expect(await backupOf(shelf.own)).toBe(before);
  expect(refused(await loadDemo(shelf, 'no file')).kind).toBe('unreadable');
  expect(await backupOf(shelf.demo)).toBe(text);
  saved(await removeDemo(shelf));
  await expect.poll(() => shown.at(-1)).toBe('carrybook');
  expect((await logbookOf(shelf.demo)).clubs).toEqual([]);
  expect(await backupOf(shelf.own)).toBe(before);
  stop();
});

test('deleting everything leaves a new golfer on a new device, and nothing in any store', async () => {
  const mine = phone('mine');
  const shelf = openShelf({ factory: mine.factory, clock: mine.clock, newId: mine.newId });
  await played(shelf.own);
  const demo = phone('demo').tab();
  await played(demo);
  saved(await loadDemo(shelf, await backupOf(demo)));
  const before = await logbookOf(shelf.own);
  const device = await reading(shelf.own, (db) => db.device.get('device'));
  saved(await deleteEverything(shelf));
  for (const keeper of [shelf.own, shelf.demo]) {
    const left = await reading(keeper, async (db) =>
      (await Promise.all(db.tables.map(async (table) => [table.name, await table.count()] as const))).filter(
        ([, n]) => n > 0,
      ),
    );
    expect(left.sort()).toEqual([
      ['device', 1],
      ['player', 1],
    ]);
  }
  expect((await logbookOf(shelf.own)).player).toMatchObject({ name: '' });
  expect((await logbookOf(shelf.own)).player.id).not.toBe(before.player.id);
  expect((await reading(shelf.own, (db) => db.device.get('device')))?.id).not.toBe(device?.id);
});
