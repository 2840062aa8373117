import type { Strike } from '../../../golf/shot.ts';
import { shotWords } from '../../words/shot.ts';
import { Key } from './Key.tsx';
import css from './StrikePad.module.css';

/** In the order they are heard; on the screen they lie as on the face of a club. */
const strikes: readonly Strike[] = ['solid', 'thin', 'fat', 'heel', 'toe'];

/**
 * How the ball was struck, laid out as the club came to the ball: solid in the middle, thin above for a
 * club too high, fat below for one too low, heel and toe to the sides.
 */
export function StrikePad({ chosen, onChoose }: { chosen: Strike | null; onChoose: (strike: Strike) => void }) {
  return (
    <div class={css.face}>
      {strikes.map((strike) => (
        <div key={strike} class={css[strike]}>
          <Key isPressed={strike === chosen} look="figure" onPress={() => onChoose(strike)}>
            {shotWords.strikes[strike]}
          </Key>
        </div>
      ))}
    </div>
  );
}
