import { clockHours, type Swing } from '../golf/swing.ts';
import type { Metres } from '../units/metres.ts';
import { byBagOrder, type ClubColumn, clubColumn, columnKey } from './clubColumn.ts';
import type { TeamClub, TeamGap, TeamNumber, TeamPage } from './teamPage.ts';

/** When a number counts as thin or stale. */
export interface Freshness {
  /** Fewer own shots than this are thin. */
  readonly fewShots: number;
  /** A last own shot longer ago than this is stale, days. */
  readonly staleDays: number;
}

/** What holds until a coach has chosen: five shots, six weeks. Own choice. */
export const USUAL_FRESHNESS: Freshness = { fewShots: 5, staleDays: 42 };

/** How far a number can be leaned on. `no club`: nothing of the kind in the bag. `missing`: no own shot. */
export type NumberState = 'no club' | 'missing' | 'thin' | 'stale' | 'good';

/** A golfer's number as it stood when a coach last looked. */
export interface LookedAtNumber {
  readonly clubId: string;
  readonly swing: Swing;
  readonly stock_m: number;
}

/** One golfer of the team, as the table needs them. */
export interface TeamMember {
  readonly playerId: string;
  readonly name: string;
  readonly page: TeamPage;
  /** What the numbers were at the last review; null: never reviewed. */
  readonly looked: { readonly at: string; readonly numbers: readonly LookedAtNumber[] } | null;
}

/** A column: a club of the team's bags at one swing length. */
export interface TeamColumn {
  readonly key: string;
  readonly club: ClubColumn;
  readonly swing: Swing;
}

/** One golfer's number in one column. */
export interface TeamCell {
  readonly state: NumberState;
  readonly number: TeamNumber | null;
  /** What the golfer calls the club; empty without one. */
  readonly club: string;
  /** Days since the last own shot; null: none. */
  readonly days: number | null;
  /** Change of the stock carry since the last review, m; null: nothing to compare with. */
  readonly change_m: number | null;
}

/** One golfer's line. */
export interface TeamRow {
  readonly member: TeamMember;
  /** In the order of the columns. */
  readonly cells: readonly TeamCell[];
  readonly missing: number;
  readonly stale: number;
  readonly thin: number;
  readonly wide: readonly TeamGap[];
  readonly overlaps: readonly TeamGap[];
  /** Days since anything was logged; null: nothing ever. */
  readonly daysSilent: number | null;
}

/** The whole table. */
export interface TeamTable {
  readonly columns: readonly TeamColumn[];
  readonly rows: readonly TeamRow[];
}

/** Whole days from a day to the day of an instant; 0 when it lies ahead (a phone whose clock runs fast). */
function daysSince(day: string | null, asOf: string): number | null {
  return day === null ? null : Math.max(0, Math.round((Date.parse(asOf.slice(0, 10)) - Date.parse(day)) / 86_400_000));
}

/** The clubs of one bag by the column they stand in; worked out once a golfer, since a table has a thousand numbers. */
type ClubsByColumn = ReadonlyMap<string, readonly TeamClub[]>;

function clubsByColumn({ page }: TeamMember): ClubsByColumn {
  const clubs = new Map<string, TeamClub[]>();
  for (const club of page.clubs) {
    const key = columnKey(clubColumn(club));
    const there = clubs.get(key);
    if (there) there.push(club);
    else clubs.set(key, [club]);
  }
  return clubs;
}

function columnsOf(members: readonly TeamMember[]): TeamColumn[] {
  const columns = new Map<string, TeamColumn>();
  for (const { page } of members) {
    const clubs = new Map(page.clubs.map((club) => [club.clubId, clubColumn(club)]));
    for (const { clubId, swing } of page.numbers) {
      const club = clubs.get(clubId);
      if (!club) continue;
      const key = `${columnKey(club)}_${swing}`;
      if (!columns.has(key)) columns.set(key, { key, club, swing });
    }
  }
  return [...columns.values()].sort((a, b) => byBagOrder(a.club, b.club) || clockHours(a.swing) - clockHours(b.swing));
}

