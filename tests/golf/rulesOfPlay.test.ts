import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { type BagChange, bagChanged, excessClubs } from '../../src/golf/bagInPlay.ts';
import { type Club, clubSchema } from '../../src/golf/club.ts';
import type { Logbook } from '../../src/golf/logbook.ts';
import { permissions } from '../../src/golf/permissions.ts';
import { playerSchema } from '../../src/golf/player.ts';
import type { Round } from '../../src/golf/round.ts';
import { judge, type LookedUp, type PlayEvent, type PlayState, playState } from '../../src/golf/rulesOfPlay.ts';
import type { Shot } from '../../src/golf/shot.ts';
import { shownLogbook } from '../../src/golf/shownLogbook.ts';
import { metres } from '../../src/units/metres.ts';
import { type RandomNumbers, randomNumbers } from '../golfers/randomNumbers.ts';
import { roundOf, shotOf } from './shotOf.ts';

const bagOf = (n: number) => Array.from({ length: n }, (_, i) => `c${i}`);
const rulesRound = (clubs = 14, more: Partial<Round> = {}) =>
  roundOf('open', { play: 'rules', bag: bagOf(clubs), startedAt: '2026-05-02T09:00:00.000Z', ...more });
const playing = (round: Round): PlayState => playState(round, round.bag);
const verdict = (state: PlayState, event: PlayEvent) => {
  const { kind, ...rest } = judge(state, event);
  return kind === 'allowed' ? kind : (rest as { why: string }).why;
};

