import { type ChainedChange, type MarkedPlace, marked, markedPlaces, restOfLast } from '../../../golf/markChain.ts';
import { permissions } from '../../../golf/permissions.ts';
import type { Round } from '../../../golf/round.ts';
import type { Measure, Shot } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { type DistanceUnit, distanceWithUnit, plusMinusOfError } from '../../distance.ts';
import { marksWords as words } from '../../words/marks.ts';
import { Key } from '../shot/Key.tsx';
import { AccuracyRing } from './AccuracyRing.tsx';
import { locationWords } from './locationWords.ts';
import css from './MarkBar.module.css';
import { useLocation } from './useLocation.ts';

/** How long the phone shakes when a place is marked, milliseconds. */
const SHAKE_MS = 30;

interface Props {
  readonly round: Round;
  /** The shots of the round as they are logged, without the one that is entered. */
  readonly shots: readonly Shot[];
  /** The shot being entered. */
  readonly entry: ShotEntry;
  readonly unit: DistanceUnit;
  /** The places offered; all three when nothing is said. */
  readonly places?: readonly MarkedPlace[];
  /**
   * A place was marked: the slots of this shot that change, and what it says of the shot before, which is logged
   * already and is to be edited.
   */
  readonly onMark: (place: MarkedPlace, changes: ShotChanges, before: ChainedChange | null) => void;
}

/** What the marks of a shot measured, as far as it may be said. */
function measured({ carry, total }: Pick<ShotEntry, 'carry' | 'total'>, unit: DistanceUnit): string[] {
  const say = (measure: Measure | null, inWords: (distance: string, plusMinus: string) => string) =>
    measure?.by === 'gnss' && measure.error_m !== null
      ? [inWords(distanceWithUnit(measure.m, unit), plusMinusOfError(measure.error_m, unit))]
      : [];
  return [...say(carry, words.carry), ...say(total, words.total)];
}

/**
 * Marks where the ball lies, where it pitched and where it came to rest, with the phone held over the place. One tap
 * each. Distances appear only where they may be worked out during play; in a round by the Rules they follow after it.
 */
export function MarkBar({ round, shots, entry, unit, places = markedPlaces, onMark }: Props) {
  const location = useLocation(round);
  const may = permissions(round);
  if (round.closed) return null;
  if (!may.locating) return <p class={css.says}>{words.notAllowed}</p>;
  const mark = location.kind === 'fix' ? location.mark : null;
  const take = (place: MarkedPlace) => {
    if (!mark) return;
    navigator.vibrate?.(SHAKE_MS);
    const before = place === 'ball' ? restOfLast(shots, entry, mark, may.measuring) : null;
    onMark(place, marked(entry, place, mark, may.measuring), before);
  };
  const isAnyMarked = markedPlaces.some((place) => entry.marks[place] !== null);
  const results = may.measuring ? measured(entry, unit) : isAnyMarked ? [words.later] : [];
  return (
    <section class={css.bar} aria-label={words.title}>
      <div class={css.keys}>
        {mark?.accuracy_m && <AccuracyRing radius_m={mark.accuracy_m} unit={unit} />}
        {places.map((place) => (
          <div class={css.key} key={place}>
            <Key
              isPressed={entry.marks[place] !== null}
              isOff={mark === null}
              {...(entry.marks[place] ? { name: `${words.is[place]}, ${words.again}` } : {})}
              onPress={() => take(place)}
            >
              {entry.marks[place] ? words.is[place] : words.place[place]}
            </Key>
          </div>
        ))}
      </div>
      <p class={css.says} role="status">
        {locationWords(location, unit)} {results.length > 0 && <b>{results.join(' · ')}</b>}
      </p>
    </section>
  );
}
