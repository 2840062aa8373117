import type { TeamCell } from '../../book/teamTable.ts';
import { metres } from '../../units/metres.ts';
import { inUnit, plusMinus, wholeDistance } from '../distance.ts';
import { Hidden } from '../parts/Hidden.tsx';
import { unit } from '../unit.ts';
import { figure } from '../words/figure.ts';
import { teamWords as words } from '../words/team.ts';
import css from './TeamGrid.module.css';

/** A change of a carry with its sign: `+3`, `−2`; null when it is less than one. */
export function changeText(cell: TeamCell): string | null {
  if (cell.change_m === null) return null;
  const change = Math.round(inUnit(metres(cell.change_m), unit.value));
  return change === 0 ? null : `${change > 0 ? '+' : ''}${figure(change)}`;
}

/** What there is to note of a number: how old, how few, none; empty when it is good. */
export function stateText({ state, days }: TeamCell): string {
  return state === 'stale' && days !== null ? words.daysOld(days) : words.state[state];
}

/** A golfer's number in the team's table: carry, ± and shots, and what there is to note of it in words. */
export function TeamNumberCell({ cell }: { readonly cell: TeamCell }) {
  const { number, state } = cell;
  const change = changeText(cell);
  const noted = [stateText(cell), change].filter(Boolean).join(' · ');
  return (
    <span class={css.cell} data-state={state} data-metres={number?.stock_m} data-shots={number?.shots}>
      {number && (
        <>
          <span class={state === 'missing' ? css.borrowed : css.stock}>
            {state === 'missing' && '~'}
            {wholeDistance(number.stock_m, unit.value)}
          </span>
          <span class={css.small}>
            <span aria-hidden="true">± </span>
            <Hidden>{words.table.plusMinus} </Hidden>
            {plusMinus(number.lo80_m, number.hi80_m, unit.value)}
            <span aria-hidden="true"> · {figure(number.shots)}</span>
            <Hidden>, {words.table.shots(number.shots)}</Hidden>
          </span>
        </>
      )}
      {noted && <span class={css.state}>{noted}</span>}
    </span>
  );
}
