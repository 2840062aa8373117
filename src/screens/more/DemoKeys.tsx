import press from '../parts/Press.module.css';
import { useShelf } from '../useShelf.ts';
import { words } from '../words.ts';
import css from './OpenFile.module.css';
import { openDemo } from './opening.ts';

/** The keys that load an invented season; it is kept apart from the golfer's own logbook. */
export function DemoKeys() {
  const shelf = useShelf();
  return (
    <div class={css.actions}>
      <button type="button" class={press.press} onClick={() => void openDemo(shelf, 'player')}>
        {words.open.demoPlayer}
      </button>
      <button type="button" class={press.press} onClick={() => void openDemo(shelf, 'coach')}>
        {words.open.demoCoach}
      </button>
    </div>
  );
}
