import { type Club, type SpecPeriod, specOn } from '../golf/club.ts';
import type { Logbook } from '../golf/logbook.ts';
import { clockHours, type Swing, WEDGE_SWINGS } from '../golf/swing.ts';
import type { Cell } from '../yardages/cell.ts';

/** A cell of the book with the names that the logbook knows it by. */
export interface NamedCell extends Cell {
  readonly clubId: string;
  readonly specId: string;
  /** In the bag, and as the club is built now. */
  readonly current: boolean;
  /** The golfer says that this swing is one of his with the club. */
  readonly played: boolean;
}

/** The cells of one golfer, in bag order, and the way from a shot to its cell. */
export interface BookCells {
  readonly cells: readonly NamedCell[];
  /** Index of a cell, or undefined when the book has none by that name. */
  find(clubId: string, specId: string, swing: Swing): number | undefined;
}

const keyOf = (clubId: string, specId: string, swing: Swing) => `${clubId}|${specId}|${swing}`;

/**
 * Lists the cells that a book answers: every club in the bag as it is built now with a full swing,
 * every wedge with its partial swings too, and any other club, spec period and swing that has shots.
 * Putters have none.
 *
 * @param used the club, spec period and swing of each shot that counts.
 */
export function bookCells(
  logbook: Logbook,
  asOf: string,
  used: readonly { clubId: string; specId: string; swing: Swing }[],
): BookCells {
  const usedSwings = new Map<string, Set<Swing>>();
  for (const { clubId, specId, swing } of used) {
    const key = `${clubId}|${specId}`;
    const swings = usedSwings.get(key);
    if (swings) swings.add(swing);
    else usedSwings.set(key, new Set([swing]));
  }
  const clubs = logbook.clubs
    .filter((club) => club.kind !== 'putter')
    .map((club) => ({ club, now: specOn(club, asOf) }))
    .sort((a, b) => a.now.loft_deg - b.now.loft_deg || (a.club.id < b.club.id ? -1 : 1));
  const cells: NamedCell[] = [];
  let periods = 0;
  clubs.forEach(({ club, now }, clubNumber) => {
    for (const spec of [now, ...club.specPeriods.filter((period) => period.id !== now.id)]) {
      const current = club.inBag && spec === now;
      const swings = swingsOf(club, usedSwings.get(`${club.id}|${spec.id}`), current);
      for (const swing of swings) cells.push(cellOf(club, spec, swing, clubNumber, periods, current));
      if (swings.length > 0) periods++;
    }
  });
  const places = new Map(cells.map((cell, i) => [keyOf(cell.clubId, cell.specId, cell.swing), i]));
  return { cells, find: (clubId, specId, swing) => places.get(keyOf(clubId, specId, swing)) };
}

/** The swing lengths of one club and period that the book answers, longest first. */
function swingsOf(club: Club, used: ReadonlySet<Swing> | undefined, current: boolean): Swing[] {
  const swings = new Set<Swing>(used);
  if (current) {
    swings.add('full');
    if (club.kind === 'wedge') for (const swing of WEDGE_SWINGS) swings.add(swing);
  }
  return [...swings].sort((a, b) => clockHours(b) - clockHours(a));
}

function cellOf(
  club: Club,
  spec: SpecPeriod,
  swing: Swing,
  clubNumber: number,
  period: number,
  current: boolean,
): NamedCell {
  return {
    clubId: club.id,
    specId: spec.id,
    kind: club.kind,
    loft_deg: spec.loft_deg,
    swing,
    club: clubNumber,
    period,
    current,
    played: !club.notPlayed.includes(swing),
  };
}
