import type { DistanceUnit } from '../distance.ts';
import { openLogbook } from '../openLogbook.ts';
import { Choice } from '../parts/Choice.tsx';
import { chooseTheme, theme, themes } from '../theme.ts';
import { chosenUnit, unit } from '../unit.ts';
import { words } from '../words.ts';
import css from './DisplayChoices.module.css';

const units: readonly DistanceUnit[] = ['yards', 'metres'];

/** How the app is drawn, and, with a book open, in which unit. */
export function DisplayChoices() {
  return (
    <section class={css.display} aria-labelledby="display">
      <h2 id="display">{words.display.title}</h2>
      <Choice
        label={words.display.theme}
        name="theme"
        values={themes}
        words={words.display.themes}
        value={theme.value}
        onChoose={chooseTheme}
      />
      {openLogbook.value && (
        <Choice
          label={words.display.units}
          name="units"
          values={units}
          words={words.display.unitChoices}
          value={unit.value}
          onChoose={(choice) => {
            chosenUnit.value = choice;
          }}
        />
      )}
    </section>
  );
}
