import type { MarkedPlace } from '../../../golf/markChain.ts';
import { marksWords as words } from '../../words/marks.ts';
import { Key } from '../shot/Key.tsx';
import type { GridKey } from '../shot/KeyGrid.tsx';
import type { Marking } from './useMarking.ts';

/** What a key that marks a place shows and does: dashed while there is no fix, filled once the place is marked. */
export function markFace(marking: Marking, place: MarkedPlace): Omit<GridKey, 'id'> {
  const isMarked = marking.isMarked(place);
  return {
    face: isMarked ? words.is[place] : words.place[place],
    isPressed: isMarked,
    isOff: marking.location.kind !== 'fix' && marking.location.kind !== 'off',
    ...(isMarked ? { name: `${words.is[place]}, ${words.again}` } : {}),
    onPress: () => marking.take(place),
  };
}

/** The key that marks the place that comes next in the order a shot is lived. */
export function MarkKey({ marking }: { readonly marking: Marking }) {
  const { face, ...key } = markFace(marking, marking.next);
  return <Key {...key}>{face}</Key>;
}
