import { expect, test } from 'vitest';
import { saveClaims, startBag } from '../../src/actions/bagChanges.ts';
import { closeRound, reopenRound } from '../../src/actions/closeRound.ts';
import { deleteRound, editRound } from '../../src/actions/editRound.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { restoreFromBin } from '../../src/actions/restoreFromBin.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { clearDraft, saveDraft } from '../../src/actions/saveDraft.ts';
import { setHole } from '../../src/actions/setHole.ts';
import { startRound } from '../../src/actions/startRound.ts';
import { undo } from '../../src/actions/undo.ts';
import { mergeLogbooks } from '../../src/exchange/merge.ts';
import { rememberedStart } from '../../src/golf/newRound.ts';
import { puttsByCount } from '../../src/golf/putts.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import type { Draft } from '../../src/logbook/draft.ts';
import { openRoundId } from '../../src/logbook/roundStore.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { aRound, entry, logbookOf, phone, reading, refused, saved } from './phone.ts';

test('a round starts open, on the day of the phone, with the clubs of the bag and its holes', async () => {
  const keeper = phone().tab();
  const clubs = saved(await startBag(keeper, 'typical'));
  const round = await aRound(keeper, { holes: 9, startHole: 10 });
  expect(round).toMatchObject({ closed: false, startedAt: '2026-06-01T12:00:00.000Z', startHole: 10 });
  expect([...round.bag].sort()).toEqual(clubs.map((club) => club.id).sort());
  expect(round.holes.map((hole) => hole.number)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18]);
  expect(await reading(keeper, openRoundId)).toBe(round.id);
});

test('only one round is played at a time, and a course too long a name for is refused by its slot', async () => {
  const keeper = phone().tab();
  const start = rememberedStart([]);
  expect(refused(await startRound(keeper, { ...start, course: 'x'.repeat(61) }))).toEqual({
    kind: 'not valid',
    path: 'course',
  });
  const round = await aRound(keeper);
  expect(refused(await startRound(keeper, start))).toEqual({ kind: 'round open', roundId: round.id });
  saved(await closeRound(keeper, round.id));
  const next = saved(await startRound(keeper, start));
  expect(refused(await reopenRound(keeper, round.id))).toEqual({ kind: 'round open', roundId: next.id });
});

// Source: R&A and USGA, Rules of Golf (2023), Rule 4.1b(1).
test('a round by the Rules does not start with fifteen clubs; a casual one does', async () => {
  const keeper = phone().tab();
  saved(await startBag(keeper, 'typical'));
  for (const loft of [48, 60]) {
    const form = typicalBag()[11];
    saved(await saveClub(keeper, { ...form, name: `${loft}°`, spec: { ...form.spec, loft_deg: degrees(loft) } }));
  }
  const start = rememberedStart([]);
  expect(refused(await startRound(keeper, { ...start, play: 'rules' }))).toEqual({ kind: 'too many clubs', clubs: 15 });
  expect(saved(await startRound(keeper, { ...start, play: 'casual' })).bag).toHaveLength(15);
});

test('closing makes one record of the shots and lets the draft go; reopening and undo take them apart', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const shots = [saved(await logShot(keeper, round.id, entry(1))), saved(await logShot(keeper, round.id, entry(2)))];
  saved(
    await saveDraft(keeper, { roundId: round.id, hole: 1, shotId: null, slot: 'club', typed: '', entry: entry(3) }),
  );
  const counts = async () =>
    reading(keeper, async (db) => [await db.shots.count(), await db.closedShots.count(), await db.draft.count()]);
  expect(await counts()).toEqual([2, 0, 1]);
  expect(saved(await closeRound(keeper, round.id))).toMatchObject({
    closed: true,
    closedAt: '2026-06-01T12:00:00.000Z',
  });
  expect(await counts()).toEqual([0, 1, 0]);
  expect((await logbookOf(keeper)).shots).toEqual(shots);
  saved(await reopenRound(keeper, round.id));
  expect(await counts()).toEqual([2, 0, 0]);
  expect(await reading(keeper, openRoundId)).toBe(round.id);
  saved(await undo(keeper));
  expect(await counts()).toEqual([0, 1, 0]);
  expect(await reading(keeper, openRoundId)).toBeNull();
  saved(await undo(keeper));
  expect(await counts()).toEqual([2, 0, 0]);
  const back = (await logbookOf(keeper)).shots;
  expect(back).toEqual(shots);
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).shots).toEqual(shots.slice(0, 1));
});

test('undo does not open a round while another is played', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  saved(await closeRound(keeper, round.id));
  const next = await aRound(keeper);
  expect(refused(await undo(keeper))).toEqual({ kind: 'round open', roundId: next.id });
});

