import { IDBDatabase } from 'fake-indexeddb';
import { expect, test, vi } from 'vitest';
import { logShot } from '../../src/actions/logShot.ts';
import { retryUnsaved } from '../../src/actions/withUnsaved.ts';
import { type SchemaVersion, schemaVersions } from '../../src/logbook/migrations/schemaVersions.ts';
import { readLogbook } from '../../src/logbook/readLogbook.ts';
import { storageTrouble } from '../../src/logbook/storageTrouble.ts';
import { aRound, entry, logbookOf, phone, reading, saved } from '../actions/phone.ts';

const newest = Math.max(...schemaVersions.map(({ version }) => version));
const newerVersions: SchemaVersion[] = [...schemaVersions, { version: newest + 1, stores: { places: 'name' } }];

test('every transaction asks for strict durability', async () => {
  const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const keeper = phone().tab();
  const round = await aRound(keeper);
  saved(await logShot(keeper, round.id, entry(1)));
  const writes = transaction.mock.calls.filter(([, mode]) => mode === 'readwrite');
  expect(writes).toHaveLength(2);
  expect(writes.map(([, , options]) => options)).toEqual([{ durability: 'strict' }, { durability: 'strict' }]);
});

test('a fresh logbook has a golfer and a device, each with an id of its own', async () => {
  const keeper = phone().tab();
  const { player } = await logbookOf(keeper);
  const device = await reading(keeper, (db) => db.device.get('device'));
  expect(player.id).not.toBe('');
  expect(device?.id).not.toBe(player.id);
});

test('without a store in the browser a shot is unsaved and kept', async () => {
  const keeper = phone().tab({ factory: null });
  expect(await keeper.connection.withDatabase(readLogbook)).toEqual({ kind: 'no storage' });
  expect(await logShot(keeper, 'r', entry(1))).toEqual({ kind: 'unsaved', why: { kind: 'no storage' } });
  expect(keeper.unsaved.value).toHaveLength(1);
});

test('a store that the browser refuses to open counts as none', async () => {
  const factory = {
    open: () => {
      throw new DOMException('denied in this window', 'SecurityError');
    },
  } as unknown as IDBFactory;
  expect(await phone().tab({ factory }).connection.withDatabase(readLogbook)).toEqual({ kind: 'no storage' });
});

test('an upgrade waits, told as blocked, while another tab will not let go, and goes on when it does', async () => {
  const mine = phone();
  saved(await logShot(mine.tab(), (await aRound(mine.tab())).id, entry(1)));
  const request = mine.factory.open('invented');
  const stubborn = await new Promise<IDBDatabase>((resolve) => {
    request.onsuccess = () => resolve(request.result as unknown as IDBDatabase);
  });
  const newer = mine.tab({ versions: newerVersions });
  const roundId = 'p-none';
  expect(await newer.connection.withDatabase(readLogbook)).toEqual({ kind: 'blocked upgrade' });
  expect(await logShot(newer, roundId, entry(2))).toEqual({ kind: 'unsaved', why: { kind: 'blocked upgrade' } });
  expect(newer.unsaved.value).toHaveLength(1);
  stubborn.close();
  await expect.poll(async () => (await newer.connection.withDatabase(readLogbook)).kind).toBe('ok');
  expect(await retryUnsaved(newer)).toBe(true);
  expect((await logbookOf(newer)).shots).toHaveLength(1);
});

test('an old tab lets go when a newer version opens, and its later shots are unsaved and kept', async () => {
  const mine = phone();
  const old = mine.tab();
  const round = await aRound(old);
  saved(await logShot(old, round.id, entry(1)));
  const newer = mine.tab({ versions: newerVersions });
  expect((await logbookOf(newer)).shots).toHaveLength(1);
  expect(await logShot(old, round.id, entry(2))).toEqual({ kind: 'unsaved', why: { kind: 'newer version' } });
  expect(old.unsaved.value).toHaveLength(1);
  saved(await logShot(newer, round.id, entry(2)));
});

test('two tabs that log at the same time lose nothing', async () => {
  const mine = phone();
  const [here, there] = [mine.tab(), mine.tab()];
  const round = await aRound(here);
  const logs = Array.from({ length: 20 }, (_, index) => logShot(index % 2 ? here : there, round.id, entry(index + 1)));
  const shots = (await Promise.all(logs)).map((outcome) => saved(outcome));
  expect(new Set(shots.map((shot) => shot.changedAt)).size).toBe(20);
  expect((await logbookOf(here)).shots.map((shot) => shot.number)).toEqual(logs.map((_, index) => index + 1));
});

test('the trouble behind an error is told by what it wraps', () => {
  const named = (name: string, inner?: unknown) => Object.assign(new Error(name), { name, inner });
  const rows = [
    [named('AbortError', named('QuotaExceededError')), 'work', 'quota'],
    [named('BulkError', undefined), 'work', 'failed'],
    [Object.assign(named('BulkError'), { failures: [named('QuotaExceededError')] }), 'work', 'quota'],
    [named('VersionError'), 'opening', 'newer version'],
    [named('DatabaseClosedError', named('InvalidStateError')), 'work', 'connection lost'],
    [named('InvalidStateError'), 'opening', 'no storage'],
    [named('InvalidStateError'), 'work', 'connection lost'],
    ['not even an error', 'work', 'failed'],
  ] as const;
  for (const [error, during, kind] of rows) expect(storageTrouble(error, during).kind).toBe(kind);
  expect(storageTrouble(new Error('why'), 'work')).toEqual({ kind: 'failed', reason: 'why' });
});
