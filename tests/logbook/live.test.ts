import { effect, type ReadonlySignal } from '@preact/signals';
import { forceCloseDatabase } from 'fake-indexeddb';
import { afterEach, expect, test } from 'vitest';
import { startBag } from '../../src/actions/bagChanges.ts';
import { closeRound, reopenRound } from '../../src/actions/closeRound.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { saveDraft } from '../../src/actions/saveDraft.ts';
import { savePlayer, saveSettings } from '../../src/actions/saveSettings.ts';
import { undo } from '../../src/actions/undo.ts';
import {
  liveBin,
  liveClubs,
  liveDraft,
  liveLogbook,
  liveOpenRound,
  livePlayer,
  liveRound,
  liveRounds,
  liveSettings,
  liveUndo,
} from '../../src/logbook/live.ts';
import { type Live, liveSignal } from '../../src/logbook/liveSignal.ts';
import { schemaVersions } from '../../src/logbook/migrations/schemaVersions.ts';
import { aRound, entry, logbookOf, phone, reading, saved } from '../actions/phone.ts';
import { breakStore, mendStore } from '../faults/brokenStore.ts';

const stops: (() => void)[] = [];
afterEach(() => {
  mendStore();
  for (const stop of stops.splice(0)) stop();
});

/** Watches a signal and keeps every state it took. */
function watched<T>(live: ReadonlySignal<Live<T>>): Live<T>[] {
  const states: Live<T>[] = [];
  stops.push(
    effect(() => {
      states.push(live.value);
    }),
  );
  return states;
}

/** The value once it is there and passes. */
async function value<T>(states: Live<T>[], passes: (value: T) => boolean): Promise<T> {
  await expect.poll(() => states.some((state) => state.kind === 'ready' && passes(state.value))).toBe(true);
  const last = states.at(-1);
  if (last?.kind !== 'ready') throw new Error(`not ready: ${JSON.stringify(last)}`);
  return last.value;
}

test('a signal is loading, then ready, and follows writes of this tab and of another', async () => {
  const mine = phone();
  const [here, there] = [mine.tab(), mine.tab()];
  const states = watched(liveOpenRound(here.connection));
  expect(states).toEqual([{ kind: 'loading' }]);
  expect(await value(states, (open) => open === null)).toBeNull();
  const round = await aRound(here);
  saved(await logShot(here, round.id, entry(2)));
  saved(await logShot(there, round.id, entry(1)));
  const open = await value(states, (now) => now?.shots.length === 2);
  expect(open?.shots.map((shot) => shot.number)).toEqual([1, 2]);
});

test('nothing is read while nobody watches', async () => {
  const keeper = phone().tab();
  let reads = 0;
  const live = liveSignal(keeper.connection, async (db) => {
    reads += 1;
    return db.clubs.count();
  });
  expect(live.value).toEqual({ kind: 'loading' });
  saved(await startBag(keeper, 'typical'));
  expect(reads).toBe(0);
  const stop = effect(() => void live.value);
  await expect.poll(() => live.peek()).toEqual({ kind: 'ready', value: 13 });
  stop();
  const before = reads;
  saved(await startBag(keeper, 'nothing').then(() => savePlayer(keeper, { hand: 'left' })));
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(reads).toBe(before);
});

test('the logbook never shows a round without its shots while it closes and opens', async () => {
  const keeper = phone().tab();
  const states = watched(liveLogbook(keeper.connection));
  const round = await aRound(keeper);
  for (const number of [1, 2, 3]) saved(await logShot(keeper, round.id, entry(number)));
  await value(states, (logbook) => logbook.shots.length === 3);
  const from = states.length;
  for (let times = 0; times < 5; times += 1) {
    saved(await closeRound(keeper, round.id));
    await value(states, (logbook) => logbook.rounds[0]?.closed === true);
    saved(await reopenRound(keeper, round.id));
  }
  await value(states, (logbook) => logbook.rounds[0]?.closed === false);
  const counts = states.slice(from).map((state) => (state.kind === 'ready' ? state.value.shots.length : -1));
  expect(counts.length).toBeGreaterThan(5);
  expect(new Set(counts)).toEqual(new Set([3]));
  expect(liveLogbook(keeper.connection)).toBe(liveLogbook(keeper.connection));
});

