import type { TeamColumn, TeamRow } from '../../book/teamTable.ts';
import { day } from '../day.ts';
import { distanceWithUnit, plusMinus, wholeDistance } from '../distance.ts';
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
      <ul class={css.numbers}>
        {lines.map(({ column, cell, number }) => {
          const change = changeText(cell);
          const spread =
            number.next80_m &&
            words.spread(
              wholeDistance(number.next80_m[0], unit.value),
              distanceWithUnit(number.next80_m[1], unit.value),
            );
          return (
            <li key={column.key}>
              <b>{teamWords.column(column.club, column.swing)}</b>
              <span>
                {number.shots === 0 && '~'}
                <span class={css.figure}>{wholeDistance(number.stock_m, unit.value)}</span> ±{' '}
                {plusMinus(number.lo80_m, number.hi80_m, unit.value)} · {figure(number.shots)}
              </span>
              <span class={`${css.quiet} ${css.across}`}>
                {[
                  stateText(cell),
                  change && teamWords.table.change(change),
                  number.lastOn && words.last(day(number.lastOn, row.member.page.asOf)),
                  spread,
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
