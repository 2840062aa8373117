import type { DistanceUnit } from '../../distance.ts';
import { marksWords as words } from '../../words/marks.ts';
import { AccuracyRing } from './AccuracyRing.tsx';
import { locationWords } from './locationWords.ts';
import css from './MarkBar.module.css';
import type { Marking } from './useMarking.ts';

interface Props {
  readonly marking: Marking;
  readonly unit: DistanceUnit;
}

/**
 * How well the place is known, in words and drawn to scale, and what was marked; or why there is no place and what to do.
 * Nothing before the first mark, when the search has not begun.
 */
export function MarkBar({ marking, unit }: Props) {
  const { location, results } = marking;
  const isOff = location.kind === 'off';
  if (isOff && results.length === 0) return null;
  const radius = location.kind === 'fix' ? location.mark.accuracy_m : null;
  return (
    <section class={css.bar} aria-label={words.title}>
      <div class={css.line}>
        {radius !== null && <AccuracyRing radius_m={radius} unit={unit} />}
        <p class={css.says} role="status">
          {isOff ? '' : locationWords(location, unit)} {results.length > 0 && <b>{results.join(' · ')}</b>}
        </p>
      </div>
    </section>
  );
}
