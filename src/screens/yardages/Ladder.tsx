import type { BookCell } from '../../book/book.ts';
import { axisTicks } from '../charts/axisTicks.ts';
import { type DistanceUnit, inUnit } from '../distance.ts';
import { figure } from '../words.ts';
import css from './Ladder.module.css';

/** The stretch of carries that a column of ladders shows, in the unit on screen, with its round figures. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly unit: DistanceUnit;
}

/** Room for figures over a column of ladders. */
const MOST_TICKS = 3;

/** The scale that holds 8 of the next 10 balls of every cell. `cells` must not be empty. */
export function ladderScale(cells: readonly BookCell[], unit: DistanceUnit): Scale {
  const low = Math.min(...cells.map(({ next_m }) => inUnit(next_m[1], unit)));
  const high = Math.max(...cells.map(({ next_m }) => inUnit(next_m[17], unit)));
  return { low, high, ticks: axisTicks(low, high, MOST_TICKS), unit };
}

function percentAlong(scale: Scale, at: number): string {
  return (((at - scale.low) / (scale.high - scale.low)) * 100).toFixed(2);
}

/** The round figures over a column of ladders. For the eye only. */
export function LadderFigures({ scale }: { readonly scale: Scale }) {
  return (
    <span class={css.figures} aria-hidden="true">
      {scale.ticks.map((tick) => (
        <span key={tick} style={{ left: `${percentAlong(scale, tick)}%` }}>
          {figure(tick)}
        </span>
      ))}
    </span>
  );
}

/** A stretch of the common scale: 8 of the next 10 balls as a thin line, the stock carry as a stroke. For the eye only. */
export function Ladder({ cell, scale }: { readonly cell: BookCell; readonly scale: Scale }) {
  const x = (carry: BookCell['stock_m']) => percentAlong(scale, inUnit(carry, scale.unit));
  return (
    <svg class={css.ladder} viewBox="0 0 100 20" preserveAspectRatio="none" aria-hidden="true">
      {scale.ticks.map((tick) => (
        <path key={tick} class={css.tick} d={`M${percentAlong(scale, tick)} -2V22`} />
      ))}
      <path class={css.next} d={`M${x(cell.next_m[1])} 10H${x(cell.next_m[17])}`} />
      <path class={css.stock} d={`M${x(cell.stock_m)} 5.5V14.5`} />
    </svg>
  );
}
