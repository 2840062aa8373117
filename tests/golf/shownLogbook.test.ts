import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { playerSchema } from '../../src/golf/player.ts';
import { latestShot, sameRecords, shownLogbook } from '../../src/golf/shownLogbook.ts';
import { roundOf, shotOf } from './shotOf.ts';

const NOW = '2026-05-02T12:00:00.000Z';

function clubOf(id: string, slots: Partial<Club> = {}): Club {
  return z.parse(clubSchema, { id, kind: 'iron', specPeriods: [{ id: `${id}a`, loft_deg: 34 }], ...slots });
}

const earlier = roundOf('r0', { date: '2026-05-01', closed: true });
const open = roundOf('r1', {
  play: 'rules',
  startedAt: '2026-05-02T09:12:00.000Z',
  bag: ['c1'],
  frozenBook: { at: '2026-05-02T09:10:00.000Z', hash: '0123456789ab' },
});
const logbook: Logbook = {
  player: z.parse(playerSchema, { id: 'p1' }),
  clubs: [clubOf('c1', { inBag: false }), clubOf('c2')],
  rounds: [earlier, open],
  shots: [shotOf('s0', { roundId: 'r0' }), shotOf('s1'), shotOf('s2')],
  reviews: [],
  done: [],
  deleted: [],
};

describe('while a round by the Rules is open', () => {
  const shown = shownLogbook(logbook, open, NOW);

  test('neither the round nor a shot of it is there, and every earlier one is', () => {
    expect(shown.logbook.rounds).toEqual([earlier]);
    expect(shown.logbook.shots.map(({ id }) => id)).toEqual(['s0']);
  });

  test('the numbers are those of the moment the book was frozen, with its mark', () => {
    expect(shown.asOf).toBe('2026-05-02T09:10:00.000Z');
    expect(shown.frozen).toEqual({ roundId: 'r1', at: '2026-05-02T09:10:00.000Z', hash: '0123456789ab' });
  });

  test('the clubs in the bag are those the round was started with', () => {
    expect(shown.logbook.clubs.filter(({ inBag }) => inBag).map(({ id }) => id)).toEqual(['c1']);
  });

  test('logging, changing or deleting a shot of it changes nothing', () => {
    const more = {
      ...logbook,
      shots: [shotOf('s0', { roundId: 'r0' }), shotOf('s1', { strike: 'fat' }), shotOf('s9')],
    };
    expect(shownLogbook(more, open, '2026-05-02T13:00:00.000Z')).toEqual(shown);
  });

  test('without a frozen book the round’s start counts, else the start of its day', () => {
    expect(shownLogbook(logbook, { ...open, frozenBook: null }, NOW).asOf).toBe('2026-05-02T09:12:00.000Z');
    const bare = shownLogbook(logbook, { ...open, frozenBook: null, startedAt: null }, NOW);
    expect(bare.asOf).toBe('2026-05-02T00:00:00.000Z');
    expect(bare.frozen?.hash).toBeNull();
  });
});

test.each([
  ['no round', null],
  ['a casual round', { ...open, play: 'casual' as const }],
  ['the practice ground', { ...open, play: 'practice ground' as const }],
  ['a round that is over', { ...open, closed: true }],
])('with %s open the numbers follow the logbook of now', (_what, round) => {
  expect(shownLogbook(logbook, round, NOW)).toEqual({ logbook, asOf: NOW, frozen: null });
});

describe('the same records', () => {
  test('in another order and read anew', () => {
    expect(sameRecords(logbook, { ...structuredClone(logbook), shots: [...logbook.shots].reverse() })).toBe(true);
  });

  test.each<[string, Partial<Logbook>]>([
    ['a shot more', { shots: [...logbook.shots, shotOf('s3')] }],
    ['a shot less', { shots: logbook.shots.slice(1) }],
    ['another shot', { shots: [...logbook.shots.slice(1), shotOf('s3')] }],
    ['a club changed', { clubs: [clubOf('c1', { changedAt: NOW }), clubOf('c2')] }],
    ['the golfer changed', { player: { ...logbook.player, changedAt: NOW } }],
    ['another golfer', { player: { ...logbook.player, id: 'p2' } }],
  ])('not with %s', (_what, change) => {
    expect(sameRecords(logbook, { ...logbook, ...change })).toBe(false);
  });
});

test('the latest shot is the last that was hit, whatever its place in the list', () => {
  const at = (id: string, when: string | null) => shotOf(id, { at: when });
  const shots = [
    at('a', '2026-05-01T10:00:00Z'),
    at('b', '2026-05-03T10:00:00.5Z'),
    at('c', null),
    at('d', '2026-05-02T10:00:00Z'),
  ];
  expect(latestShot({ shots })).toBe('2026-05-03T10:00:00.5Z');
  expect(latestShot({ shots: [at('c', null)] })).toBeNull();
});
