import { markedPlaces } from '../../../golf/markChain.ts';
import { intentField, type KnownBy, type Tag, tagField } from '../../../golf/shot.ts';
import type { ShotChanges, ShotEntry } from '../../../golf/shotEntry.ts';
import { NOTE_LIMIT } from '../../../golf/text.ts';
import { shotWords } from '../../words/shot.ts';
import { markFace } from '../marks/MarkKey.tsx';
import type { Marking } from '../marks/useMarking.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';
import css from './MorePad.module.css';
import type { Slot } from './slots.ts';

/** The ways a golfer can know a distance to the flag, the usual first. */
const WAYS: readonly KnownBy[] = ['laser', 'paced', 'judged', 'typed'];

/** How the distances of a shot are known; without a laser where none is allowed. */
export function KnownByPad(props: { chosen: KnownBy; hasLaser: boolean; onChoose: (by: KnownBy) => void }) {
  const keys = WAYS.filter((way) => way !== 'laser' || props.hasLaser).map(
    (way): GridKey => ({
      id: way,
      face: shotWords.knownBy[way],
      isPressed: way === props.chosen,
      onPress: () => props.onChoose(way),
    }),
  );
  return <KeyGrid keys={keys} columns={2} />;
}

interface Props {
  readonly entry: ShotEntry;
  readonly onNote: (changes: ShotChanges) => void;
  readonly onOpen: (slot: Slot) => void;
  /** How places are marked by satellite; null: not here. */
  readonly marking: Marking | null;
}

/** What is seldom said of a shot: its intent, what was special about the lie, where it was aimed, a note. */
export function MorePad({ entry, onNote, onOpen, marking }: Props) {
  const intents = intentField.options.map(
    (intent): GridKey => ({
      id: intent,
      face: shotWords.intents[intent],
      isPressed: entry.intent === intent,
      onPress: () => onNote({ intent }),
    }),
  );
  const tagged = (tag: Tag) => entry.tags.includes(tag);
  const tags = tagField.options.map(
    (tag): GridKey => ({
      id: tag,
      face: shotWords.tags[tag],
      isPressed: tagged(tag),
      onPress: () => onNote({ tags: tagged(tag) ? entry.tags.filter((other) => other !== tag) : [...entry.tags, tag] }),
    }),
  );
  const marks = marking ? markedPlaces.map((place): GridKey => ({ id: place, ...markFace(marking, place) })) : [];
  const { keys } = shotWords;
  return (
    <KeyGrid
      columns={4}
      keys={[
        ...intents,
        ...tags.slice(0, 4),
        { id: 'aim', face: keys.aim, look: 'quiet', onPress: () => onOpen('aim') },
        { id: 'note', face: keys.note, look: 'quiet', onPress: () => onOpen('note') },
        ...tags.slice(4),
        ...marks,
        { id: 'swing', face: keys.swing, look: 'quiet', onPress: () => onOpen('swing') },
      ]}
    />
  );
}

/** A note on the shot, typed. */
export function NotePad({ note, onNote }: { note: string; onNote: (note: string) => void }) {
  return (
    <textarea
      class={css.note}
      aria-label={shotWords.question.note}
      maxLength={NOTE_LIMIT}
      value={note}
      onInput={(event) => onNote(event.currentTarget.value)}
    />
  );
}
