import type { Logbook } from '../golf/logbook.ts';
import { foundWords, pathText, REFUSAL_LIMIT, type Refusal } from './refusal.ts';

type Path = readonly PropertyKey[];

/** Collects what repeats: the second record of one key in a list is refused with the place of the first. The first few will do. */
function repeats<T>(list: readonly T[], keyOf: (each: T) => string | number, path: Path, key: string): Refusal[] {
  const places = new Map<string | number, number>();
  const refusals: Refusal[] = [];
  for (const [index, each] of list.entries()) {
    const value = keyOf(each);
    const first = places.get(value);
    if (first === undefined) places.set(value, index);
    else {
      if (refusals.length >= REFUSAL_LIMIT) break;
      refusals.push({
        path: pathText([...path, index, key]),
        expected: `${key === 'id' ? 'an id' : `a ${key}`} of its own`,
        found: `${value}, which ${pathText([...path, first])} has already`,
      });
    }
  }
  return refusals;
}

/**
 * Records of one kind that share an id, holes of one round that share a number and spec periods of one
 * club that share an id.
 */
export function repeatRefusals(logbook: Logbook, prefix: Path): Refusal[] {
  const refusals: Refusal[] = [];
  const idOf = (record: { readonly id: string }): string => record.id;
  refusals.push(...repeats(logbook.clubs, idOf, [...prefix, 'clubs'], 'id'));
  for (const [index, club] of logbook.clubs.entries()) {
    refusals.push(...repeats(club.specPeriods, idOf, [...prefix, 'clubs', index, 'specPeriods'], 'id'));
  }
  refusals.push(...repeats(logbook.rounds, idOf, [...prefix, 'rounds'], 'id'));
  for (const [index, round] of logbook.rounds.entries()) {
    const path = [...prefix, 'rounds', index, 'holes'];
    refusals.push(...repeats(round.holes, (hole) => hole.number, path, 'number'));
  }
  refusals.push(...repeats(logbook.shots, idOf, [...prefix, 'shots'], 'id'));
  refusals.push(...repeats(logbook.reviews, idOf, [...prefix, 'reviews'], 'id'));
  refusals.push(...repeats(logbook.done, (done) => done.reviewId, [...prefix, 'done'], 'reviewId'));
  refusals.push(...repeats(logbook.deleted, (dead) => `${dead.of} ${dead.id}`, [...prefix, 'deleted'], 'id'));
  return refusals;
}

/**
 * Ids that lead nowhere: the club, spec period and round of a shot, the bag of a round and the club of
 * a putt must be records of the file or stand among its deleted ones. A spec period must belong to the
 * club of its shot, unless that club was deleted.
 */
export function referenceRefusals(logbook: Logbook, prefix: Path): Refusal[] {
  const refusals: Refusal[] = [];
  const specs = new Map(logbook.clubs.map((club) => [club.id, new Set(club.specPeriods.map((spec) => spec.id))]));
  const rounds = new Set(logbook.rounds.map((round) => round.id));
  const deletedClubs = new Set<string>();
  const deletedRounds = new Set<string>();
  for (const dead of logbook.deleted) {
    if (dead.of === 'club') deletedClubs.add(dead.id);
    if (dead.of === 'round') deletedRounds.add(dead.id);
  }
  const refuse = (path: Path, expected: string, found: string): void => {
    if (refusals.length >= REFUSAL_LIMIT) return;
    refusals.push({ path: pathText([...prefix, ...path]), expected, found: foundWords(found) });
  };
  const knowsClub = (id: string): boolean => specs.has(id) || deletedClubs.has(id);

  for (const [r, round] of logbook.rounds.entries()) {
    for (const [b, clubId] of round.bag.entries()) {
      if (!knowsClub(clubId)) refuse(['rounds', r, 'bag', b], 'the id of a club of this file', clubId);
    }
    for (const [h, hole] of round.holes.entries()) {
      for (const [p, putt] of hole.putts.entries()) {
        if (putt.clubId !== null && !knowsClub(putt.clubId)) {
          refuse(['rounds', r, 'holes', h, 'putts', p, 'clubId'], 'the id of a club of this file or null', putt.clubId);
        }
      }
    }
  }
  for (const [s, shot] of logbook.shots.entries()) {
    if (!rounds.has(shot.roundId) && !deletedRounds.has(shot.roundId)) {
      refuse(['shots', s, 'roundId'], 'the id of a round of this file', shot.roundId);
    }
    if (shot.clubId !== null && !knowsClub(shot.clubId)) {
      refuse(['shots', s, 'clubId'], 'the id of a club of this file or null', shot.clubId);
    } else if (shot.specId !== null) {
      if (shot.clubId === null) refuse(['shots', s, 'specId'], 'null, as the shot names no club', shot.specId);
      else if (!specs.get(shot.clubId)?.has(shot.specId) && !deletedClubs.has(shot.clubId)) {
        refuse(['shots', s, 'specId'], `the id of a spec period of club ${shot.clubId} or null`, shot.specId);
      }
    }
  }
  return refusals;
}
