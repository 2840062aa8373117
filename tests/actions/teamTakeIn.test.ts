import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allowAgain, deleteMember, purgeSeason } from '../../src/actions/careTeam.ts';
import { openTeam } from '../../src/actions/openTeam.ts';
import { takeInFile } from '../../src/actions/takeIn.ts';
import { teamTables } from '../../src/logbook/teamStore.ts';
import { summaryOf, teamPage } from '../../src/worker/teamWork.ts';
import { AS_OF, carried, clubOf, ROUNDS } from '../book/logbooks.ts';
import { saved } from './phone.ts';
import { coach, FIRST_ROUNDS, fileOf, golfer, purge, storedTeam, work } from './teamBooks.ts';

test('a file is read, then taken in again without a change, then changed; the counts say so', async () => {
  const { team } = coach();
  const wren = golfer('p1', 'Wren');
  const [first] = await takeInFile(team, work, fileOf(wren));
  expect(first).toMatchObject({
    kind: 'read',
    name: 'Wren',
    isNew: true,
    report: { shots: { new: 12, changed: 0, same: 0 } },
  });
  const before = await storedTeam(team);
  const [again] = await takeInFile(team, work, fileOf(wren));
  expect(again).toMatchObject({ kind: 'read', isNew: false, report: { shots: { new: 0, changed: 0, same: 12 } } });
  expect(await storedTeam(team)).toEqual(before);
  const shots = wren.shots.map((shot, i) =>
    i === 0 ? { ...shot, note: 'thin', changedAt: '2026-06-21T08:00:00Z' } : shot,
  );
  const [more] = await takeInFile(team, work, fileOf({ ...wren, shots: [...shots, carried('x', 141)] }));
  expect(more).toMatchObject({ report: { shots: { new: 1, changed: 1, same: 11 } } });
  const { members } = await storedTeam(team);
  expect(members).toMatchObject([
    { playerId: 'p1', rounds: 4, shots: 13, firstOn: '2026-05-02', lastOn: '2026-06-20' },
  ]);
});

test('any order of files, and each as often as you like, gives the same team', async () => {
  const wren = golfer('p1', 'Wren');
  const later = { ...wren, player: { ...wren.player, name: 'Wrenna', changedAt: '2026-06-25T08:00:00Z' } };
  const files = [
    fileOf(
      { ...wren, rounds: FIRST_ROUNDS, shots: wren.shots.filter(({ roundId }) => roundId < 'r3') },
      '2026-05-20T20:00:00Z',
    ),
    fileOf({
      ...wren,
      deleted: [{ id: wren.shots[0].id, of: 'shot', at: '2026-06-22T08:00:00Z', device: 'd' }],
      shots: wren.shots.slice(1),
    }),
    fileOf(later, '2026-07-02T20:00:00Z'),
    fileOf(golfer('p2', 'Wren'), '2026-07-01T20:00:00Z'),
    `{"format":"carrybook-team","version":1,"logbooks":[${fileOf(golfer('p3', 'Sorrel'))},${fileOf(golfer('p2', 'Wren'))}]}`,
    summaryOf(golfer('p4', 'Teasel'), AS_OF, 'Teasel'),
    summaryOf(wren, AS_OF, 'Wren'),
  ];
  const teamOf = async (order: readonly number[]) => {
    const { team } = coach();
    for (const i of order) await takeInFile(team, work, files[i]);
    return storedTeam(team);
  };
  const whole = await teamOf(files.map((_, i) => i));
  expect(whole.members.map(({ playerId, name, from }) => [playerId, name, from])).toEqual([
    ['p1', 'Wrenna', 'shots'],
    ['p2', 'Wren', 'shots'],
    ['p3', 'Sorrel', 'shots'],
    ['p4', 'Teasel', 'summary'],
  ]);
  await fc.assert(
    fc.asyncProperty(
      fc.shuffledSubarray(
        files.map((_, i) => i),
        { minLength: files.length },
      ),
      fc.array(fc.nat(files.length - 1), { maxLength: 4 }),
      async (order, more) => {
        expect(await teamOf([...order, ...more])).toEqual(whole);
      },
    ),
    { numRuns: 25 },
  );
});

test('two golfers of one nickname stay two; a second phone that began anew is not mixed in', async () => {
  const { team } = coach();
  await takeInFile(team, work, fileOf(golfer('p1', 'Wren')));
  const [second] = await takeInFile(team, work, fileOf(golfer('p1-second-phone', 'Wren')));
  expect(second).toMatchObject({ kind: 'read', isNew: true });
  expect((await storedTeam(team)).members.map(({ shots }) => shots)).toEqual([12, 12]);
});

test('a renamed club keeps its shots, and its number moves to the column of its new name', async () => {
  const { team } = coach();
  const renamed = clubOf('i7', 'iron', 34, { name: '6 iron', changedAt: '2026-06-21T08:00:00Z' });
  const wren = golfer('p1', 'Wren');
  await takeInFile(team, work, fileOf(wren));
  await takeInFile(
    team,
    work,
    fileOf({ ...wren, clubs: wren.clubs.map((club) => (club.id === 'i7' ? renamed : club)) }),
  );
  const { texts } = await storedTeam(team);
  const page = teamPage(texts[0], AS_OF);
  expect(page.clubs.find(({ clubId }) => clubId === 'i7')?.name).toBe('6 iron');
  expect(page.numbers.find(({ clubId, swing }) => clubId === 'i7' && swing === 'full')?.shots).toBe(12);
});

