import { describe, expect, test } from 'vitest';
import { clubColumn, columnKey } from '../../src/book/clubColumn.ts';
import { composeBook } from '../../src/book/composeBook.ts';
import { type TeamNumber, type TeamPage, teamPageOf } from '../../src/book/teamPage.ts';
import { sortedRows, type TeamMember, teamTable } from '../../src/book/teamTable.ts';
import { carryDifference, filledYardages, twoBags } from '../../src/book/twoBags.ts';
import type { ClubKind } from '../../src/golf/club.ts';
import { degrees } from '../../src/units/degrees.ts';
import { metres } from '../../src/units/metres.ts';
import { randomNumbers } from '../golfers/randomNumbers.ts';
import { AS_OF, BAG, clubOf, logbookOf, solidShots } from './logbooks.ts';

const club = (clubId: string, kind: ClubKind, name: string, loft: number) => ({
  clubId,
  kind,
  name,
  loft_deg: degrees(loft),
});
const number = (clubId: string, swing: string, stock: number, slots: Partial<TeamNumber> = {}): TeamNumber => ({
  clubId,
  swing,
  stock_m: metres(stock),
  lo80_m: metres(stock - 3),
  hi80_m: metres(stock + 3),
  next80_m: null,
  shots: 10,
  lastOn: '2026-06-20',
  ...slots,
});
const page = (slots: Partial<TeamPage>): TeamPage => ({
  asOf: AS_OF,
  clubs: [club('i7', 'iron', '7 iron', 33), club('w', 'wedge', '56°', 56)],
  numbers: [number('i7', 'full', 140), number('w', '9:00', 60), number('w', 'full', 85)],
  gaps: [],
  lastOn: '2026-06-20',
  shots: 30,
  scoring: null,
  ...slots,
});
const member = (playerId: string, name: string, slots: Partial<TeamPage> = {}): TeamMember => ({
  playerId,
  name,
  page: page(slots),
  looked: null,
});

test('clubs stand in the column of the name they are called by, else of their loft', () => {
  const key = (kind: ClubKind, name: string, loft: number) => columnKey(clubColumn(club('c', kind, name, loft)));
  expect(key('iron', '7 iron', 31)).toBe('iron-7');
  expect(key('iron', '', 33)).toBe('iron-7');
  expect(key('iron', 'lucky', 25)).toBe('iron-5');
  expect(key('wedge', '56°', 55)).toBe('wedge-56');
  expect(key('wedge', 'PW', 45.6)).toBe('wedge-46');
  expect(key('wedge', 'my 2nd', 58)).toBe('wedge-58');
  expect(key('fairway wood', '5 wood', 19)).toBe('fairway-wood-5');
  expect(key('hybrid', '', 22)).toBe('hybrid-4');
  expect(key('driver', 'no. 1', 9)).toBe('driver-0');
});

describe('the table', () => {
  const members = [
    member('a', 'Wren'),
    member('b', 'Sorrel', {
      clubs: [club('x', 'wedge', '', 56.2), club('i7', 'iron', '7', 34)],
      numbers: [
        number('x', '9:00', 58, { shots: 0, lastOn: null }),
        number('i7', 'full', 150, { lastOn: '2026-04-01' }),
      ],
    }),
    member('c', 'Teasel', {
      clubs: [club('i7', 'iron', '7 iron', 33)],
      numbers: [number('i7', 'full', 130, { shots: 3 })],
      lastOn: null,
    }),
  ];
  const table = teamTable(members, AS_OF);
  const at = table.columns.findIndex(({ key }) => key === 'wedge-56_9:00');

  test('says who has no 9:00 number with the 56°, and who has no such club', () => {
    expect(table.columns.map(({ key }) => key)).toEqual(['iron-7_full', 'wedge-56_9:00', 'wedge-56_full']);
    expect(table.rows.map(({ cells }) => cells[at].state)).toEqual(['good', 'missing', 'no club']);
    expect(table.rows.map(({ cells }) => cells[0].state)).toEqual(['good', 'stale', 'thin']);
    expect(table.rows.map(({ missing, stale, thin }) => [missing, stale, thin])).toEqual([
      [0, 0, 0],
      [2, 1, 0],
      [0, 0, 1],
    ]);
    expect(table.rows.map(({ daysSilent }) => daysSilent)).toEqual([10, 10, null]);
    expect(table.rows[1].cells[0].days).toBe(90);
  });

  test('sorts by need, by silence, by carry and by name, ties by id', () => {
    const names = (order: Parameters<typeof sortedRows>[1]) =>
      sortedRows(table.rows, order, 0).map((row) => row.member.name);
    expect(names('name')).toEqual(['Sorrel', 'Teasel', 'Wren']);
    expect(names('need')).toEqual(['Sorrel', 'Teasel', 'Wren']);
    expect(names('silent')).toEqual(['Teasel', 'Sorrel', 'Wren']);
    expect(names('carry')).toEqual(['Sorrel', 'Wren', 'Teasel']);
    const twins = teamTable([member('z', 'Wren'), member('y', 'Wren')], AS_OF).rows;
    expect(sortedRows(twins, 'need', 0).map((row) => row.member.playerId)).toEqual(['y', 'z']);
  });

  test('tells what changed since the last review, for numbers with shots only', () => {
    const looked = {
      at: '2026-06-01T00:00:00Z',
      numbers: [
        { clubId: 'i7', swing: 'full', stock_m: 136 },
        { clubId: 'w', swing: '9:00', stock_m: 61 },
      ],
    };
    const [row] = teamTable([{ ...member('a', 'Wren'), looked }], AS_OF).rows;
    expect(row.cells.map(({ change_m }) => change_m)).toEqual([4, -1, null]);
  });

  test('a phone whose clock runs ahead does not make days negative', () => {
    const [row] = teamTable([member('a', 'Wren', { lastOn: '2031-01-01' })], AS_OF).rows;
    expect(row.daysSilent).toBe(0);
  });
});

