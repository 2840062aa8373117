import { useMemo } from 'preact/hooks';
import type { TeamRow } from '../../book/teamTable.ts';
import { addressOf } from '../route.ts';
import { unit } from '../unit.ts';
import { teamWords as words } from '../words/team.ts';
import css from './TeamGrid.module.css';
import { TeamNumberCell } from './TeamNumberCell.tsx';
import type { SeenTable } from './teamView.ts';

interface Props {
  readonly row: TeamRow;
  readonly columns: SeenTable['columns'];
  readonly name: string;
  /** Line of the whole table, the head being 1. */
  readonly line: number;
}

/** One golfer's line. While the table scrolls a line in sight stays as it was drawn. */
export function TeamGridRow({ row, columns, name, line }: Props) {
  const shownUnit = unit.value;
  return useMemo(
    () => (
      <tr data-row aria-rowindex={line}>
        <th scope="row">
          <a class={css.name} href={addressOf('team', 'player', row.member.playerId)}>
            {name}
          </a>
        </th>
        <td>
          <span class={css.cell}>
            <span>{words.table.needs(row.missing, row.stale, row.thin)}</span>
            <span class={css.small}>{words.table.silent(row.daysSilent)}</span>
          </span>
        </td>
        {columns.map(({ column, at }) => (
          <td key={column.key}>
            <TeamNumberCell cell={row.cells[at]} />
          </td>
        ))}
      </tr>
    ),
    [row, columns, name, line, shownUnit],
  );
}
