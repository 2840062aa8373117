import { effect } from '@preact/signals';
import { expect, test } from 'vitest';
import { putInBag, removeClub, replaceInBag, saveClaims, startBag } from '../../src/actions/bagChanges.ts';
import { closeRound } from '../../src/actions/closeRound.ts';
import { deleteShot } from '../../src/actions/deleteShot.ts';
import { deleteRound, editRound } from '../../src/actions/editRound.ts';
import { editShot } from '../../src/actions/editShot.ts';
import { exportBackup } from '../../src/actions/exportBackup.ts';
import type { Keeper } from '../../src/actions/keeper.ts';
import { loadDemo } from '../../src/actions/loadDemo.ts';
import { logShot } from '../../src/actions/logShot.ts';
import { moveShot } from '../../src/actions/moveShot.ts';
import { restoreBackup } from '../../src/actions/restoreBackup.ts';
import { restoreFromBin } from '../../src/actions/restoreFromBin.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { saveSettings } from '../../src/actions/saveSettings.ts';
import { setHole } from '../../src/actions/setHole.ts';
import { openShelf } from '../../src/actions/shelf.ts';
import { undo } from '../../src/actions/undo.ts';
import { composeBook } from '../../src/book/composeBook.ts';
import type { Club } from '../../src/golf/club.ts';
import type { ClubForm } from '../../src/golf/clubForm.ts';
import { shownLogbook } from '../../src/golf/shownLogbook.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { aRound, entry, logbookOf, phone, reading, refused, saved } from './phone.ts';

/*
 * Source of what is allowed: R&A and USGA, Rules of Golf (2023), Rules 4.1a(2), 4.1a(3), 4.1b, 4.1c and 4.3a,
 * from memory.
 */

const FROZEN = { at: '2026-06-01T12:00:00.000Z', hash: '0f'.repeat(32) };

function formOf(club: Club, changes: Partial<ClubForm> = {}): ClubForm {
  const { id: _id, from: _from, ...spec } = club.specPeriods[club.specPeriods.length - 1];
  return { ...club, spec, ...changes };
}

const newClub = (name: string, inBag: boolean): ClubForm => ({ ...typicalBag()[6], id: null, name, inBag });

/** The numbers on the screen, to the last digit. */
async function shownNumbers(keeper: Keeper): Promise<string> {
  const logbook = await logbookOf(keeper);
  const open = logbook.rounds.find((round) => !round.closed) ?? null;
  const shown = shownLogbook(logbook, open, '2026-06-01T12:00:00.000Z');
  return JSON.stringify(composeBook(shown.logbook, shown.asOf));
}

/** A bag of so many clubs, an earlier round with a shot, and a round by the Rules that is open. */
async function playing(clubs: 13 | 14) {
  const keeper = phone().tab();
  const bag = [...saved(await startBag(keeper, 'typical'))];
  if (clubs === 14) bag.push(saved(await saveClub(keeper, newClub('fourteenth', true))));
  const spare = saved(await saveClub(keeper, newClub('spare', false)));
  const earlier = await aRound(keeper, { date: '2026-05-30' });
  const logged = entry(1, { clubId: bag[6].id, carry: { m: metres(140), by: 'laser', error_m: null } });
  const shot = saved(await logShot(keeper, earlier.id, logged));
  const second = saved(await logShot(keeper, earlier.id, { ...logged, number: 2 }));
  const binned = saved(await logShot(keeper, earlier.id, { ...logged, number: 3 }));
  saved(await deleteShot(keeper, binned));
  saved(await closeRound(keeper, earlier.id));
  saved(await saveClaims(keeper, [{ clubId: bag[3].id, claimed_m: metres(180) }]));
  const round = await aRound(keeper, { play: 'rules', distanceDevices: false, frozenBook: FROZEN });
  return { keeper, bag, spare, earlier, shot, second, binned, round, before: await shownNumbers(keeper) };
}

const held = (why: string) => ({ kind: 'by the Rules', why });

test('undo takes back what was done in the round, and nothing before it that the frozen book rests on', async () => {
  const { keeper, bag, round, before } = await playing(13);
  saved(await logShot(keeper, round.id, entry(1, { clubId: bag[0].id })));
  saved(await undo(keeper));
  expect((await logbookOf(keeper)).shots.filter((shot) => shot.roundId === round.id)).toEqual([]);
  expect(refused(await undo(keeper))).toEqual(held('4.3a'));
  expect(await shownNumbers(keeper)).toBe(before);
  saved(await closeRound(keeper, round.id));
  saved(await undo(keeper));
  expect(refused(await undo(keeper))).toEqual(held('4.3a'));
  saved(await editRound(keeper, round.id, { course: 'Alder Brook (invented)' }));
  saved(await undo(keeper));
});

test('a round by the Rules stays one, with its bag and its freeze, and without distance devices', async () => {
  const { keeper, round, before } = await playing(13);
  for (const changes of [{ play: 'casual' as const }, { bag: ['x'] }, { frozenBook: null }]) {
    expect(refused(await editRound(keeper, round.id, changes))).toEqual(held('4.3a'));
  }
  expect(refused(await editRound(keeper, round.id, { distanceDevices: true }))).toEqual(held('G-5'));
  expect(saved(await editRound(keeper, round.id, { tees: 'back' })).tees).toBe('back');
  expect(saved(await editRound(keeper, round.id, { date: '2026-05-31' })).date).toBe('2026-05-31');
  expect(await shownNumbers(keeper)).toBe(before);
});

