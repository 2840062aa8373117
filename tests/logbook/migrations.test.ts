import { readdirSync, readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { logShot } from '../../src/actions/logShot.ts';
import { undo } from '../../src/actions/undo.ts';
import { carrybookFileOf, readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { type SchemaVersion, schemaVersions } from '../../src/logbook/migrations/schemaVersions.ts';
import { readLogbook } from '../../src/logbook/readLogbook.ts';
import { openRoundId } from '../../src/logbook/roundStore.ts';
import { entry, logbookOf, phone, reading, saved } from '../actions/phone.ts';
import { type Dump, dumpRaw, restoreRaw } from './rawDatabase.ts';

const fixtures = new URL('../fixtures/', import.meta.url);
const frozen = (version: number): Dump =>
  JSON.parse(readFileSync(new URL(`logbook-v${version}.json`, fixtures), 'utf8'));
const recordsOf = (dump: Dump, store: string) => dump.stores.find(({ name }) => name === store)?.records ?? [];
const newest = Math.max(...schemaVersions.map(({ version }) => version));

test('every version that a phone may hold has its frozen dump', () => {
  const dumps = readdirSync(fixtures).filter((name) => /^logbook-v\d+\.json$/.test(name));
  expect(dumps.sort()).toEqual(schemaVersions.map(({ version }) => `logbook-v${version}.json`).sort());
  for (const { version } of schemaVersions) {
    for (const { name, records } of frozen(version).stores)
      expect(`${name} ${records.length > 0}`).toBe(`${name} true`);
  }
});

for (const { version } of schemaVersions) {
  test(`a phone that holds version ${version} opens with every record, and is written to`, async () => {
    const mine = phone('later');
    await restoreRaw(mine.factory, 'invented', frozen(version));
    const keeper = mine.tab();
    const logbook = await logbookOf(keeper);
    const dump = frozen(version);
    for (const store of ['clubs', 'rounds', 'reviews', 'done', 'deleted'] as const) {
      expect(logbook[store]).toEqual(recordsOf(dump, store));
    }
    const closed = recordsOf(dump, 'closedShots').flatMap((round) => (round as { shots: unknown[] }).shots);
    expect(logbook.shots).toHaveLength(recordsOf(dump, 'shots').length + closed.length);
    expect(logbook.shots).toEqual(expect.arrayContaining([...recordsOf(dump, 'shots'), ...closed]));
    for (const store of ['bin', 'undo', 'settings', 'draft', 'device'] as const) {
      expect(await reading(keeper, (db) => db.table(store).toArray())).toEqual(recordsOf(dump, store));
    }
    const file = writeCarrybookFile(carrybookFileOf(logbook, '2026-06-02T00:00:00Z', 'backup'));
    expect(readCarrybookFile(file).kind).toBe('read');
    expect(JSON.parse(file).team).toBe('Larch Hill (invented)');
    const roundId = (await reading(keeper, openRoundId)) ?? '';
    expect(saved(await undo(keeper)).what).toBe('delete shot');
    saved(await logShot(keeper, roundId, entry(3, { hole: 10 })));
    expect(await logbookOf(keeper)).toMatchObject({ shots: { length: logbook.shots.length + 2 } });
  });
}

test("today's code on an empty phone makes the stores of the newest dump", async () => {
  const mine = phone();
  await logbookOf(mine.tab());
  const shape = (dump: Dump) => dump.stores.map(({ name, keyPath, indexes }) => ({ name, keyPath, indexes }));
  const made = await dumpRaw(mine.factory, 'invented');
  expect(shape(made)).toEqual(shape(frozen(newest)));
  expect(made.version).toBe(frozen(newest).version);
});

/** An invented next version, so that the way of upgrading is itself tested before the first is needed. */
const nextVersions: SchemaVersion[] = [
  ...schemaVersions,
  {
    version: newest + 1,
    stores: { draft: null, places: 'name' },
    upgrade: async (transaction) => {
      const rounds = await transaction.table('rounds').toArray();
      const names = new Set(rounds.map((round: { course: string }) => round.course));
      await transaction.table('places').bulkPut([...names].map((name) => ({ name })));
    },
  },
];

test('an upgrade carries records over, and keeps all others', async () => {
  const mine = phone();
  await restoreRaw(mine.factory, 'invented', frozen(newest));
  const keeper = mine.tab({ versions: nextVersions });
  expect(await reading(keeper, (db) => db.table('places').toArray())).toEqual([{ name: 'Larch Hill (invented)' }]);
  const before = frozen(newest);
  const after = await dumpRaw(mine.factory, 'invented');
  for (const { name, records } of before.stores.filter((store) => store.name !== 'draft')) {
    expect(recordsOf(after, name)).toEqual(records);
  }
  expect(after.stores.some(({ name }) => name === 'draft')).toBe(false);
});

test('an upgrade that fails leaves the old version as it was', async () => {
  const mine = phone();
  await restoreRaw(mine.factory, 'invented', frozen(newest));
  const failing: SchemaVersion = {
    version: newest + 1,
    stores: { places: 'name' },
    upgrade: async (transaction) => {
      await transaction.table('rounds').clear();
      throw new RangeError('a course without a name');
    },
  };
  const keeper = mine.tab({ versions: [...schemaVersions, failing] });
  const stored = await keeper.connection.withDatabase(readLogbook);
  expect(stored).toMatchObject({ kind: 'failed', reason: expect.stringContaining('a course without a name') });
  expect(await dumpRaw(mine.factory, 'invented')).toEqual(frozen(newest));
  expect((await logbookOf(mine.tab())).rounds).toEqual(recordsOf(frozen(newest), 'rounds'));
});

test('a logbook of a newer version is refused, and not touched', async () => {
  const factory = new IDBFactory();
  const newer: Dump = {
    version: (newest + 1) * 10,
    stores: frozen(newest).stores.filter(({ name }) => name !== 'undo'),
  };
  await restoreRaw(factory, 'invented', newer);
  const keeper = phone().tab({ factory });
  expect(await keeper.connection.withDatabase(readLogbook)).toEqual({ kind: 'newer version' });
  expect(await logShot(keeper, 'p-1', entry(1))).toEqual({ kind: 'unsaved', why: { kind: 'newer version' } });
  expect(keeper.unsaved.value).toHaveLength(1);
  expect(await dumpRaw(factory, 'invented')).toEqual(newer);
});