describe('the clauses, one by one', () => {
  // Rules of Golf (2023), from memory: 4.1b, at most fourteen; who starts with fewer may add up to fourteen.
  test('a round by the Rules starts with fourteen clubs at most, a casual one with any', () => {
    const start = (round: Round, phonesAllowed = true) =>
      verdict({ kind: 'no round' }, { kind: 'start', round, phonesAllowed });
    expect(start(rulesRound(14))).toBe('allowed');
    expect(start(rulesRound(15))).toBe('4.1b');
    expect(start(rulesRound(15, { play: 'casual' }))).toBe('allowed');
    expect(start(rulesRound(14), false)).toBe('phones not allowed');
    expect(verdict(playing(rulesRound()), { kind: 'start', round: rulesRound(), phonesAllowed: true })).toBe(
      'round open',
    );
  });

  test.each<{ carried: number; started: number; change: BagChange; says: string }>([
    { started: 13, carried: 13, change: { kind: 'add', clubId: 'n', from: 'elsewhere' }, says: 'allowed' },
    { started: 14, carried: 14, change: { kind: 'add', clubId: 'n', from: 'elsewhere' }, says: '4.1b' },
    // Who started with fourteen and lost one adds none: a lost club is not a damaged one.
    { started: 14, carried: 13, change: { kind: 'add', clubId: 'n', from: 'elsewhere' }, says: '4.1b' },
    { started: 12, carried: 14, change: { kind: 'add', clubId: 'n', from: 'elsewhere' }, says: '4.1b' },
    { started: 10, carried: 10, change: { kind: 'add', clubId: 'n', from: 'carried parts' }, says: '4.1b' },
    { started: 10, carried: 10, change: { kind: 'add', clubId: 'n', from: 'a player on the course' }, says: '4.1b' },
    // 4.1a(2), from memory: damaged in the round and not by abuse.
    {
      started: 14,
      carried: 14,
      change: { kind: 'repair', clubId: 'c1', harm: 'damaged without abuse' },
      says: 'allowed',
    },
    { started: 14, carried: 14, change: { kind: 'repair', clubId: 'c1', harm: 'damaged by abuse' }, says: '4.1a(2)' },
    {
      started: 14,
      carried: 14,
      change: { kind: 'replace', clubId: 'c1', by: 'n', harm: 'damaged without abuse' },
      says: 'allowed',
    },
    {
      started: 14,
      carried: 14,
      change: { kind: 'replace', clubId: 'c1', by: 'n', harm: 'damaged by abuse' },
      says: '4.1a(2)',
    },
    { started: 14, carried: 14, change: { kind: 'replace', clubId: 'c1', by: 'n', harm: 'lost' }, says: '4.1a(2)' },
    {
      started: 14,
      carried: 14,
      change: { kind: 'replace', clubId: 'c1', by: 'c2', harm: 'damaged without abuse' },
      says: '4.1b',
    },
    { started: 14, carried: 14, change: { kind: 'alter', clubId: 'c1' }, says: '4.1a(3)' },
    { started: 14, carried: 15, change: { kind: 'take out of play', clubId: 'c1' }, says: 'allowed' },
  ])('started with $started, carrying $carried, $change.kind: $says', ({ started, carried, change, says }) => {
    const judged = bagChanged({ startedWith: started, carried: bagOf(carried) }, change);
    expect(judged.kind === 'allowed' ? judged.kind : judged.clause).toBe(says);
    if (judged.kind === 'allowed' && change.kind !== 'take out of play') {
      expect(judged.bag.carried.length).toBeLessThanOrEqual(14);
    }
  });

  test('a replaced club leaves the bag, and a club too many is counted until it does', () => {
    const bag = { startedWith: 14, carried: bagOf(14) };
    const replaced = bagChanged(bag, { kind: 'replace', clubId: 'c1', by: 'n', harm: 'damaged without abuse' });
    if (replaced.kind !== 'allowed') throw new Error('refused');
    expect(replaced.bag.carried).toHaveLength(14);
    expect(replaced.bag.carried).not.toContain('c1');
    expect(excessClubs({ startedWith: 14, carried: bagOf(15) })).toBe(1);
    expect(excessClubs(bag)).toBe(0);
  });

  test('only the card and a number of it are looked up; all else waits for “round over”', () => {
    const looks = (state: PlayState, what: LookedUp) => verdict(state, { kind: 'look up', what });
    const strict = playing(rulesRound());
    for (const what of ['card', 'number'] as const) expect(looks(strict, what)).toBe('allowed');
    for (const what of ['search', 'neighbours', 'day card', 'plan'] as const) {
      expect(looks(strict, what)).toBe('4.3a');
      expect(looks(playing(rulesRound(14, { play: 'casual' })), what)).toBe('allowed');
      expect(looks({ kind: 'no round' }, what)).toBe('allowed');
    }
  });

  test('nothing comes in, nothing goes out, and what the frozen book rests on stays', () => {
    const strict = playing(rulesRound());
    const events: PlayEvent[] = [
      { kind: 'import' },
      { kind: 'share' },
      { kind: 'change evidence' },
      { kind: 'edit', roundId: 'earlier' },
      { kind: 'delete', roundId: 'earlier' },
      { kind: 'undo', of: 'evidence' },
    ];
    for (const event of events) {
      expect(verdict(strict, event), event.kind).toBe('4.3a');
      expect(verdict({ kind: 'no round' }, event), event.kind).toBe('allowed');
    }
    expect(verdict(strict, { kind: 'edit', roundId: 'open' })).toBe('allowed');
    expect(verdict(strict, { kind: 'undo', of: 'open round' })).toBe('allowed');
    expect(verdict(strict, { kind: 'update' })).toBe('own choice');
  });

  test('Local Rule G-5 keeps the receiver off in any round, and so does having no round', () => {
    for (const play of ['rules', 'casual'] as const) {
      expect(verdict(playing(rulesRound(14, { play })), { kind: 'mark' })).toBe('allowed');
      expect(verdict(playing(rulesRound(14, { play, distanceDevices: false })), { kind: 'mark' })).toBe('G-5');
    }
    expect(verdict({ kind: 'no round' }, { kind: 'mark' })).toBe('no round');
    expect(permissions(rulesRound(14, { closed: true })).locating).toBe(false);
  });
});

/** What happens on the phone in the property below: the events of {@link PlayEvent} and what each does to the records. */
interface World {
  logbook: Logbook;
  open: Round | null;
  state: PlayState;
  receiverAsked: number;
}

const NOW = '2026-05-02T12:00:00.000Z';

function club(id: string, loft: number): Club {
  return z.parse(clubSchema, { id, kind: 'iron', name: id, specPeriods: [{ id: `${id}a`, loft_deg: loft }] });
}

function freshWorld(random: RandomNumbers): World {
  const clubs = bagOf(random.whole(10, 16)).map((id, i) => ({ ...club(id, 20 + 2 * i), inBag: i < 14 }));
  const earlier = roundOf('earlier', { closed: true, play: 'casual' });
  const shots = bagOf(random.whole(0, 5)).map((id, i) =>
    shotOf(`e${i}`, { roundId: 'earlier', clubId: id, carry: { m: metres(100 + i), by: 'typed', error_m: null } }),
  );
  const player = z.parse(playerSchema, { id: 'p' });
  const logbook = { player, clubs, rounds: [earlier], shots, reviews: [], done: [], deleted: [] };
  return { logbook, open: null, state: { kind: 'no round' }, receiverAsked: 0 };
}

