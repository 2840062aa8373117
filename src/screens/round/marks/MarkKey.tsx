import type { MarkedPlace } from '../../../golf/markChain.ts';
import { marksWords as words } from '../../words/marks.ts';
import { Key } from '../shot/Key.tsx';
import type { Marking } from './useMarking.ts';

interface Props {
  readonly marking: Marking;
  /** The place it marks; the next in the order a shot is lived when nothing is said. */
  readonly place?: MarkedPlace;
}

/** The key that marks one place: dashed while there is no fix, filled once the place is marked. */
export function MarkKey({ marking, place = marking.next }: Props) {
  const isMarked = marking.isMarked(place);
  return (
    <Key
      isPressed={isMarked}
      isOff={marking.location.kind !== 'fix' && marking.location.kind !== 'off'}
      {...(isMarked ? { name: `${words.is[place]}, ${words.again}` } : {})}
      onPress={() => marking.take(place)}
    >
      {isMarked ? words.is[place] : words.place[place]}
    </Key>
  );
}
