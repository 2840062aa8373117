import { afterEach, expect, test } from 'vitest';
import { putInBag, removeClub, saveClaims, startBag } from '../../src/actions/bagChanges.ts';
import { closeRound, reopenRound } from '../../src/actions/closeRound.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { deleteRound, editRound } from '../../src/actions/editRound.ts';
import { editShot } from '../../src/actions/editShot.ts';
import { exportBackup } from '../../src/actions/exportBackup.ts';
import type { Keeper } from '../../src/actions/keeper.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { moveShot } from '../../src/actions/moveShot.ts';
import { restoreBackup } from '../../src/actions/restoreBackup.ts';
import { purgeBin, restoreFromBin } from '../../src/actions/restoreFromBin.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { clearDraft, saveDraft } from '../../src/actions/saveDraft.ts';
import { savePlayer, saveSettings } from '../../src/actions/saveSettings.ts';
import { setHole } from '../../src/actions/setHole.ts';
import { startRound } from '../../src/actions/startRound.ts';
import { undo } from '../../src/actions/undo.ts';
import { retryUnsaved, withUnsaved } from '../../src/actions/withUnsaved.ts';
import { rememberedStart } from '../../src/golf/newRound.ts';
import type { Round } from '../../src/golf/round.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { inOrder } from '../../src/golf/shotOrder.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import type { Binned } from '../../src/logbook/database.ts';
import { aRound, entry, logbookOf, type Phone, phone, reading, saved } from '../actions/phone.ts';
import { breakStore, type Fault, faults, mendStore } from './brokenStore.ts';

afterEach(mendStore);

/** A logbook with something in it for each action to act on. */
interface Scene {
  readonly mine: Phone;
  readonly keeper: Keeper;
  readonly round: Round;
  readonly closed: Round;
  readonly shots: readonly Shot[];
  readonly clubId: string;
  readonly binned: Binned;
  readonly backup: string;
}

async function scene(): Promise<Scene> {
  const mine = phone();
  const keeper = mine.tab({ patience_ms: 150 });
  const club = saved(await saveClub(keeper, typicalBag()[0]));
  const closed = await aRound(keeper);
  saved(await logShot(keeper, closed.id, entry(1)));
  saved(await closeRound(keeper, closed.id));
  const round = await aRound(keeper);
  const shots = [1, 2, 3].map(async (number) => saved(await logShot(keeper, round.id, entry(number))));
  const [a, b, c] = await Promise.all(shots);
  saved(await deleteShot(keeper, c));
  const [binned] = await reading(keeper, (db) => db.bin.toArray());
  saved(await saveDraft(keeper, { roundId: round.id, hole: 1, shotId: null, slot: null, typed: '', entry: entry(4) }));
  const backup = await exportBackup(keeper);
  if (backup.kind !== 'ok') throw new Error(backup.kind);
  return { mine, keeper, round, closed, shots: [a, b], clubId: club.id, binned, backup: backup.text };
}

/** Everything stored, as one text; the device's last stamp apart, which any attempt may move. */
async function stored(keeper: Keeper): Promise<string> {
  return reading(keeper, async (db) => {
    const tables = db.tables.filter((table) => table.name !== 'device');
    return JSON.stringify(await Promise.all(tables.map((table) => table.toArray())));
  });
}

/** Changes that are kept in memory and tried again. */
const kept: Record<string, (at: Scene) => Promise<{ kind: string; why?: unknown }>> = {
  logShot: ({ keeper, round }) => logShot(keeper, round.id, entry(5, { lie: 'bare' })),
  editShot: ({ keeper, shots }) => editShot(keeper, shots[0], { lie: 'bare' }),
  moveShot: ({ keeper, shots }) => moveShot(keeper, shots[1], { hole: 1, after: null }),
  deleteShot: ({ keeper, shots }) => deleteShot(keeper, shots[0]),
  setHole: ({ keeper, round }) => setHole(keeper, round.id, 1, { par: 5 }),
};

