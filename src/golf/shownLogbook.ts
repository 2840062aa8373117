import type { Logbook } from './logbook.ts';
import type { Round } from './round.ts';

/** The card that a round by the Rules is played with. */
export interface FrozenCard {
  readonly roundId: string;
  /** The instant that the card is of. */
  readonly at: string;
  /** Short mark of the book at that instant; null when none was taken. */
  readonly hash: string | null;
}

/** The part of a logbook that numbers may be reckoned from, and the instant they are reckoned for. */
export interface ShownLogbook {
  readonly logbook: Logbook;
  readonly asOf: string;
  /** The card of the round by the Rules being played; null: numbers follow the logbook. */
  readonly frozen: FrozenCard | null;
}

/** The instant at which the book of a round by the Rules stopped: as noted, else when the round or its day began. */
function frozenAt(round: Round): string {
  return round.frozenBook?.at ?? round.startedAt ?? `${round.date}T00:00:00.000Z`;
}

/** Whether the book is frozen the same with both states of a round: by the Rules or not, with that bag, at that instant. */
export function sameFreeze(one: Round, other: Round): boolean {
  const freeze = (round: Round) => JSON.stringify([round.play, round.bag, frozenAt(round), round.frozenBook?.hash]);
  return freeze(one) === freeze(other);
}

/**
 * What numbers may be reckoned from now. While a round by the Rules is open this is the logbook as it
 * stood at its start: the round and its shots are not in it, and the clubs are those of its bag, so
 * that no number can depend on the play of the round.
 *
 * Source: R&A and USGA, Rules of Golf (2023), Rule 4.3a, from memory; read conservatively.
 *
 * @param open the round being played; null: none.
 * @param now an instant.
 */
export function shownLogbook(logbook: Logbook, open: Round | null, now: string): ShownLogbook {
  if (open === null || open.closed || open.play !== 'rules') return { logbook, asOf: now, frozen: null };
  const bag = new Set(open.bag);
  const at = frozenAt(open);
  return {
    logbook: {
      ...logbook,
      clubs: bag.size === 0 ? logbook.clubs : logbook.clubs.map((club) => ({ ...club, inBag: bag.has(club.id) })),
      rounds: logbook.rounds.filter((round) => round.id !== open.id),
      shots: logbook.shots.filter((shot) => shot.roundId !== open.id),
    },
    asOf: at,
    frozen: { roundId: open.id, at, hash: open.frozenBook?.hash ?? null },
  };
}

/** Whether two logbooks hold the same records in the same state, told by their stamps; the same numbers follow then. */
export function sameRecords(one: Logbook, other: Logbook): boolean {
  if (one.player.id !== other.player.id || one.player.changedAt !== other.player.changedAt) return false;
  return (['clubs', 'rounds', 'shots', 'reviews'] as const).every((list) => {
    const theirs = other[list];
    const stamps = new Map<string, string>(theirs.map((record) => [record.id, record.changedAt]));
    return one[list].length === theirs.length && one[list].every(({ id, changedAt }) => stamps.get(id) === changedAt);
  });
}

/** The instant of the latest shot that has one; null: none has. */
export function latestShot(logbook: Pick<Logbook, 'shots'>): string | null {
  let latest: string | null = null;
  for (const { at } of logbook.shots) {
    if (at !== null && (latest === null || Date.parse(at) > Date.parse(latest))) latest = at;
  }
  return latest;
}