test('a shot logged does not cost a reading of the closed rounds', async () => {
  const keeper = phone().tab();
  const closed = await aRound(keeper);
  saved(await logShot(keeper, closed.id, entry(1)));
  saved(await closeRound(keeper, closed.id));
  const states = watched(liveLogbook(keeper.connection));
  const [before] = (await value(states, (logbook) => logbook.shots.length === 1)).shots;
  const round = await aRound(keeper);
  saved(await logShot(keeper, round.id, entry(1)));
  const logbook = await value(states, (now) => now.shots.length === 2);
  expect(logbook.shots.some((shot) => shot === before)).toBe(true);
});

test('each small signal tells its part', async () => {
  const keeper = phone().tab();
  const { connection } = keeper;
  const parts = {
    clubs: watched(liveClubs(connection)),
    player: watched(livePlayer(connection)),
    settings: watched(liveSettings(connection)),
    draft: watched(liveDraft(connection)),
    bin: watched(liveBin(connection)),
    undo: watched(liveUndo(connection)),
    rounds: watched(liveRounds(connection)),
  };
  saved(await startBag(keeper, 'typical'));
  saved(await savePlayer(keeper, { hand: 'left' }));
  saved(await saveSettings(keeper, { theme: 'glare' }));
  const first = await aRound(keeper, { date: '2026-05-01' });
  const shot = saved(await logShot(keeper, first.id, entry(1)));
  saved(await deleteShot(keeper, shot));
  saved(await closeRound(keeper, first.id));
  const second = await aRound(keeper, { date: '2026-05-02' });
  const draft = { roundId: second.id, hole: 1, shotId: null, slot: 'lie', typed: '', entry: entry(1) };
  saved(await saveDraft(keeper, draft));
  expect(await value(parts.clubs, (clubs) => clubs.length === 13)).toHaveLength(13);
  expect(await value(parts.player, (player) => player.hand === 'left')).toMatchObject({ units: 'yards' });
  expect(await value(parts.settings, (settings) => settings.theme === 'glare')).toMatchObject({ temperature: '°F' });
  expect(await value(parts.draft, (now) => now !== null)).toMatchObject(draft);
  expect(await value(parts.bin, (bin) => bin.length === 1)).toMatchObject([{ of: 'shot', shot: { id: shot.id } }]);
  expect(await value(parts.undo, (now) => now?.what === 'close round')).not.toBeNull();
  expect((await value(parts.rounds, (rounds) => rounds.length === 2)).map((round) => round.id)).toEqual([
    second.id,
    first.id,
  ]);
  const round = watched(liveRound(connection, first.id));
  expect(await value(round, (now) => now !== null)).toMatchObject({ round: { closed: true }, shots: [] });
  expect(await value(watched(liveRound(connection, 'no')), (now) => now === null)).toBeNull();
});

test('a signal outlives a lost connection: it opens the logbook anew and goes on', async () => {
  const keeper = phone().tab();
  const states = watched(liveOpenRound(keeper.connection));
  const round = await aRound(keeper);
  await value(states, (open) => open !== null);
  await reading(keeper, async (db) => forceCloseDatabase(db.backendDB() as never));
  saved(await logShot(keeper, round.id, entry(1)));
  await value(states, (open) => open?.shots.length === 1);
  breakStore('sleep', 1);
  saved(await logShot(keeper, round.id, entry(2)));
  await value(states, (open) => open?.shots.length === 2);
  breakStore('server lost', 1);
  saved(await undo(keeper));
  await value(states, (open) => open?.shots.length === 1);
  expect(states.some((state) => state.kind === 'failed')).toBe(false);
});

test('a signal tells why it cannot read, and recovers when the logbook opens again', async () => {
  const keeper = phone().tab();
  breakStore('server lost');
  const states = watched(liveClubs(keeper.connection));
  await expect.poll(() => states.at(-1)).toEqual({ kind: 'failed', why: { kind: 'connection lost' } });
  mendStore();
  saved(await startBag(keeper, 'typical'));
  expect(await value(states, (clubs) => clubs.length === 13)).toHaveLength(13);
});

test('a signal of an old tab tells that a newer version took over', async () => {
  const mine = phone();
  const old = mine.tab();
  const states = watched(liveClubs(old.connection));
  await value(states, (clubs) => clubs.length === 0);
  const newest = Math.max(...schemaVersions.map(({ version }) => version));
  await logbookOf(mine.tab({ versions: [...schemaVersions, { version: newest + 1, stores: { places: 'name' } }] }));
  await expect.poll(() => states.at(-1)).toEqual({ kind: 'failed', why: { kind: 'newer version' } });
});