/** Actions that say that nothing was written. */
const told: Record<string, (at: Scene) => Promise<{ kind: string; why?: unknown }>> = {
  undo: ({ keeper }) => undo(keeper),
  closeRound: ({ keeper, round }) => closeRound(keeper, round.id),
  reopenRound: async ({ keeper, closed, round }) => {
    const over = await closeRound(keeper, round.id);
    return over.kind === 'saved' ? reopenRound(keeper, closed.id) : over;
  },
  editRound: ({ keeper, round }) => editRound(keeper, round.id, { tees: 'white' }),
  deleteRound: ({ keeper, closed }) => deleteRound(keeper, closed.id),
  startRound: async ({ keeper, round }) => {
    const over = await closeRound(keeper, round.id);
    return over.kind === 'saved' ? startRound(keeper, { ...rememberedStart([]), play: 'casual' }) : over;
  },
  restoreFromBin: ({ keeper, binned }) => restoreFromBin(keeper, binned),
  purgeBin: ({ mine, keeper }) => {
    mine.clock.ms += 40 * 86_400_000;
    return purgeBin(keeper);
  },
  saveClub: ({ keeper }) => saveClub(keeper, typicalBag()[1]),
  saveClaims: ({ keeper, clubId }) => saveClaims(keeper, [{ clubId, claimed_m: null }]),
  putInBag: ({ keeper, clubId }) => putInBag(keeper, clubId, false),
  removeClub: ({ keeper, clubId }) => removeClub(keeper, clubId),
  startBag: async ({ keeper, round, closed, clubId }) => {
    // A club in the bag of the round being played is kept, so the rounds go first.
    for (const { id } of [round, closed]) {
      const deleted = await deleteRound(keeper, id);
      if (deleted.kind !== 'saved') return deleted;
    }
    const removed = await removeClub(keeper, clubId);
    return removed.kind === 'saved' ? startBag(keeper, 'typical') : removed;
  },
  savePlayer: ({ keeper }) => savePlayer(keeper, { hand: 'left' }),
  saveSettings: ({ keeper }) => saveSettings(keeper, { theme: 'night' }),
  saveDraft: ({ keeper, round }) =>
    saveDraft(keeper, { roundId: round.id, hole: 2, shotId: null, slot: null, typed: '', entry: entry(1) }),
  clearDraft: ({ keeper }) => clearDraft(keeper),
  restoreBackup: ({ keeper, backup }) => restoreBackup(keeper, backup, 'replace'),
};

const expectedWhy: Record<Fault, string> = {
  quota: 'quota',
  'quota at commit': 'quota',
  abort: 'connection lost',
  sleep: 'connection lost',
  'server lost': 'connection lost',
  'no answer': 'connection lost',
  mute: 'connection lost',
};

/** Faults under which nothing lands on the disk. */
const nothingLands = faults.filter((fault) => fault !== 'no answer' && fault !== 'mute');

/** Actions that only delete need no room and no put. */
const needNoRoom = ['clearDraft'];

for (const fault of nothingLands) {
  for (const [name, act] of Object.entries(kept)) {
    test(`${name} under "${fault}": unsaved, kept, shown, and saved once mended`, async () => {
      const at = await scene();
      const before = await stored(at.keeper);
      breakStore(fault);
      expect(await act(at)).toEqual({ kind: 'unsaved', why: { kind: expectedWhy[fault] } });
      expect(at.keeper.unsaved.value.map((unsaved) => unsaved.why.kind)).toEqual([expectedWhy[fault]]);
      const shown = inOrder(withUnsaved(at.keeper.unsaved.value, at.round.id, at.shots));
      mendStore();
      expect(await stored(at.keeper)).toBe(before);
      expect(await retryUnsaved(at.keeper)).toBe(true);
      expect(at.keeper.unsaved.value).toEqual([]);
      expect(await stored(at.keeper)).not.toBe(before);
      const plain = (shots: readonly Shot[]) => shots.map(({ id, hole, number, lie }) => ({ id, hole, number, lie }));
      const now = (await logbookOf(at.keeper)).shots.filter((shot) => shot.roundId === at.round.id);
      expect(plain(now)).toEqual(plain(shown));
    });
  }
  for (const [name, act] of Object.entries(told)) {
    if (fault === 'quota' && needNoRoom.includes(name)) continue;
    test(`${name} under "${fault}": told, nothing written, saved once mended`, async () => {
      const at = await scene();
      const before = await stored(at.keeper);
      breakStore(fault);
      expect(await act(at)).toEqual({ kind: 'unsaved', why: { kind: expectedWhy[fault] } });
      mendStore();
      expect(await stored(at.keeper)).toBe(before);
      expect(at.keeper.unsaved.value).toEqual([]);
      expect((await act(at)).kind).toBe('saved');
      expect(await stored(at.keeper)).not.toBe(before);
    });
  }
}

