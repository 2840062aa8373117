import { expect, test } from 'vitest';
import { backupDue } from '../../../src/screens/more/backupDue.ts';

const over = (closedAt: string | null) => ({ closed: true, closedAt });
const playing = { closed: false, closedAt: null };
const LAST = '2026-05-01T18:00:00.000Z';

test.each([
  ['nothing was played', [], null, '2026-05-02T00:00:00Z', { isDue: false, rounds: 0 }],
  ['a first round is over', [over('2026-05-02T14:00:00Z')], null, '2026-05-02T15:00:00Z', { isDue: true, rounds: 1 }],
  ['the first round is being played', [playing], null, '2026-05-02T15:00:00Z', { isDue: false, rounds: 0 }],
  ['one round since', [over('2026-05-02T14:00:00Z')], LAST, '2026-05-03T00:00:00Z', { isDue: false, rounds: 1 }],
  [
    'two rounds since',
    [over('2026-05-02T14:00:00Z'), over('2026-05-03T14:00:00Z')],
    LAST,
    '2026-05-04T00:00:00Z',
    { isDue: true, rounds: 2 },
  ],
  ['one round, two weeks', [over('2026-05-02T14:00:00Z')], LAST, '2026-05-15T18:00:00Z', { isDue: true, rounds: 1 }],
  ['no round, a year', [over('2026-04-02T14:00:00Z')], LAST, '2027-05-15T18:00:00Z', { isDue: false, rounds: 0 }],
])('%s', (_what, rounds, last, now, expected) => {
  expect(backupDue(rounds, last, now)).toEqual(expected);
});
