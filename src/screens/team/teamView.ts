import { signal } from '@preact/signals';
import {
  type NumberState,
  sortedRows,
  type TeamColumn,
  type TeamOrder,
  type TeamRow,
  type TeamTable,
} from '../../book/teamTable.ts';
import { clockHours } from '../../golf/swing.ts';

/** Which columns stand in the table. */
export const columnSets = ['full', 'wedges', 'one'] as const;
/** Which golfers stand in it. */
export const showings = ['all', 'none', 'weak', 'gaps', 'silent', 'tasks'] as const;
export const orders: readonly TeamOrder[] = ['need', 'name', 'silent', 'carry'];

/** How the coach looks at the table. Every value is a short text, so that a view can be kept as it is. */
export interface TeamView {
  readonly search: string;
  /** Id of a group; empty: everybody. */
  readonly group: string;
  readonly columns: (typeof columnSets)[number];
  /** Key of the one column that is asked about; empty: the first. */
  readonly column: string;
  readonly show: (typeof showings)[number];
  readonly order: TeamOrder;
}

export const usualView: TeamView = { search: '', group: '', columns: 'full', column: '', show: 'all', order: 'need' };

/** How the table is looked at now. */
export const teamView = signal<TeamView>(usualView);

const oneOf = <T extends string>(values: readonly T[], value: string | undefined, otherwise: T): T =>
  values.find((each) => each === value) ?? otherwise;

/** A kept view, whatever an earlier version of the app may have left out of it. */
export function readView(kept: Readonly<Record<string, string>>): TeamView {
  return {
    search: kept.search ?? '',
    group: kept.group ?? '',
    columns: oneOf(columnSets, kept.columns, usualView.columns),
    column: kept.column ?? '',
    show: oneOf(showings, kept.show, usualView.show),
    order: oneOf(orders, kept.order, usualView.order),
  };
}

/** A table as it stands on the screen: which columns, and the rows that are left, in order. */
export interface SeenTable {
  readonly columns: readonly { readonly column: TeamColumn; readonly at: number }[];
  /** Place of the column asked about in the whole table; -1 when the table is empty. */
  readonly asked: number;
  readonly rows: readonly TeamRow[];
}

const noNumber: readonly NumberState[] = ['missing', 'no club'];

/** Nothing logged for so many days is worth a word. Own choice. */
export const SILENT_DAYS = 14;

/** The part of the table that a view shows. @param inGroup golfers of its group; null: everybody. @param names what golfers are called. */
export function seenTable(
  table: TeamTable,
  view: TeamView,
  inGroup: ReadonlySet<string> | null,
  withTasks: ReadonlySet<string>,
  names: ReadonlyMap<string, string>,
): SeenTable {
  const all = table.columns.map((column, at) => ({ column, at }));
  const asked = Math.max(
    table.columns.length > 0 ? 0 : -1,
    table.columns.findIndex(({ key }) => key === view.column),
  );
  const isWedge = ({ column }: (typeof all)[number]) => column.club.kind === 'wedge';
  const chosen = {
    full: all.filter(({ column }) => column.swing === 'full'),
    wedges: all
      .filter(isWedge)
      .sort(
        (a, b) => a.column.club.mark - b.column.club.mark || clockHours(a.column.swing) - clockHours(b.column.swing),
      ),
    one: [],
  }[view.columns];
  // The number asked about always stands in the table, first where it is not among the others.
  const columns = chosen.some(({ at }) => at === asked) ? chosen : [...all.filter(({ at }) => at === asked), ...chosen];
  const search = view.search.trim().toLocaleLowerCase();
  const isShown: Record<TeamView['show'], (row: TeamRow) => boolean> = {
    all: () => true,
    none: (row) => asked >= 0 && noNumber.includes(row.cells[asked].state),
    weak: (row) => row.missing + row.stale + row.thin > 0,
    gaps: (row) => row.wide.length + row.overlaps.length > 0,
    silent: (row) => row.daysSilent === null || row.daysSilent > SILENT_DAYS,
    tasks: (row) => withTasks.has(row.member.playerId),
  };
  const rows = table.rows.filter(
    (row) =>
      (inGroup === null || inGroup.has(row.member.playerId)) &&
      (names.get(row.member.playerId) ?? '').toLocaleLowerCase().includes(search) &&
      isShown[view.show](row),
  );
  return { columns, asked, rows: sortedRows(rows, view.order, asked) };
}