for (const fault of ['abort', 'sleep', 'server lost', 'no answer'] as const) {
  for (const [name, act] of Object.entries({ ...kept, ...told })) {
    test(`${name} under one "${fault}": the logbook is opened anew and the change saved, once`, async () => {
      const clean = await scene();
      expect((await act(clean)).kind).toBe('saved');
      const expected = await logbookOf(clean.keeper);
      const at = await scene();
      breakStore(fault, 1);
      expect((await act(at)).kind).toBe('saved');
      mendStore();
      expect(at.keeper.unsaved.value).toEqual([]);
      const bare = (logbook: object) =>
        JSON.stringify(logbook, (key, value) =>
          ['changedAt', 'device', 'id', 'bag', 'startedAt'].includes(key) || key.endsWith('Id') ? 0 : value,
        );
      const got = await logbookOf(at.keeper);
      expect(bare({ ...got, deleted: got.deleted.length })).toBe(
        bare({ ...expected, deleted: expected.deleted.length }),
      );
    });
  }
}

test('changes wait in order: an edit and a deletion of a shot that is not saved yet', async () => {
  const { keeper, round } = await scene();
  breakStore('quota');
  await logShot(keeper, round.id, entry(5));
  await logShot(keeper, round.id, entry(6));
  const [first, second] = keeper.unsaved.value.map((unsaved) => unsaved.shotId ?? '');
  await editShot(keeper, { id: first, roundId: round.id }, { lie: 'bare' });
  await deleteShot(keeper, { id: second, roundId: round.id });
  expect(keeper.unsaved.value.map((unsaved) => unsaved.what)).toEqual(['log', 'log', 'edit', 'delete']);
  expect(withUnsaved(keeper.unsaved.value, round.id, []).map((shot) => [shot.id, shot.lie])).toEqual([[first, 'bare']]);
  expect(await closeRound(keeper, round.id)).toEqual({ kind: 'unsaved', why: { kind: 'quota' } });
  mendStore();
  saved(await closeRound(keeper, round.id));
  const { shots } = await logbookOf(keeper);
  expect(shots.find((shot) => shot.id === first)?.lie).toBe('bare');
  expect(shots.some((shot) => shot.id === second)).toBe(false);
});

test('the next action saves what waits before it', async () => {
  const { keeper, round } = await scene();
  breakStore('quota');
  await logShot(keeper, round.id, entry(5));
  mendStore();
  saved(await logShot(keeper, round.id, entry(6)));
  expect(keeper.unsaved.value).toEqual([]);
  expect((await logbookOf(keeper)).shots.filter((shot) => shot.roundId === round.id)).toHaveLength(4);
});

test('what waits is saved by itself after a while', async () => {
  const mine = phone();
  const keeper = mine.tab({ retryEvery_ms: 20 });
  const round = await aRound(keeper);
  breakStore('quota');
  await logShot(keeper, round.id, entry(1));
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(keeper.unsaved.value).toHaveLength(1);
  mendStore();
  await expect.poll(() => keeper.unsaved.value.length).toBe(0);
  expect((await logbookOf(keeper)).shots).toHaveLength(1);
  keeper.close();
});

test('undo gives up what is unsaved before it touches what is stored', async () => {
  const { keeper, round } = await scene();
  const before = await stored(keeper);
  breakStore('quota');
  await logShot(keeper, round.id, entry(5));
  expect(saved(await undo(keeper)).what).toBe('log shot');
  expect(keeper.unsaved.value).toEqual([]);
  mendStore();
  expect(await stored(keeper)).toBe(before);
});

test('a logbook that never answers when opened is told as lost, and what waits is saved when it does', async () => {
  const mine = phone();
  const round = await aRound(mine.tab());
  const keeper = mine.tab({ patience_ms: 20 });
  breakStore('mute');
  expect(await logShot(keeper, round.id, entry(1))).toEqual({ kind: 'unsaved', why: { kind: 'connection lost' } });
  expect(keeper.unsaved.value).toHaveLength(1);
  breakStore('mute', 1);
  expect(await retryUnsaved(keeper)).toBe(true);
  expect((await logbookOf(keeper)).shots).toHaveLength(1);
});
