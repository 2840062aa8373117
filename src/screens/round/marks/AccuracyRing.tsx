import type { Metres } from '../../../units/metres.ts';
import { type DistanceUnit, distanceWithUnit } from '../../distance.ts';
import { lengthIn } from '../../lengthIn.ts';
import { marksWords as words } from '../../words/marks.ts';
import css from './AccuracyRing.module.css';

/** Half the side of the patch of ground that is drawn, in metres, from the closest look to the widest. */
const HALF_SIDES_M = [10, 20, 40, 80, 160] as const;

/** The patch that shows a ring of this radius whole. */
function halfSideFor(radius: number): number {
  return HALF_SIDES_M.find((half) => radius <= half * 0.9) ?? HALF_SIDES_M[HALF_SIDES_M.length - 1];
}

interface Props {
  /** The radius that holds the place with 95 % confidence. */
  readonly radius_m: Metres;
  readonly unit: DistanceUnit;
}

/** A patch of ground to scale, ruled like graph paper: where the phone may be, and a bar to measure it by. */
export function AccuracyRing({ radius_m, unit }: Props) {
  const half = halfSideFor(radius_m);
  const scale = 50 / half;
  // A round length between a fifth and a half of the picture.
  const bar = lengthIn(half / 2, unit);
  const step = bar * scale;
  const lines = Array.from(
    { length: Math.floor(50 / step) * 2 + 1 },
    (_, i) => 50 + (i - Math.floor(50 / step)) * step,
  );
  return (
    <svg class={css.ring} viewBox="0 0 100 100" role="img" aria-label={words.ring(distanceWithUnit(radius_m, unit))}>
      {lines.map((at) => (
        <path key={at} class={css.grid} d={`M${at} 0V100M0 ${at}H100`} />
      ))}
      <circle class={css.within} cx="50" cy="50" r={Math.min(49, radius_m * scale).toFixed(2)} />
      <path class={css.here} d="M50 44V56M44 50H56" />
      <path class={css.bar} d={`M4 94V97H${(4 + step).toFixed(2)}V94`} />
    </svg>
  );
}
