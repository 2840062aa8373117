import { expect, test } from 'vitest';
import { acceptProposal } from '../../src/actions/acceptProposal.ts';
import { editShot } from '../../src/actions/editShot.ts';
import { reviewFileFor, reviewPlayers } from '../../src/actions/reviewPlayer.ts';
import { saveClub } from '../../src/actions/saveClub.ts';
import { takeReview } from '../../src/actions/takeReview.ts';
import { proposalOf } from '../../src/golf/proposal.ts';
import { typicalBag } from '../../src/golf/typicalBag.ts';
import { readSheet, type SheetLine } from '../../src/screens/team/readSheet.ts';
import { degrees } from '../../src/units/degrees.ts';
import { aRound, logbookOf, phone, refused, saved } from './phone.ts';
import { coach } from './teamBooks.ts';

const CLUBS = [
  { clubId: 'd', kind: 'driver' as const, name: 'Driver', loft_deg: degrees(10.5) },
  { clubId: 'i7', kind: 'iron' as const, name: '7 iron', loft_deg: degrees(33) },
  { clubId: 'w', kind: 'wedge' as const, name: '56°', loft_deg: degrees(56) },
  { clubId: 'pw', kind: 'wedge' as const, name: 'PW', loft_deg: degrees(46) },
];
const shotsOf = (lines: readonly SheetLine[]) => lines.flatMap((line) => (line.kind === 'shot' ? [line.shot] : []));

test('a sheet is read a shot a line, in any order of the slots, in the unit said', () => {
  const typed =
    '1 driver tee 238\n\n1 7i light rough thin\n 3, 56° 9:00 fairway 72 solid\n4 PW full greenside bunker 66m\n5 7 iron 150y';
  // 1 yd = 0.9144 m. Source: International yard and pound agreement, 1959.
  expect(shotsOf(readSheet(typed, CLUBS, 'yards'))).toEqual([
    { hole: 1, clubId: 'd', swing: 'full', lie: 'tee', strike: null, carry_m: expect.closeTo(238 * 0.9144, 9) },
    { hole: 1, clubId: 'i7', swing: 'full', lie: 'light rough', strike: 'thin', carry_m: null },
    { hole: 3, clubId: 'w', swing: '9:00', lie: 'fairway', strike: 'solid', carry_m: expect.closeTo(72 * 0.9144, 9) },
    { hole: 4, clubId: 'pw', swing: 'full', lie: 'greenside bunker', strike: null, carry_m: 66 },
    { hole: 5, clubId: 'i7', swing: 'full', lie: null, strike: null, carry_m: expect.closeTo(150 * 0.9144, 9) },
  ]);
  expect(shotsOf(readSheet('2 d 100', CLUBS, 'metres'))[0].carry_m).toBe(100);
});

test('what is not understood is named with its line, and nothing is guessed', () => {
  const wrong = (typed: string) => readSheet(typed, CLUBS, 'yards').filter(({ kind }) => kind === 'wrong');
  expect(wrong('1 driver\nx 7i\n2 9i 120\n3 7i bog\n3 7i 120 130\n55 7i\n7')).toEqual([
    { kind: 'wrong', line: 2, word: 'x' },
    { kind: 'wrong', line: 3, word: '9i 120' },
    { kind: 'wrong', line: 4, word: 'bog' },
    { kind: 'wrong', line: 5, word: '130' },
    { kind: 'wrong', line: 6, word: '55' },
    { kind: 'wrong', line: 7, word: '7' },
  ]);
});

test('a proposal counts only once the golfer takes it over, and once only', async () => {
  const { team } = coach();
  const player = phone('wren').tab();
  const seven = saved(await saveClub(player, { ...typicalBag()[5], id: null }));
  const { id } = (await logbookOf(player)).player;
  const clubs = [
    { ...CLUBS[1], clubId: seven.id },
    { ...CLUBS[2], clubId: 'lost' },
  ];
  const shots = shotsOf(readSheet('1 7i fairway 150\n1 56 9:00 70\n2 7i 148', clubs, 'yards'));
  const draft = {
    note: '',
    task: null,
    swing: null,
    roundId: null,
    proposal: { date: '2026-05-30', course: 'Larch Hill (invented)', shots },
  };
  const [stored] = saved(await reviewPlayers(team, draft, [{ playerId: id, clubId: null }]));
  saved(await takeReview(player, saved(await reviewFileFor(team, id))));
  expect((await logbookOf(player)).rounds).toEqual([]);
  expect(proposalOf((await logbookOf(player)).reviews[0])?.shots).toHaveLength(3);
  saved(await acceptProposal(player, stored.id));
  const after = await logbookOf(player);
  expect(after.rounds).toMatchObject([{ date: '2026-05-30', play: 'casual', closed: true }]);
  expect(after.rounds[0].holes.map((hole) => hole.number)).toEqual([1, 2]);
  expect(after.shots.map(({ hole, number, clubId }) => [hole, number, clubId])).toEqual([
    [1, 1, seven.id],
    [1, 2, null],
    [2, 1, seven.id],
  ]);
  expect(after.shots[0].carry).toMatchObject({ m: expect.closeTo(150 * 0.9144, 9), by: 'typed' });
  expect(after.done).toMatchObject([{ reviewId: stored.id }]);
  saved(await editShot(player, after.shots[0], { note: 'mine' }));
  saved(await acceptProposal(player, stored.id));
  expect((await logbookOf(player)).shots.map((shot) => shot.note)).toEqual(['mine', '', '']);
  expect(refused(await acceptProposal(player, 'nothing'))).toEqual({ kind: 'gone' });
});

test('nothing is taken over while a round by the Rules is open', async () => {
  const { team } = coach();
  const player = phone('wren').tab();
  const { id } = (await logbookOf(player)).player;
  const shots = shotsOf(readSheet('1 7i 150', CLUBS, 'yards'));
  const draft = {
    note: '',
    task: null,
    swing: null,
    roundId: null,
    proposal: { date: '2026-05-30', course: '', shots },
  };
  const [stored] = saved(await reviewPlayers(team, draft, [{ playerId: id, clubId: null }]));
  saved(await takeReview(player, saved(await reviewFileFor(team, id))));
  await aRound(player, { play: 'rules' });
  expect(refused(await acceptProposal(player, stored.id))).toEqual({ kind: 'round by the Rules' });
});