test('a page holds the bag as built now, own numbers and gaps worth a word', () => {
  const bent = clubOf('gw', 'wedge', 52, {
    specPeriods: [
      { id: 'old', from: '2026-01-01', loft_deg: 50 },
      { id: 'new', from: '2026-06-25', loft_deg: 52 },
    ],
  });
  const clubs = [...BAG.filter(({ id }) => id !== 'gw'), bent, clubOf('x', 'hybrid', 19, { inBag: false })];
  const shots = [
    ...solidShots('i7', 140, 10),
    ...solidShots('gw', 96, 8, { specId: 'old' }),
    ...solidShots('x', 190, 5),
  ];
  const logbook = logbookOf({ clubs, shots });
  const book = composeBook(logbook, AS_OF);
  const made = teamPageOf(logbook, book);
  expect(made.clubs.map(({ clubId }) => clubId)).not.toContain('pt');
  expect(made.clubs.map(({ clubId }) => clubId)).not.toContain('x');
  expect(made.clubs.find(({ clubId }) => clubId === 'gw')?.loft_deg).toBe(52);
  expect(made.numbers.find(({ clubId, swing }) => clubId === 'gw' && swing === 'full')?.shots).toBe(0);
  expect(made.numbers.find(({ clubId, swing }) => clubId === 'i7' && swing === 'full')).toMatchObject({
    shots: 10,
    lastOn: '2026-06-20',
  });
  expect(made.lastOn).toBe('2026-06-20');
  for (const gap of made.gaps) expect(['overlap', 'wide gap', 'possibly wide']).toContain(gap.verdict);
});

describe('two bags', () => {
  test('the odds of the longer are those of two normal carries drawn many times', () => {
    const [one, two] = [
      number('a', 'full', 150),
      number('b', 'full', 147, { lo80_m: metres(142), hi80_m: metres(152) }),
    ];
    const { m, lo80_m, hi80_m, pLonger } = carryDifference(one, two);
    // An 80 % interval of a normal is ±1.28155 standard deviations. Source: the normal table.
    const numbers = randomNumbers('two bags');
    const draws = Array.from(
      { length: 40_000 },
      () => numbers.normal(150, 3 / 1.28155) - numbers.normal(147, 5 / 1.28155),
    ).sort((a, b) => a - b);
    expect(m).toBe(3);
    expect(pLonger).toBeCloseTo(draws.filter((draw) => draw > 0).length / draws.length, 1.8);
    expect(lo80_m).toBeCloseTo(draws[4000], 0);
    expect(hi80_m).toBeCloseTo(draws[36_000], 0);
    expect(carryDifference(two, one).pLonger).toBeCloseTo(1 - pLonger, 10);
  });

  test('clubs are paired by name, steps told, and each yardage filled by the nearest', () => {
    const other = page({
      clubs: [club('q', 'iron', '7 iron', 30), club('h', 'hybrid', '4 hybrid', 22)],
      numbers: [number('q', 'full', 150), number('h', 'full', 180)],
    });
    const pairs = twoBags(page({}), other);
    expect(
      pairs.map(({ column, swing, first, second }) => [columnKey(column), swing, first !== null, second !== null]),
    ).toEqual([
      ['hybrid-4', 'full', false, true],
      ['iron-7', 'full', true, true],
      ['wedge-56', 'full', true, false],
      ['wedge-56', '9:00', true, false],
    ]);
    expect(pairs[1].difference?.m).toBe(-10);
    expect(pairs[0].difference).toBeNull();
    expect(pairs[1].first?.toNext_m).toBe(55);
    expect(pairs[0].second?.toNext_m).toBe(30);
    const filled = filledYardages(page({}), other, [metres(62), metres(147), metres(300)], metres(12));
    expect(filled.map(({ first, second }) => [first?.number.swing ?? null, second?.club.name ?? null])).toEqual([
      ['9:00', null],
      ['full', '7 iron'],
      [null, null],
    ]);
  });
});
