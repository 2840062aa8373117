import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { teamWords as words } from '../words/team.ts';
import css from './TeamGrid.module.css';
import { TeamGridRow } from './TeamGridRow.tsx';
import type { SeenTable } from './teamView.ts';

/** Height of a row until one was measured, px. */
const USUAL_ROW = 76;
/** Height first drawn, px: the rest follows a frame later, so that the page answers meanwhile. */
const FIRST_HEIGHT = 160;
/** Rows drawn above and below those in sight. */
const MARGIN = 2;
/** Widths of the columns: the golfer, what wants work, and each number, rem. Fixed, so that a new row moves none. */
const WIDTHS = { name: 9.5, need: 11.5, number: 6.5 };

/** Golfers by numbers on a wide page. Only the rows in sight are drawn: a team of forty has a thousand numbers. */
export function TeamGrid({ seen, names }: { readonly seen: SeenTable; readonly names: ReadonlyMap<string, string> }) {
  const frame = useRef<HTMLDivElement>(null);
  const window = useSignal({ top: 0, height: FIRST_HEIGHT, row: USUAL_ROW });
  const look = (row: number) => {
    const box = frame.current;
    if (!box) return;
    const { scrollTop: top, clientHeight: height } = box;
    const before = window.peek();
    if (top !== before.top || height !== before.height || row !== before.row) window.value = { top, height, row };
  };
  useEffect(() => {
    const soon = requestAnimationFrame(() => {
      const drawn = frame.current?.querySelector<HTMLElement>('tbody tr[data-row]');
      look(drawn?.offsetHeight || USUAL_ROW);
    });
    return () => cancelAnimationFrame(soon);
  }, [seen]);
  const { top, height, row } = window.value;
  const count = seen.rows.length;
  const first = Math.max(0, Math.min(count - 1, Math.floor(top / row) - MARGIN));
  const last = Math.min(count, Math.ceil((top + height) / row) + MARGIN);
  const width = WIDTHS.name + WIDTHS.need + seen.columns.length * WIDTHS.number;
  const gap = (rows: number) =>
    rows > 0 && (
      <tr class={css.gap}>
        <td colSpan={seen.columns.length + 2} style={{ height: `${rows * row}px` }} />
      </tr>
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reached by keys
    <section ref={frame} class={css.frame} tabIndex={0} aria-label={words.table.label} onScroll={() => look(row)}>
      <table class={css.grid} style={{ width: `${width}rem` }} aria-rowcount={count + 1}>
        <colgroup>
          <col style={{ width: `${WIDTHS.name}rem` }} />
          <col style={{ width: `${WIDTHS.need}rem` }} />
        </colgroup>
        <thead>
          <tr>
            <th scope="col">{words.table.name}</th>
            <th scope="col">{words.table.need}</th>
            {seen.columns.map(({ column, at }) => (
              <th key={column.key} scope="col" class={at === seen.asked ? css.asked : undefined}>
                {words.column(column.club, column.swing)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {gap(first)}
          {seen.rows.slice(first, last).map((each, i) => (
            <TeamGridRow
              key={each.member.playerId}
              row={each}
              columns={seen.columns}
              name={names.get(each.member.playerId) ?? ''}
              line={first + i + 2}
            />
          ))}
          {gap(count - last)}
        </tbody>
      </table>
    </section>
  );
}