test('a newer version, a broken book among others and a review file are told, and nothing of them is kept', async () => {
  const { team } = coach();
  const newer = fileOf(golfer('p1', 'Wren')).replace('"version": 1', '"version": 2');
  expect(await takeInFile(team, work, newer)).toMatchObject([{ kind: 'refused', refusals: [{ path: 'version' }] }]);
  const hostile = `{"format":"carrybook","player":{"id":"h","name":"Hemlock"},"__proto__":{"x":1}}`;
  const pair = `{"format":"carrybook-team","version":1,"logbooks":[${hostile},${fileOf(golfer('p3', 'Sorrel'))}]}`;
  const taken = await takeInFile(team, work, pair);
  expect(taken.map(({ kind }) => kind)).toEqual(['read', 'refused']);
  expect(taken[1]).toMatchObject({ name: 'Hemlock', refusals: [{ path: 'logbooks[0].__proto__' }] });
  const review = '{"format":"carrybook-review","version":1,"playerId":"p1","reviews":[]}';
  expect(await takeInFile(team, work, review)).toEqual([{ kind: 'review' }]);
  expect((await takeInFile(team, work, 'CARRYBOOK-SUMMARY 1\nx'))[0]).toMatchObject({ kind: 'refused' });
  expect((await storedTeam(team)).members.map(({ playerId }) => playerId)).toEqual(['p3']);
});

test('a golfer who was deleted stays away until the coach allows them again, and no name stays behind', async () => {
  const { team } = coach();
  await takeInFile(team, work, fileOf(golfer('p1', 'Wren')));
  saved(await deleteMember(team, 'p1'));
  expect(await storedTeam(team)).toEqual({ members: [], texts: [] });
  expect(await takeInFile(team, work, fileOf(golfer('p1', 'Wren')))).toMatchObject([
    { kind: 'blocked', playerId: 'p1' },
  ]);
  const dump = await team.connection.withDatabase(async (db) =>
    JSON.stringify(await Promise.all(db.tables.map((t) => t.toArray()))),
  );
  expect(dump.kind === 'ok' && dump.value).not.toMatch(/Wren|"p1"/);
  saved(await allowAgain(team, 'p1'));
  expect(await takeInFile(team, work, fileOf(golfer('p1', 'Wren')))).toMatchObject([{ kind: 'read', isNew: true }]);
});

test('a purged season does not come back with an old file, for one golfer or for all', async () => {
  const { team } = coach();
  const spring = { from: '2026-05-01', to: '2026-05-31' };
  const [wren, sorrel] = [golfer('p1', 'Wren'), golfer('p3', 'Sorrel')];
  for (const each of [wren, sorrel]) await takeInFile(team, work, fileOf(each));
  expect(saved(await purgeSeason(team, purge, spring, 'p1'))).toBe(2);
  for (const each of [wren, sorrel]) await takeInFile(team, work, fileOf(each, '2026-07-09T20:00:00Z'));
  expect((await storedTeam(team)).members.map(({ rounds, shots }) => [rounds, shots])).toEqual([
    [2, 6],
    [4, 12],
  ]);
  expect((await storedTeam(team)).texts[0].text).not.toContain('2026-05-02');
  expect(saved(await purgeSeason(team, purge, spring, null))).toBe(2);
  await takeInFile(team, work, fileOf(golfer('p9', 'Yarrow')));
  expect((await storedTeam(team)).members.map(({ rounds }) => rounds)).toEqual([2, 2, 2]);
});

test('a summary gives numbers without a shot, a later one replaces it, and shots say more', async () => {
  const { team } = coach();
  const wren = golfer('p1', 'Wren');
  const early = summaryOf({ ...wren, shots: wren.shots.slice(0, 6) }, '2026-06-10T08:00:00Z', 'Wren');
  await takeInFile(team, work, summaryOf(wren, AS_OF, 'Wren'));
  expect(await takeInFile(team, work, early)).toMatchObject([{ kind: 'summary', isNewer: false }]);
  const { texts, members } = await storedTeam(team);
  expect(members).toMatchObject([{ from: 'summary', shots: 12 }]);
  const [ofSummary, ofShots] = [teamPage(texts[0], AS_OF), teamPage({ text: fileOf(wren), summary: '' }, AS_OF)];
  expect(ofSummary.numbers.length).toBe(ofShots.numbers.length);
  for (const number of ofSummary.numbers) {
    const same = ofShots.numbers.find((one) => one.clubId === number.clubId && one.swing === number.swing);
    if (!same) throw new Error(`${number.clubId} ${number.swing} is not in the book`);
    expect(Math.abs(number.stock_m - same.stock_m)).toBeLessThanOrEqual(0.051);
    expect(Math.abs(number.hi80_m - number.lo80_m - (same.hi80_m - same.lo80_m))).toBeLessThanOrEqual(0.11);
    expect([number.shots, number.lastOn]).toEqual([same.shots, same.lastOn]);
  }
  await takeInFile(team, work, fileOf(wren));
  expect((await storedTeam(team)).members).toMatchObject([{ from: 'shots', rounds: 4 }]);
});

test('two tabs that take in one golfer at once lose nothing', async () => {
  const { team, device } = coach();
  const other = openTeam({ factory: device.factory, clock: device.clock, newId: device.newId });
  const wren = golfer('p1', 'Wren');
  const halves = [wren.shots.slice(0, 6), wren.shots.slice(6)].map((shots) => fileOf({ ...wren, shots }));
  await Promise.all([takeInFile(team, work, halves[0]), takeInFile(other, work, halves[1])]);
  expect((await storedTeam(team)).members).toMatchObject([{ shots: 12, rounds: ROUNDS.length }]);
  const stored = await team.connection.withDatabase((db) => teamTables(db).members.count());
  expect(stored).toMatchObject({ value: 1 });
});