function stateOf(number: TeamNumber, days: number | null, { fewShots, staleDays }: Freshness): NumberState {
  if (number.shots === 0) return 'missing';
  if (days !== null && days > staleDays) return 'stale';
  return number.shots < fewShots ? 'thin' : 'good';
}

function cellOf(
  { page, looked }: TeamMember,
  clubs: readonly TeamClub[],
  column: TeamColumn,
  asOf: string,
  freshness: Freshness,
): TeamCell {
  // Of two clubs under one name the one that is played more speaks for both.
  const [found] = clubs
    .map((club) => ({
      club,
      number: page.numbers.find((one) => one.clubId === club.clubId && one.swing === column.swing),
    }))
    .sort((a, b) => (b.number?.shots ?? -1) - (a.number?.shots ?? -1));
  if (!found) return { state: 'no club', number: null, club: '', days: null, change_m: null };
  const { club, number } = found;
  if (!number) return { state: 'missing', number: null, club: club.name, days: null, change_m: null };
  const days = daysSince(number.lastOn, asOf);
  const before = looked?.numbers.find((one) => one.clubId === club.clubId && one.swing === column.swing);
  return {
    state: stateOf(number, days, freshness),
    number,
    club: club.name,
    days,
    change_m: before && number.shots > 0 ? number.stock_m - before.stock_m : null,
  };
}

/**
 * Golfers by clubs and swings, each number with how far it can be leaned on. Columns are the clubs that
 * anybody on the team carries, in bag order.
 *
 * @param asOf instant at which days are counted.
 */
export function teamTable(
  members: readonly TeamMember[],
  asOf: string,
  freshness: Freshness = USUAL_FRESHNESS,
): TeamTable {
  const columns = columnsOf(members);
  const clubKeys = columns.map(({ club }) => columnKey(club));
  const rows = members.map((member): TeamRow => {
    const clubs = clubsByColumn(member);
    const cells = columns.map((column, i) => cellOf(member, clubs.get(clubKeys[i]) ?? [], column, asOf, freshness));
    const count = (state: NumberState) => cells.filter((cell) => cell.state === state).length;
    const { gaps } = member.page;
    return {
      member,
      cells,
      missing: count('missing'),
      stale: count('stale'),
      thin: count('thin'),
      wide: gaps.filter(({ verdict }) => verdict !== 'overlap'),
      overlaps: gaps.filter(({ verdict }) => verdict === 'overlap'),
      daysSilent: daysSince(member.page.lastOn, asOf),
    };
  });
  return { columns, rows };
}

/** Rows by which a coach may sort. `need`: most missing, then stale, then thin numbers first. */
export type TeamOrder = 'name' | 'need' | 'silent' | 'carry';

/**
 * Rows in an order. By `carry` the longest stock carry in a column comes first and those without a number last.
 * Ties go by name and then by id, so that the order never depends on the order of import.
 */
export function sortedRows(rows: readonly TeamRow[], order: TeamOrder, column: number): TeamRow[] {
  const byName = (a: TeamRow, b: TeamRow) =>
    a.member.name < b.member.name
      ? -1
      : a.member.name > b.member.name
        ? 1
        : a.member.playerId < b.member.playerId
          ? -1
          : 1;
  const carry = (row: TeamRow): Metres | 0 =>
    row.cells[column]?.state === 'missing' ? 0 : (row.cells[column]?.number?.stock_m ?? 0);
  const orders: Record<TeamOrder, (a: TeamRow, b: TeamRow) => number> = {
    name: () => 0,
    need: (a, b) => b.missing - a.missing || b.stale - a.stale || b.thin - a.thin,
    silent: (a, b) => (b.daysSilent ?? 1e9) - (a.daysSilent ?? 1e9),
    carry: (a, b) => carry(b) - carry(a),
  };
  return rows.toSorted((a, b) => orders[order](a, b) || byName(a, b));
}