/** What every number on the screen is reckoned from. Numbers are a function of it, so equal texts are equal numbers. */
function shownText({ logbook, open }: Pick<World, 'logbook' | 'open'>): string {
  return JSON.stringify(shownLogbook(logbook, open, NOW));
}

/** The same logbook with every shot of the open round changed beyond recognition. */
function withOtherShots(logbook: Logbook, roundId: string, random: RandomNumbers): Logbook {
  const others = Array.from({ length: random.whole(0, 3) }, (_, i) =>
    shotOf(`x${i}`, { roundId, clubId: 'c0', carry: { m: metres(random.whole(1, 300)), by: 'typed', error_m: null } }),
  );
  const kept = logbook.shots.filter((shot) => shot.roundId !== roundId);
  return { ...logbook, shots: [...kept, ...others] };
}

const KINDS = [
  'start',
  'log',
  'log',
  'log',
  'edit',
  'edit',
  'undo',
  'delete',
  'close',
  'reopen',
  'reload',
  'import',
  'share',
  'update',
  'change evidence',
  'bag',
  'settings',
  'stoppage',
  'resume',
  'mark',
  'look up',
] as const;

function someEvent(world: World, random: RandomNumbers): PlayEvent {
  const kind = random.choice(KINDS);
  const last = world.logbook.rounds[world.logbook.rounds.length - 1];
  switch (kind) {
    case 'start': {
      const play = random.choice(['rules', 'rules', 'casual', 'practice ground'] as const);
      const bag = world.logbook.clubs.filter(({ inBag }) => inBag).map(({ id }) => id);
      const id = `r${world.logbook.rounds.length}`;
      const round = roundOf(id, {
        play,
        bag,
        distanceDevices: random.chance(0.5),
        startedAt: '2026-05-02T09:00:00.000Z',
      });
      return { kind, round, phonesAllowed: random.chance(0.9) };
    }
    case 'edit':
    case 'delete':
      return { kind, roundId: random.chance(0.6) ? (world.open?.id ?? last.id) : last.id };
    case 'undo':
      return { kind, of: random.choice(['open round', 'evidence'] as const) };
    case 'reopen':
      return { kind, round: random.choice(world.logbook.rounds) };
    case 'look up':
      return { kind, what: random.choice(['card', 'number', 'search', 'neighbours', 'day card', 'plan'] as const) };
    case 'bag': {
      const clubId = random.choice(world.logbook.clubs).id;
      const by = random.choice(world.logbook.clubs).id;
      const harm = random.choice(['damaged without abuse', 'damaged by abuse', 'lost'] as const);
      const change: BagChange = random.choice([
        { kind: 'add', clubId, from: 'elsewhere' },
        { kind: 'take out of play', clubId },
        { kind: 'repair', clubId, harm },
        { kind: 'replace', clubId, by, harm },
      ] as const);
      return { kind, change };
    }
    default:
      return { kind };
  }
}

/** Carries an event that is allowed out on the records, as the actions do. */
function happen(world: World, event: PlayEvent, state: PlayState, random: RandomNumbers): void {
  const { logbook } = world;
  const change = (parts: Partial<Logbook>) => {
    world.logbook = { ...logbook, ...parts };
  };
  const ofRound = (roundId: string) => logbook.shots.filter((shot) => shot.roundId === roundId);
  const longer = (shot: Shot): Shot => ({
    ...shot,
    carry: { m: metres(random.whole(1, 300)), by: 'typed', error_m: null },
  });
  const someShot = (roundId: string) => (ofRound(roundId).length > 0 ? random.choice(ofRound(roundId)) : null);
  switch (event.kind) {
    case 'start':
      change({ rounds: [...logbook.rounds, event.round] });
      world.open = event.round;
      break;
    case 'reopen':
      world.open = { ...event.round, closed: false };
      change({
        rounds: logbook.rounds.map((round) => (round.id === event.round.id ? { ...round, closed: false } : round)),
      });
      break;
    case 'close':
      change({
        rounds: logbook.rounds.map((round) => (round.id === world.open?.id ? { ...round, closed: true } : round)),
      });
      world.open = null;
      break;
    case 'log':
      change({
        shots: [
          ...logbook.shots,
          longer(shotOf(`s${logbook.shots.length}`, { roundId: world.open?.id ?? '', clubId: 'c1' })),
        ],
      });
      break;
    case 'edit': {
      const shot = someShot(event.roundId);
      change({ shots: logbook.shots.map((each) => (each === shot ? longer(each) : each)) });
      break;
    }
    case 'delete': {
      const shot = someShot(event.roundId);
      change({ shots: logbook.shots.filter((each) => each !== shot) });
      break;
    }
    case 'undo': {
      const shot = someShot(event.of === 'open round' ? (world.open?.id ?? '') : 'earlier');
      change({ shots: logbook.shots.filter((each) => each !== shot) });
      break;
    }
    case 'change evidence':
      change({
        clubs: logbook.clubs.map((each, i) => (i === 0 ? { ...each, claimed_m: metres(random.whole(50, 250)) } : each)),
      });
      break;
    case 'import':
      change({ shots: [...logbook.shots, longer(shotOf(`i${logbook.shots.length}`, { roundId: 'earlier' }))] });
      break;
    case 'bag': {
      const carried = state.kind === 'round' && state.round.play === 'rules' ? state.carried : null;
      const { change: made } = event;
      const isIn = ({ id, inBag }: Club): boolean =>
        carried
          ? carried.includes(id)
          : made.kind === 'add' && made.clubId === id
            ? true
            : made.kind === 'take out of play' && made.clubId === id
              ? false
              : inBag;
      change({ clubs: logbook.clubs.map((each) => ({ ...each, inBag: isIn(each) })) });
      break;
    }
    case 'mark':
      world.receiverAsked += 1;
      break;
    case 'reload':
      // All that is known after a reload is what is stored.
      world.open = logbook.rounds.find((round) => round.id === world.open?.id) ?? null;
      break;
    default:
  }
}

