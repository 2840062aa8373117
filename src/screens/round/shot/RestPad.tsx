import type { RestLie } from '../../../golf/lie.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { shotWords } from '../../words/shot.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';
import { endedThere, restedAt } from './restedAt.ts';
import type { Slot } from './slots.ts';

interface Props {
  readonly entry: ShotEntry;
  readonly onChoose: (changes: ShotChanges) => void;
  readonly onOpen: (slot: Slot) => void;
}

const likely: readonly RestLie[] = [
  'green',
  'fairway',
  'light rough',
  'heavy rough',
  'fairway bunker',
  'greenside bunker',
];
const seldom: readonly RestLie[] = ['holed', 'bare', 'other'];
const measures = ['total', 'cleared', 'short of', 'carry'] as const;

/** Where the ball came to rest or what became of it, and how far, if that was measured otherwise than by its pitch. */
export function RestPad({ entry, onChoose, onOpen }: Props) {
  const at = (lie: RestLie): GridKey => ({
    id: lie,
    face: shotWords.rests[lie],
    isPressed: entry.restLie === lie,
    onPress: () => onChoose(restedAt(entry, lie)),
  });
  const ended = (outcome: 'penalty area' | 'out of bounds' | 'lost'): GridKey => ({
    id: outcome,
    face: shotWords.ends[outcome],
    isPressed: entry.outcome === outcome,
    onPress: () => onChoose(endedThere(entry, outcome)),
  });
  const distance = (slot: (typeof measures)[number]): GridKey => ({
    id: slot,
    face: shotWords.measures[slot],
    look: 'quiet',
    onPress: () => onOpen(slot),
  });
  return (
    <KeyGrid
      columns={4}
      keys={[
        ...likely.map(at),
        ended('penalty area'),
        ended('lost'),
        ...measures.slice(0, 3).map(distance),
        ended('out of bounds'),
        ...seldom.map(at),
        distance('carry'),
      ]}
    />
  );
}
