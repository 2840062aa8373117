import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { addressOf } from '../route.ts';
import { teamWords as words } from '../words/team.ts';
import css from './TeamGrid.module.css';
import { TeamNumberCell } from './TeamNumberCell.tsx';
import type { SeenTable } from './teamView.ts';

/** Height of a row until one was measured, px. */
const USUAL_ROW = 76;
/** Rows drawn above and below those in sight. */
const MARGIN = 4;

/** Golfers by numbers on a wide page. Only the rows in sight are drawn: a team of forty has a thousand numbers. */
export function TeamGrid({ seen, names }: { readonly seen: SeenTable; readonly names: ReadonlyMap<string, string> }) {
  const frame = useRef<HTMLDivElement>(null);
  const window = useSignal({ top: 0, height: 800, row: USUAL_ROW });
  const measure = () => {
    const box = frame.current;
    if (!box) return;
    const row = box.querySelector<HTMLElement>('tbody tr[data-row]')?.offsetHeight || USUAL_ROW;
    const { top, height, row: before } = window.peek();
    if (box.scrollTop !== top || box.clientHeight !== height || row !== before) {
      window.value = { top: box.scrollTop, height: box.clientHeight, row };
    }
  };
  useLayoutEffect(measure, [seen]);
  const { top, height, row } = window.value;
  const count = seen.rows.length;
  const first = Math.max(0, Math.min(count - 1, Math.floor(top / row) - MARGIN));
  const last = Math.min(count, Math.ceil((top + height) / row) + MARGIN);
  const gap = (rows: number) =>
    rows > 0 && (
      <tr class={css.gap}>
        <td colSpan={seen.columns.length + 2} style={{ height: `${rows * row}px` }} />
      </tr>
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reached by keys
    <section ref={frame} class={css.frame} tabIndex={0} aria-label={words.table.label} onScroll={measure}>
      <table class={css.grid} aria-rowcount={count + 1}>
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
          {seen.rows.slice(first, last).map(({ member, cells, missing, stale, thin, daysSilent }, i) => (
            <tr key={member.playerId} data-row aria-rowindex={first + i + 2}>
              <th scope="row">
                <a class={css.name} href={addressOf('team', 'player', member.playerId)}>
                  {names.get(member.playerId)}
                </a>
              </th>
              <td>
                <span class={css.cell}>
                  <span>{words.table.needs(missing, stale, thin)}</span>
                  <span class={css.small}>{words.table.silent(daysSilent)}</span>
                </span>
              </td>
              {seen.columns.map(({ column, at }) => (
                <td key={column.key}>
                  <TeamNumberCell cell={cells[at]} />
                </td>
              ))}
            </tr>
          ))}
          {gap(count - last)}
        </tbody>
      </table>
    </section>
  );
}
