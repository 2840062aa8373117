import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { figure as spell } from '../../words.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';
import { padRoom } from './padRoom.ts';
import { puttLengths } from './puttLength.ts';

interface Props {
  /** Putts noted before this one. */
  readonly before: number;
  /** The length chosen for this putt, as spoken; null: none yet. */
  readonly length: number | null;
  readonly unit: DistanceUnit;
  readonly onLength: (figure: number | null) => void;
  /** So many putts in all from here, the last one holed. */
  readonly onHoled: (count: number) => void;
  /** It was missed, and the next one is noted by itself. */
  readonly onMissed: () => void;
  readonly onNotGreen: () => void;
  readonly onOver: (result: 'picked up' | 'conceded') => void;
}

const { keys, putts } = shotWords;

/** The putts of a hole: the first length and how many it took, or only how many, or each one by itself. */
export function PuttPad({ before, length, unit, onLength, onHoled, onMissed, onNotGreen, onOver }: Props) {
  const counts = [1, 2, 3, 4].map(
    (count): GridKey => ({
      id: `count ${count}`,
      face: length === null && before === 0 ? putts.count(count) : putts.countFrom(count, before),
      look: length === null ? 'quiet' : 'plain',
      onPress: () => onHoled(count),
    }),
  );
  const missed: GridKey = { id: 'missed', face: putts.missed, onPress: onMissed };
  const conceded: GridKey = { id: 'conceded', face: keys.conceded, look: 'quiet', onPress: () => onOver('conceded') };
  if (length !== null) {
    const back: GridKey = { id: 'back', face: keys.back, look: 'quiet', onPress: () => onLength(null) };
    return <KeyGrid key="holed" columns={3} keys={[...counts, missed, conceded, back]} />;
  }
  // A row is left for how many putts it took, which may be all that is noted.
  const room = (padRoom.value.rows - 1) * 5;
  const lengths = puttLengths(unit, room).map(
    (figure): GridKey => ({
      id: `${figure}`,
      face: spell(figure),
      look: 'figure',
      onPress: () => onLength(figure),
    }),
  );
  const pickedUp: GridKey = { id: 'picked up', face: keys.pickedUp, look: 'quiet', onPress: () => onOver('picked up') };
  const notGreen: GridKey = { id: 'not green', face: putts.notGreen, look: 'quiet', onPress: onNotGreen };
  const first = lengths.slice(0, room);
  return (
    <KeyGrid
      key="lengths"
      columns={5}
      isMirrored={false}
      keys={[
        ...first,
        ...counts.slice(0, 3),
        ...(before === 0 ? [notGreen] : [conceded]),
        ...lengths.slice(first.length),
        counts[3],
        ...(before === 0 ? [conceded] : []),
        pickedUp,
      ]}
    />
  );
}