test('a round closed twice, or gone, says so', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const closed = saved(await closeRound(keeper, round.id));
  expect(saved(await closeRound(keeper, round.id))).toEqual(closed);
  for (const outcome of [
    await closeRound(keeper, 'no'),
    await reopenRound(keeper, 'no'),
    await deleteRound(keeper, 'no'),
    await editRound(keeper, 'no', {}),
    await setHole(keeper, 'no', 1, {}),
  ]) {
    expect(refused<{ kind: string }>(outcome).kind).toBe('gone');
  }
});

test('a hole takes its putts, and undo takes them back', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  saved(await setHole(keeper, round.id, 2, { putts: puttsByCount(2, null), par: 4 }));
  const stored = (await logbookOf(keeper)).rounds[0];
  expect(stored.holes[1]).toMatchObject({ par: 4, putts: [{ holed: false }, { holed: true }] });
  expect(stored.holes.map((hole) => hole.number)).toEqual(round.holes.map((hole) => hole.number));
  expect(refused(await setHole(keeper, round.id, 2, { strokes: 0 }))).toEqual({ kind: 'not valid', path: 'strokes' });
  expect(
    refused(
      await setHole(keeper, round.id, 2, {
        putts: puttsByCount(2, 'x').map((putt) => ({ ...putt, length_m: metres(900) })),
      }),
    ).kind,
  ).toBe('not valid');
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).rounds[0].holes[1].putts).toEqual([]);
});

test('two phones that noted different holes of one round lose neither when merged', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const before = await logbookOf(keeper);
  saved(await setHole(keeper, round.id, 1, { par: 5 }));
  const mine = await logbookOf(keeper);
  saved(await undo(keeper));
  await reading(keeper, (db) => db.rounds.put(before.rounds[0]));
  saved(await setHole(keeper, round.id, 2, { par: 3 }));
  const theirs = await logbookOf(keeper);
  const merged = mergeLogbooks(mine, theirs);
  expect(merged.rounds[0].holes.slice(0, 3).map((hole) => hole.par)).toEqual([5, 3, null]);
});

test('a deleted round goes to the bin with its shots; undo and bin bring it back whole', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  const shots = [saved(await logShot(keeper, round.id, entry(1))), saved(await logShot(keeper, round.id, entry(2)))];
  const plain = async () => {
    const { rounds, shots: now } = await logbookOf(keeper);
    return [rounds.length, ...now.map((shot) => shot.id)];
  };
  for (const back of ['undo', 'bin']) {
    saved(await deleteRound(keeper, round.id));
    expect(await plain()).toEqual([0]);
    expect((await logbookOf(keeper)).deleted).toHaveLength(3);
    expect(await reading(keeper, openRoundId)).toBeNull();
    if (back === 'undo') saved(await undo(keeper));
    else saved(await restoreFromBin(keeper, (await reading(keeper, (db) => db.bin.toArray()))[0]));
    expect(await plain()).toEqual([1, ...shots.map((shot) => shot.id)]);
    expect((await logbookOf(keeper)).deleted).toEqual([]);
    expect(await reading(keeper, openRoundId)).toBe(round.id);
  }
});

test('a round is edited and the edit taken back', async () => {
  const keeper = phone().tab();
  const round = await aRound(keeper);
  saved(await editRound(keeper, round.id, { tees: 'white' }));
  expect((await logbookOf(keeper)).rounds[0].tees).toBe('white');
  expect(refused(await editRound(keeper, round.id, { date: '2026-13-01' }))).toEqual({
    kind: 'not valid',
    path: 'date',
  });
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).rounds[0].tees).toBe('');
});

test('a half-entered shot survives a reload, and the later one stands', async () => {
  const mine = phone();
  const keeper = mine.tab();
  const draft: Draft = {
    roundId: 'r',
    hole: 3,
    shotId: null,
    slot: 'flag',
    typed: '14',
    entry: entry(2, { lie: 'tee' }),
  };
  saved(await saveDraft(keeper, { ...draft, typed: '1' }));
  saved(await saveDraft(keeper, draft));
  keeper.close();
  expect(await reading(mine.tab(), (db) => db.draft.toArray())).toEqual([{ ...draft, key: 'only' }]);
  saved(await clearDraft(keeper));
  expect(await reading(keeper, (db) => db.draft.count())).toBe(0);
});

test('claims are saved all or none', async () => {
  const keeper = phone().tab();
  const [driver, wood] = saved(await startBag(keeper, 'typical'));
  const claims = [
    { clubId: driver.id, claimed_m: metres(210) },
    { clubId: wood.id, claimed_m: metres(190) },
  ];
  expect(refused(await saveClaims(keeper, [...claims, { clubId: 'no', claimed_m: null }])).kind).toBe('gone');
  const claimed = async () => (await logbookOf(keeper)).clubs.filter((club) => club.claimed_m !== null).length;
  expect(await claimed()).toBe(0);
  saved(await saveClaims(keeper, claims));
  expect(await claimed()).toBe(2);
});
