import type { MarkedPlace } from '../../../golf/markChain.ts';
import { marksWords as words } from '../../words/marks.ts';
import { Key } from '../shot/Key.tsx';
import type { Marking } from './useMarking.ts';

interface Props {
  readonly marking: Marking;
  readonly place: MarkedPlace;
  readonly isMarked: boolean;
}

/** The key that marks one place: dashed while there is no fix, filled once the place is marked. */
export function MarkKey({ marking, place, isMarked }: Props) {
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
