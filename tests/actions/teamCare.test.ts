import { expect, test } from 'vitest';
import { bringBack, deleteMember, deleteTeam } from '../../src/actions/careTeam.ts';
import type { Keeper } from '../../src/actions/keeper.ts';
import { noteLooked } from '../../src/actions/noteLooked.ts';
import { reviewPlayers } from '../../src/actions/reviewPlayer.ts';
import { savePage } from '../../src/actions/savePage.ts';
import { takeInFile } from '../../src/actions/takeIn.ts';
import { removeGroup, saveGroup } from '../../src/actions/teamGroups.ts';
import { removeView, saveView } from '../../src/actions/teamViews.ts';
import { liveTeam } from '../../src/logbook/liveTeam.ts';
import { refused, saved } from './phone.ts';
import { coach, fileOf, golfer, storedTeam, work } from './teamBooks.ts';

/** Everything stored of the team, but when and by which device. */
async function dump(team: Keeper): Promise<Record<string, unknown[]>> {
  const read = await team.connection.withDatabase(async (db) =>
    Object.fromEntries(await Promise.all(db.tables.map(async (table) => [table.name, await table.toArray()] as const))),
  );
  if (read.kind !== 'ok') throw new Error(read.kind);
  const { device: _device, blocks: _blocks, ...rest } = read.value;
  return rest;
}

async function aTeam() {
  const made = coach();
  const { team } = made;
  for (const each of [golfer('p1', 'Wren'), golfer('p2', 'Sorrel')]) await takeInFile(team, work, fileOf(each));
  const group = saved(await saveGroup(team, { id: null, name: ' Varsity\u202e ', playerIds: ['p2', 'p1', 'p2'] }));
  saved(await noteLooked(team, 'p1', [{ clubId: 'i7', swing: 'full', stock_m: 140 }]));
  const draft = { note: 'Slow.', task: null, swing: null, roundId: null };
  saved(await reviewPlayers(team, draft, [{ playerId: 'p1', clubId: 'i7' }]));
  return { ...made, group };
}

test('a deletion that is taken back leaves all as it was', async () => {
  const { team } = await aTeam();
  const before = await dump(team);
  const deleted = saved(await deleteMember(team, 'p1'));
  expect(JSON.stringify(await dump(team))).not.toMatch(/"p1"|Wren|Slow/);
  saved(await bringBack(team, deleted));
  expect(await dump(team)).toEqual(before);
  expect(await takeInFile(team, work, fileOf(golfer('p1', 'Wren')))).toMatchObject([{ kind: 'read' }]);
  expect(refused(await deleteMember(team, 'nobody'))).toEqual({ kind: 'gone' });
});

test('a page reckoned for a golfer who was deleted meanwhile is not kept', async () => {
  const { team } = await aTeam();
  const page = {
    asOf: '2026-06-30T20:00:00Z',
    clubs: [],
    numbers: [],
    gaps: [],
    lastOn: null,
    shots: 0,
    scoring: null,
  };
  saved(await savePage(team, 'p2', 'one', page));
  saved(await savePage(team, 'p2', 'two', page));
  expect((await dump(team)).pages).toMatchObject([{ key: 'two' }]);
  saved(await deleteMember(team, 'p2'));
  saved(await savePage(team, 'p2', 'three', page));
  expect((await dump(team)).pages).toEqual([]);
});

test('groups and views are kept under clean names, and go', async () => {
  const { team, group } = await aTeam();
  expect((await dump(team)).groups).toEqual([{ id: group, name: 'Varsity', playerIds: ['p1', 'p2'] }]);
  expect(refused(await saveGroup(team, { id: null, name: '  ', playerIds: [] }))).toMatchObject({ path: 'name' });
  saved(await saveView(team, 'Wedges', { show: 'none' }));
  saved(await saveView(team, 'Wedges ', { show: 'gaps' }));
  const { views } = await dump(team);
  expect(views).toMatchObject([{ name: 'Wedges', view: { show: 'gaps' } }]);
  expect(refused(await saveView(team, '', {}))).toMatchObject({ path: 'name' });
  saved(await removeView(team, (views[0] as { id: string }).id));
  saved(await removeGroup(team, group));
  expect(await dump(team)).toMatchObject({ groups: [], views: [] });
});

test('the whole team goes, and the list that is shown follows', async () => {
  const { team } = await aTeam();
  const seen: number[] = [];
  const stop = liveTeam(team.connection).subscribe((live) => {
    if (live.kind === 'ready') seen.push(live.value.members.length);
  });
  await expect.poll(() => seen.at(-1)).toBe(2);
  saved(await deleteTeam(team));
  await expect.poll(() => seen.at(-1)).toBe(0);
  stop();
  expect(await storedTeam(team)).toEqual({ members: [], texts: [] });
  const left = await dump(team);
  expect(Object.values(left).flat()).toHaveLength(1);
});
