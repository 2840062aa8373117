import type { HoleScore } from '../../../golf/holeScore.ts';
import { shotWords } from '../../words/shot.ts';
import { figure } from '../../words.ts';
import css from './ShotPage.module.css';

/** What a hole came to, once it is over. */
export function HoleOver({ hole, score }: { hole: number; score: HoleScore }) {
  const { over } = shotWords;
  const ended = score.kind === 'picked up' ? over.pickedUp : score.kind === 'conceded' ? over.conceded : null;
  const strokes = over.strokes(score.strokes);
  return (
    <div class={css.over}>
      <p class={css.overScore}>{over.holed(figure(hole), ended === null ? strokes : `${strokes}, ${ended}`)}</p>
      <p>{over.parts(score.shots, score.putts, score.penalties)}</p>
    </div>
  );
}
