import { useSignal } from '@preact/signals';
import type { NotValid, Outcome } from '../../actions/outcome.ts';
import { savePlayer, saveSettings } from '../../actions/saveSettings.ts';
import type { DistanceUnit } from '../distance.ts';
import { lookedAt } from '../openLogbook.ts';
import { Choice } from '../parts/Choice.tsx';
import { chooseTheme, type Theme, theme, themes } from '../theme.ts';
import { chosenUnit, ownUnit, unit } from '../unit.ts';
import { useShelf } from '../useShelf.ts';
import { words } from '../words.ts';
import css from './DisplayChoices.module.css';

const units: readonly DistanceUnit[] = ['yards', 'metres'];

/** How the app is drawn, and in which unit: the golfer's own choice, or one for the file looked at. */
export function DisplayChoices() {
  const shelf = useShelf();
  const trouble = useSignal<string | null>(null);
  const tell = async (saving: Promise<Outcome<unknown, NotValid> | Outcome>) => {
    const saved = await saving;
    trouble.value = saved.kind === 'unsaved' ? words.storage.why(saved.why) : null;
  };
  const choose = (choice: Theme) => {
    // Drawn at once, and kept for the first paint of the next visit, whatever the logbook says.
    chooseTheme(choice);
    void tell(saveSettings(shelf.own, { theme: choice }));
  };
  const chooseUnit = (choice: DistanceUnit) => {
    if (lookedAt.peek()) chosenUnit.value = choice;
    else {
      ownUnit.value = choice;
      void tell(savePlayer(shelf.shown.peek(), { units: choice }));
    }
  };
  return (
    <section class={css.display} aria-labelledby="display">
      <h2 id="display">{words.display.title}</h2>
      <Choice
        label={words.display.theme}
        name="theme"
        values={themes}
        words={words.display.themes}
        value={theme.value}
        onChoose={choose}
      />
      <Choice
        label={words.display.units}
        name="units"
        values={units}
        words={words.display.unitChoices}
        value={unit.value}
        onChoose={chooseUnit}
      />
      {trouble.value && <p role="alert">{trouble.value}</p>}
    </section>
  );
}
