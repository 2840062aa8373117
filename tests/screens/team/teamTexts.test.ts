import { expect, test } from 'vitest';
import { type TeamMember, teamTable } from '../../../src/book/teamTable.ts';
import { fileStem } from '../../../src/screens/team/fileStem.ts';
import { lastSeason } from '../../../src/screens/team/lastSeason.ts';
import { shownNames } from '../../../src/screens/team/shownNames.ts';
import { teamCsv } from '../../../src/screens/team/teamCsv.ts';
import { readView, seenTable, usualView } from '../../../src/screens/team/teamView.ts';
import { degrees } from '../../../src/units/degrees.ts';
import { metres } from '../../../src/units/metres.ts';

const AS_OF = '2026-06-30T20:00:00Z';

function member(playerId: string, name: string, shots: number, lastOn = '2026-06-28'): TeamMember {
  const club = (clubId: string, kind: 'iron' | 'wedge', called: string, loft: number) => ({
    clubId,
    kind,
    name: called,
    loft_deg: degrees(loft),
  });
  const number = (clubId: string, swing: string, stock: number, own = shots) => ({
    clubId,
    swing,
    stock_m: metres(stock),
    lo80_m: metres(stock - 2),
    hi80_m: metres(stock + 2),
    next80_m: null,
    shots: own,
    lastOn: own === 0 ? null : lastOn,
  });
  return {
    playerId,
    name,
    looked: null,
    page: {
      asOf: AS_OF,
      clubs: [club('i7', 'iron', '7 iron', 33), club('w', 'wedge', '56°', 56)],
      numbers: [number('i7', 'full', 137.16, 20), number('w', '9:00', 64.008), number('w', 'full', 91.44, 20)],
      gaps: [],
      lastOn,
      shots: 40,
      scoring: null,
    },
  };
}

test('golfers of one nickname are told apart, always the same way, and one without a name is called so', () => {
  const members = [
    { playerId: 'b', name: 'Wren' },
    { playerId: 'a', name: 'Wren ' },
    { playerId: 'c', name: '' },
  ];
  const names = shownNames(members);
  expect([...names].sort()).toEqual([
    ['a', 'Wren'],
    ['b', 'Wren (2)'],
    ['c', 'Unnamed'],
  ]);
  expect(shownNames(members.toReversed())).toEqual(names);
});

test('a name of a file says nothing of whose it is unless chosen, and nothing that could be a path', () => {
  expect(fileStem('carrybook', '2026-06-01', '')).toBe('carrybook-2026-06-01');
  expect(fileStem('carrybook', '2026-06-01', '../Wren B.')).toBe('carrybook-Wren-B-2026-06-01');
});

test('the season that was over last', () => {
  expect(lastSeason('2026-06-01')).toEqual({ from: '2024-08-01', to: '2025-07-31' });
  expect(lastSeason('2026-08-01')).toEqual({ from: '2025-08-01', to: '2026-07-31' });
});

const table = teamTable(
  [member('a', 'Wren', 0), member('b', 'Sorrel', 9), member('c', 'Teasel', 9, '2026-03-01')],
  AS_OF,
);
const names = new Map([
  ['a', 'Wren'],
  ['b', 'Sorrel'],
  ['c', 'Teasel'],
]);
const none: ReadonlySet<string> = new Set();
const asked = { ...usualView, column: 'wedge-56_9:00' };
const shown = (changes: object, group: ReadonlySet<string> | null = null, tasks = none) =>
  seenTable(table, { ...asked, ...changes }, group, tasks, names).rows.map((row) => row.member.name);

test('the table answers what is asked', () => {
  expect(shown({ show: 'none' })).toEqual(['Wren']);
  expect(shown({ show: 'silent' })).toEqual(['Teasel']);
  expect(shown({ show: 'tasks' }, null, new Set(['b']))).toEqual(['Sorrel']);
  expect(shown({ search: 'SOR' })).toEqual(['Sorrel']);
  expect(shown({}, new Set(['c', 'b']))).toEqual(['Teasel', 'Sorrel']);
  expect(shown({ order: 'need' })[0]).toBe('Wren');
  expect(shown({ show: 'weak', columns: 'full' })).toEqual(['Wren', 'Teasel']);
  const { columns } = seenTable(table, { ...asked, columns: 'full' }, null, none, names);
  expect(columns.map(({ column }) => column.key)).toEqual(['wedge-56_9:00', 'iron-7_full', 'wedge-56_full']);
  expect(seenTable(teamTable([], AS_OF), asked, null, none, names)).toEqual({ columns: [], asked: -1, rows: [] });
});

test('a view comes back as it was kept, and what is not known in it is as usual', () => {
  const view = { ...usualView, search: 'w', group: 'g', show: 'gaps', order: 'carry', columns: 'wedges' } as const;
  expect(readView(view)).toEqual(view);
  expect(readView({ show: 'hidden', order: '', columns: 'x' })).toEqual(usualView);
});

test('the table file quotes as RFC 4180 says and carries no formula', async () => {
  const odd = new Map([
    ['a', '=1+1'],
    ['b', 'So"rrel, B'],
    ['c', '@Teasel'],
  ]);
  const lines = (await teamCsv(table.columns, table.rows, odd, 'yards')).split('\r\n');
  expect(lines[0]).toBe('golfer,club,swing,carry,low,high,unit,own shots,last shot,to note');
  // 137.16 m are 150 yd, 64.008 m are 70 yd, to the digit. Source: 1 yd = 0.9144 m, 1959.
  expect(lines[1]).toMatch(/^"?'=1\+1"?,7 iron,full,150\.0,147\.8,152\.2,yards,20,2026-06-28,$/);
  expect(lines).toContainEqual(expect.stringMatching(/^"?'=1\+1"?,56°,9:00,70\.0,67\.8,72\.2,yards,0,,no own shot$/));
  expect(lines.filter((line) => line.startsWith('"So""rrel, B",'))).toHaveLength(3);
  for (const line of lines) expect(line).not.toMatch(/^"?[=+\-@\t]/);
});
