import { useId } from 'preact/hooks';
import type { BookCell } from '../../book/book.ts';
import type { Metres } from '../../units/metres.ts';
import { type DistanceUnit, distanceWithUnit, inUnit, wholeDistance } from '../distance.ts';
import { figure, words } from '../words.ts';
import { axisTicks } from './axisTicks.ts';
import { type CurvePoint, densityFromQuantiles } from './densityFromQuantiles.ts';
import css from './NextBallPicture.module.css';

/** The picture's own units: it scales to the width it is given. */
const WIDTH = 360;
const HILL_TOP = 34;
const GROUND = 170;
const HEIGHT = 232;
const SIDE = 14;
const POINTS = 121;

/** A shot as a pencil mark under the hill. */
export interface ShotMark {
  readonly carry: Metres;
  readonly isSolid: boolean;
}

interface Props {
  readonly cell: BookCell;
  readonly marks: readonly ShotMark[];
  readonly unit: DistanceUnit;
}

function line(points: readonly CurvePoint[], x: (at: number) => number, y: (density: number) => number): string {
  return points.map(({ at, density }, i) => `${i ? 'L' : 'M'}${x(at).toFixed(1)} ${y(density).toFixed(1)}`).join('');
}

/**
 * The carry of the next ball as a pencilled hill over a scale in the golfer's unit: hatched where 8 balls in 10
 * pitch, solid from p05 to p95 and dashed beyond, where it is drawn and not reckoned. The stock carry is a
 * line with its 80 % interval as a bar under it; each measured shot is a mark on the ground.
 */
export function NextBallPicture({ cell, marks, unit }: Props) {
  const id = useId();
  const quantiles = cell.next_m.map((carry) => inUnit(carry, unit));
  const hill = densityFromQuantiles(quantiles, POINTS);
  const shots = marks.map((mark) => inUnit(mark.carry, unit));
  const low = Math.min(hill[0].at, ...shots);
  const high = Math.max(hill[POINTS - 1].at, ...shots);
  const peak = Math.max(...hill.map((point) => point.density));
  const x = (at: number) => SIDE + ((at - low) / (high - low)) * (WIDTH - 2 * SIDE);
  const y = (density: number) => GROUND - (density / peak) * (GROUND - HILL_TOP);
  const [p05, p10, p90, p95] = [quantiles[0], quantiles[1], quantiles[17], quantiles[18]];
  const between = (from: number, to: number) => hill.filter(({ at }) => at >= from && at <= to);
  const likely = between(p10, p90);
  const stock = inUnit(cell.stock_m, unit);
  const text = words.number.pictureText(
    distanceWithUnit(cell.next_m[1], unit),
    distanceWithUnit(cell.next_m[17], unit),
    distanceWithUnit(cell.stock_m, unit),
  );
  return (
    <figure class={css.picture}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} fill="none" role="img" aria-label={text}>
        <defs>
          <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(38)">
            <path class={css.hatch} d="M0 0V5" />
          </pattern>
        </defs>
        <path
          class={css.likely}
          d={`${line(likely, x, y)}L${x(likely[likely.length - 1].at).toFixed(1)} ${GROUND}L${x(likely[0].at).toFixed(1)} ${GROUND}Z`}
          fill={`url(#${id})`}
        />
        <path
          class={css.tail}
          d={line(
            hill.filter(({ at }) => at <= p05),
            x,
            y,
          )}
        />
        <path
          class={css.tail}
          d={line(
            hill.filter(({ at }) => at >= p95),
            x,
            y,
          )}
        />
        <path class={css.hill} d={line(between(p05, p95), x, y)} />
        <path class={css.ground} d={`M${SIDE} ${GROUND}H${WIDTH - SIDE}`} />
        {marks.map((mark, i) => (
          <path
            key={i}
            class={mark.isSolid ? css.solid : css.mishit}
            d={`M${x(shots[i]).toFixed(1)} ${GROUND + 3}l${mark.isSolid ? 0 : -3} 11`}
          />
        ))}
        <path
          class={css.sure}
          d={`M${x(inUnit(cell.lo80_m, unit)).toFixed(1)} ${GROUND + 22}H${x(inUnit(cell.hi80_m, unit)).toFixed(1)}`}
        />
        <path class={css.stock} d={`M${x(stock).toFixed(1)} ${HILL_TOP - 8}V${GROUND + 22}`} />
        <text class={css.figure} x={Math.min(Math.max(x(stock), SIDE + 22), WIDTH - SIDE - 22)} y={HILL_TOP - 14}>
          {wholeDistance(cell.stock_m, unit)}
        </text>
        {axisTicks(low, high, 5).map((tick) => (
          <g key={tick}>
            <path class={css.tick} d={`M${x(tick).toFixed(1)} ${GROUND + 28}v6`} />
            <text class={css.scale} x={x(tick)} y={HEIGHT - 8}>
              {figure(tick)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        {words.number.pictureKey} {marks.length > 0 && words.number.marksKey}
      </figcaption>
    </figure>
  );
}