const SEQUENCES = process.env.CARRYBOOK_PROVE === '1' ? 100_000 : 10_000;
const EVENTS = 14;

test(`in ${SEQUENCES} random rounds no shown number depends on a shot of the open round, and with G-5 the receiver rests`, () => {
  const random = randomNumbers('rounds by the Rules');
  const seen = { strict: 0, logged: 0, refused: 0, casualDepends: 0, marks: 0, strictDevicesOff: 0 };
  for (let sequence = 0; sequence < SEQUENCES; sequence++) {
    const world = freshWorld(random);
    let frozen: string | null = null;
    for (let step = 0; step < EVENTS; step++) {
      const event = someEvent(world, random);
      const judged = judge(world.state, event);
      const askedBefore = world.receiverAsked;
      if (judged.kind === 'allowed') {
        happen(world, event, judged.state, random);
        world.state =
          event.kind === 'reload'
            ? playState(
                world.open,
                world.logbook.clubs.filter(({ inBag }) => inBag).map(({ id }) => id),
              )
            : judged.state;
      } else seen.refused += 1;

      const { open, state } = world;
      if (open && !open.distanceDevices) {
        if (world.receiverAsked !== askedBefore) throw new Error(`receiver asked with G-5 on: sequence ${sequence}`);
        seen.strictDevicesOff += 1;
      }
      seen.marks += world.receiverAsked - askedBefore;
      if (open?.play !== 'rules') {
        frozen = null;
        if (open && event.kind === 'log') {
          const other = { ...world, logbook: withOtherShots(world.logbook, open.id, random) };
          if (shownText(world) !== shownText(other)) seen.casualDepends += 1;
        }
        continue;
      }
      seen.strict += 1;
      if (event.kind === 'log') seen.logged += 1;
      const shown = shownText(world);
      const other = { ...world, logbook: withOtherShots(world.logbook, open.id, random) };
      if (shown !== shownText(other))
        throw new Error(`sequence ${sequence}, ${event.kind}: a number depends on the round`);
      // Frozen as well: from the first event to the last nothing shown changes at all.
      if (event.kind === 'start' || event.kind === 'reopen' || frozen === null) frozen = shown;
      if (shown !== frozen) throw new Error(`sequence ${sequence}, ${event.kind}: the frozen book changed`);
      if (state.kind === 'round' && state.carried.length > Math.max(14, state.round.bag.length)) {
        throw new Error(`sequence ${sequence}: ${state.carried.length} clubs carried`);
      }
    }
  }
  // The sequences did go where it matters.
  expect(seen.strict).toBeGreaterThan(SEQUENCES);
  expect(seen.logged).toBeGreaterThan(SEQUENCES / 10);
  expect(seen.refused).toBeGreaterThan(SEQUENCES);
  expect(seen.casualDepends).toBeGreaterThan(SEQUENCES / 50);
  expect(seen.marks).toBeGreaterThan(SEQUENCES / 20);
  expect(seen.strictDevicesOff).toBeGreaterThan(SEQUENCES / 2);
}, 600_000);
