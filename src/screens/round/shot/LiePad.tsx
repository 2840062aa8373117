import { penaltyStrokes } from '../../../golf/endedAs.ts';
import { type Lie, lies } from '../../../golf/lie.ts';
import type { Shot } from '../../../golf/shot.ts';
import { shotWords } from '../../words/shot.ts';
import { type GridKey, KeyGrid } from './KeyGrid.tsx';
import type { NextBall } from './nextBall.ts';

interface Props {
  readonly chosen: Lie | null;
  /** The shot before on this hole; null: this is the first, or one logged earlier is being changed. */
  readonly last: Shot | null;
  readonly onChoose: (lie: Lie) => void;
  readonly onBall: (ball: NextBall) => void;
  /** The hole ends here without being holed. */
  readonly onOver: (result: 'picked up' | 'conceded') => void;
}

const FROM_GROUND = lies.filter((lie) => lie !== 'tee' && lie !== 'other' && lie !== 'bare');

/** From where the ball is played: its lie, or another ball in its place. */
export function LiePad({ chosen, last, onChoose, onBall, onOver }: Props) {
  const from = (lie: Lie): GridKey => ({
    id: lie,
    face: shotWords.lies[lie],
    isPressed: lie === chosen,
    onPress: () => onChoose(lie),
  });
  const { keys, ends } = shotWords;
  const ball = (id: string, face: string, next: NextBall): GridKey => ({
    id,
    face,
    look: 'quiet',
    onPress: () => onBall(next),
  });
  const wasLost = last !== null && last.outcome === 'in play';
  const others: GridKey[] =
    last === null
      ? []
      : penaltyStrokes(last.outcome) > 0
        ? [
            last.outcome === 'penalty area'
              ? ball('drop', keys.drop, { kind: 'drop', strokes: 0 })
              : ball('drop', keys.dropStroke, { kind: 'drop', strokes: 1 }),
            ball('same', last.lie === 'tee' ? keys.reTee : keys.again, { kind: 'same place' }),
          ]
        : [
            ball('free drop', keys.freeDrop, { kind: 'drop', strokes: 0 }),
            ball('drop', keys.dropStroke, { kind: 'drop', strokes: 1 }),
            ball('same', last.lie === 'tee' ? keys.reTeeStroke : keys.againStroke, { kind: 'same place' }),
            ball('provisional', keys.provisional, { kind: 'provisional' }),
          ];
  const ended = (['lost', 'penalty area', 'out of bounds'] as const).map((outcome) =>
    ball(outcome, ends[outcome], { kind: 'ended', outcome }),
  );
  const over = (['picked up', 'conceded'] as const).map(
    (result): GridKey => ({
      id: result,
      face: result === 'conceded' ? keys.conceded : keys.pickedUp,
      look: 'quiet',
      onPress: () => onOver(result),
    }),
  );
  return (
    <KeyGrid
      columns={4}
      keys={[
        ...FROM_GROUND.map(from),
        from('bare'),
        ...others,
        ...(wasLost ? ended : []),
        from('other'),
        from('tee'),
        ...(last === null ? [] : over),
      ]}
    />
  );
}
