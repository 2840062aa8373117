import { type MarkedPlace, markedPlaces } from '../../../golf/markChain.ts';
import { marksWords as words } from '../../words/marks.ts';
import { AccuracyRing } from './AccuracyRing.tsx';
import { locationWords } from './locationWords.ts';
import css from './MarkBar.module.css';
import { MarkKey } from './MarkKey.tsx';
import { type MarkGiven, useMarking } from './useMarking.ts';

interface Props extends MarkGiven {
  /** The places offered; all three when nothing is said. */
  readonly places?: readonly MarkedPlace[];
}

/** The three places of a shot, each with a key, and how well the place is known, in words and drawn to scale. */
export function MarkBar({ places = markedPlaces, ...given }: Props) {
  const marking = useMarking(given);
  const { location, results } = marking;
  if (given.round.closed) return null;
  if (!marking.isAllowed) return <p class={css.says}>{words.notAllowed}</p>;
  const radius = location.kind === 'fix' ? location.mark.accuracy_m : null;
  return (
    <section class={css.bar} aria-label={words.title}>
      <div class={css.keys}>
        {radius !== null && <AccuracyRing radius_m={radius} unit={given.unit} />}
        {places.map((place) => (
          <div class={css.key} key={place}>
            <MarkKey marking={marking} place={place} isMarked={given.entry.marks[place] !== null} />
          </div>
        ))}
      </div>
      <p class={css.says} role="status">
        {locationWords(location, given.unit)} {results.length > 0 && <b>{results.join(' · ')}</b>}
      </p>
    </section>
  );
}