test('shots, holes and rounds of earlier days stay as they are, in the bin and out of it', async () => {
  const { keeper, bag, earlier, shot, second, binned, before } = await playing(13);
  const kept = await reading(keeper, (db) => db.bin.get(binned.id));
  if (!kept) throw new Error('the bin is empty');
  const tries = [
    await editShot(keeper, shot, { clubId: bag[2].id }),
    await moveShot(keeper, second, { hole: 1, after: null }),
    await deleteShot(keeper, shot),
    await logShot(keeper, earlier.id, entry(4)),
    await setHole(keeper, earlier.id, 1, { par: 3 }),
    await editRound(keeper, earlier.id, { ball: 'range' }),
    await deleteRound(keeper, earlier.id),
    await restoreFromBin(keeper, kept),
  ];
  for (const outcome of tries) expect(refused<{ kind: string }>(outcome)).toEqual(held('4.3a'));
  expect(await shownNumbers(keeper)).toBe(before);
});

test('builds and claims stay; a carried club is altered by no rule, and out of play is always allowed', async () => {
  const { keeper, bag, spare, before } = await playing(14);
  const bent = formOf(bag[10]);
  const rebuilt = { ...bent, spec: { ...bent.spec, loft_deg: degrees(57) } };
  expect(refused(await saveClub(keeper, rebuilt))).toEqual(held('4.1a(3)'));
  expect(refused(await saveClub(keeper, rebuilt, '2026-05-01'))).toEqual(held('4.1a(3)'));
  expect(refused(await saveClub(keeper, formOf(bag[10], { claimed_m: metres(99) })))).toEqual(held('4.3a'));
  expect(refused(await saveClaims(keeper, [{ clubId: bag[3].id, claimed_m: metres(150) }]))).toEqual(held('4.3a'));
  expect(refused(await putInBag(keeper, spare.id, true))).toEqual(held('4.1b'));
  expect(refused(await saveClub(keeper, newClub('fifteenth', true)))).toEqual(held('4.1b'));
  saved(await putInBag(keeper, bag[13].id, false));
  // Who started with fourteen adds none, be it by undo.
  expect(refused(await putInBag(keeper, bag[13].id, true))).toEqual(held('4.1b'));
  expect(refused(await undo(keeper))).toEqual(held('4.1b'));
  expect(saved(await removeClub(keeper, bag[12].id))).toBe('out of bag');
  saved(await saveClub(keeper, formOf(bag[10], { name: 'my wedge' })));
  expect(await shownNumbers(keeper)).toBe(before);
});

test('started with thirteen one club is added, new or from the shed, and no number follows from it', async () => {
  const one = await playing(13);
  saved(await putInBag(one.keeper, one.spare.id, true));
  expect(refused(await saveClub(one.keeper, newClub('fifteenth', true)))).toEqual(held('4.1b'));
  expect(await shownNumbers(one.keeper)).toBe(one.before);
  saved(await undo(one.keeper));
  const other = await playing(13);
  const added = saved(await saveClub(other.keeper, { ...newClub('new', true), claimed_m: metres(170) }));
  expect(await shownNumbers(other.keeper)).toBe(other.before);
  expect(saved(await removeClub(other.keeper, added.id))).toBe('removed');
});

test('a club damaged, not by abuse, is replaced; otherwise not, and a lost one is none', async () => {
  const { keeper, bag, spare, before } = await playing(14);
  const [driver] = bag;
  expect(refused(await replaceInBag(keeper, driver.id, spare.id, 'damaged by abuse'))).toEqual(held('4.1a(2)'));
  expect(refused(await replaceInBag(keeper, driver.id, spare.id, 'lost'))).toEqual(held('4.1a(2)'));
  expect(refused(await replaceInBag(keeper, driver.id, bag[1].id, 'damaged without abuse'))).toEqual(held('4.1b'));
  saved(await replaceInBag(keeper, driver.id, spare.id, 'damaged without abuse'));
  const { clubs } = await logbookOf(keeper);
  const inBag = clubs.filter((club) => club.inBag).map((club) => club.id);
  expect(inBag).toHaveLength(14);
  expect(inBag).toContain(spare.id);
  expect(inBag).not.toContain(driver.id);
  expect(await shownNumbers(keeper)).toBe(before);
});

test('nothing is restored during the round, and everything after it', async () => {
  const { keeper, round } = await playing(13);
  const backup = await exportBackup(keeper);
  if (backup.kind !== 'ok') throw new Error('not exported');
  for (const how of ['merge', 'replace'] as const) {
    expect(refused(await restoreBackup(keeper, backup.text, how)).kind).toBe('round by the Rules');
  }
  saved(await closeRound(keeper, round.id));
  saved(await restoreBackup(keeper, backup.text, 'merge'));
});

test('settings that would show another book are without effect until the round is over', async () => {
  const mine = phone('mine');
  const shelf = openShelf({ factory: mine.factory, clock: mine.clock, newId: mine.newId });
  const shown: string[] = [];
  const stop = effect(() => {
    shown.push(shelf.shown.value.connection.name);
  });
  const season = await exportBackup(shelf.own);
  if (season.kind !== 'ok') throw new Error('not exported');
  saved(await loadDemo(shelf, season.text));
  await expect.poll(() => shown.at(-1)).toBe('carrybook-demo');
  const round = await aRound(shelf.own, { play: 'rules' });
  await expect.poll(() => shown.at(-1)).toBe('carrybook');
  saved(await saveSettings(shelf.own, { showing: 'demo' }));
  expect(refused(await loadDemo(shelf, season.text)).kind).toBe('round by the Rules');
  expect(shown.at(-1)).toBe('carrybook');
  saved(await closeRound(shelf.own, round.id));
  await expect.poll(() => shown.at(-1)).toBe('carrybook-demo');
  stop();
});
