import type { DistanceUnit } from '../../distance.ts';
import { shotWords } from '../../words/shot.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';
import { tensKeys, unitKeys } from './numberKeys.ts';
import { padRoom } from './padRoom.ts';
import type { NumberSlot } from './slots.ts';
import { isDistance } from './spokenDistance.ts';

interface Props {
  readonly slot: NumberSlot;
  readonly typed: string;
  readonly unit: DistanceUnit;
  /** Digits so far; none yet: the tens were chosen. */
  readonly onType: (typed: string) => void;
  readonly onEnter: (typed: string) => void;
  /** For a flag that nobody measures: a chip. */
  readonly onChip: () => void;
}

/** A distance in two taps: first its tens, then the number itself. Digits of a keyboard do as well. */
export function NumberPad({ slot, typed, unit, onType, onEnter, onChip }: Props) {
  if (typed === '') {
    const tens = tensKeys(slot === 'flag' ? 'flag' : 'shot', padRoom.value.rows).map(
      (tens): GridKey => ({
        id: `${tens}`,
        face: `${tens}`,
        look: 'figure',
        onPress: () => onType(`${tens / 10}`),
      }),
    );
    const chip: GridKey = {
      id: 'chip',
      face: shotWords.keys.chip,
      look: 'quiet',
      onPress: onChip,
    };
    const likely = padRoom.value.rows * (padRoom.value.isNarrow ? 4 : 5) - 2;
    const keys = slot === 'flag' ? [...tens.slice(0, likely), chip, ...tens.slice(likely)] : tens;
    return <KeyGrid key="tens" keys={keys} columns={5} isMirrored={false} />;
  }
  const units = unitKeys(typed).map(
    (figure): GridKey => ({ id: figure, face: figure, look: 'figure', onPress: () => onEnter(figure) }),
  );
  const back: GridKey = {
    id: 'back',
    face: shotWords.keys.back,
    look: 'quiet',
    onPress: () => onType(''),
  };
  const enter: GridKey = {
    id: 'enter',
    face: typed,
    name: shotWords.keys.enter(typed),
    look: 'quiet',
    onPress: () => onEnter(typed),
  };
  return (
    <KeyGrid
      key="units"
      keys={[...units, back, ...(isDistance(typed, unit) ? [enter] : [])]}
      columns={5}
      isMirrored={false}
    />
  );
}
