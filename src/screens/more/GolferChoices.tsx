import { useSignal } from '@preact/signals';
import { savePlayer, saveSettings } from '../../actions/saveSettings.ts';
import type { Player } from '../../golf/player.ts';
import { livePlayer, liveSettings } from '../../logbook/live.ts';
import type { Settings } from '../../logbook/settings.ts';
import { Choice } from '../parts/Choice.tsx';
import { Field } from '../round/Field.tsx';
import { useShelf } from '../useShelf.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import css from './More.module.css';

const { settings: says } = moreWords;

/** The choices about units, hand and nickname that are not about drawing. */
export function GolferChoices() {
  const shelf = useShelf();
  const keeper = shelf.shown.value;
  const trouble = useSignal<string | null>(null);
  const settings = liveSettings(shelf.own.connection).value;
  const player = livePlayer(keeper.connection).value;
  if (settings.kind !== 'ready' || player.kind !== 'ready') return null;
  const choose = async (changes: Partial<Settings>) => {
    const saved = await saveSettings(shelf.own, changes);
    trouble.value = saved.kind === 'unsaved' ? words.storage.why(saved.why) : null;
  };
  const say = async (changes: Partial<Pick<Player, 'name' | 'hand'>>) => {
    const saved = await savePlayer(keeper, changes);
    trouble.value =
      saved.kind === 'unsaved' ? words.storage.why(saved.why) : saved.kind === 'refused' ? moreWords.notSaved : null;
  };
  return (
    <section class={css.group} aria-labelledby="golfer-choices">
      <h2 id="golfer-choices">{says.title}</h2>
      <div class={css.choices}>
        <Choice
          label={says.temperature}
          name="temperature"
          values={['°F', '°C']}
          words={says.temperatures}
          value={settings.value.temperature}
          onChoose={(temperature) => void choose({ temperature })}
        />
        <Choice
          label={says.wind}
          name="wind-speed"
          values={['mph', 'm/s', 'km/h']}
          words={says.winds}
          value={settings.value.windSpeed}
          onChoose={(windSpeed) => void choose({ windSpeed })}
        />
        <Choice
          label={says.hand}
          name="hand"
          values={['right', 'left']}
          words={says.hands}
          value={player.value.hand}
          onChoose={(hand) => void say({ hand })}
        />
      </div>
      <p>{says.handNote}</p>
      <Field
        key={keeper.connection.name}
        label={says.name}
        value={player.value.name}
        maxLength={60}
        note={says.nameNote}
        onCommit={(name) => void say({ name: name.trim() })}
      />
      <p role="alert" class={css.warn}>
        {trouble.value}
      </p>
    </section>
  );
}
