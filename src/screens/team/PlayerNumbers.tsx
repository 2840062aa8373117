import type { TeamColumn, TeamRow } from '../../book/teamTable.ts';
import { day } from '../day.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { unit } from '../unit.ts';
import { figure } from '../words/figure.ts';
import { teamWords } from '../words/team.ts';
import css from './Team.module.css';
import { changeText, stateText } from './TeamNumberCell.tsx';

const words = teamWords.player;

/** Every number of a golfer, with its spread, its age and what there is to note. */
export function PlayerNumbers({ row, columns }: { readonly row: TeamRow; readonly columns: readonly TeamColumn[] }) {
  const lines = columns.flatMap((column, i) => {
    const cell = row.cells[i];
    return cell.number ? [{ column, cell, number: cell.number }] : [];
  });
  return (
    <section class={css.group} aria-labelledby="numbers">
      <h2 id="numbers">{words.numbers}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reached by keys */}
      <section class={css.scroll} tabIndex={0} aria-label={words.numbers}>
        <table class={css.plain}>
          <thead>
            <tr>
              <th scope="col">{words.number}</th>
              <th scope="col" data-figure>
                {words.carry}
              </th>
              <th scope="col">{words.state}</th>
              <th scope="col" data-figure>
                {words.last}
              </th>
              <th scope="col" data-figure>
                {words.spread}
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map(({ column, cell, number }) => {
              const change = changeText(cell);
              const noted = [stateText(cell), change && teamWords.table.change(change)].filter(Boolean).join(', ');
              return (
                <tr key={column.key}>
                  <th scope="row">{teamWords.column(column.club, column.swing)}</th>
                  <td data-figure>
                    {number.shots === 0 && '~'}
                    <span class={css.figure}>{wholeDistance(number.stock_m, unit.value)}</span> ±{' '}
                    {plusMinus(number.lo80_m, number.hi80_m, unit.value)} · {figure(number.shots)}
                  </td>
                  <td>{noted}</td>
                  <td data-figure>{number.lastOn === null ? '' : day(number.lastOn, row.member.page.asOf)}</td>
                  <td data-figure>
                    {number.next80_m &&
                      words.between(
                        wholeDistance(number.next80_m[0], unit.value),
                        wholeDistance(number.next80_m[1], unit.value),
                      )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </section>
  );
}
