import { practiceWords as words } from '../../words/practice.ts';
import { Key } from '../shot/Key.tsx';
import { type PitchKey, pitchKeys } from './pitchKeys.ts';
import css from './WedgeLadder.module.css';

function face(key: PitchKey): string {
  if (key.kind === 'well short') return words.wellShort(key.by);
  if (key.long === 0) return words.on;
  return key.long > 0 ? words.long(key.long) : words.short(-key.long);
}

/** The line over the target as keys, from long to short as the eye meets it from the far end: one tap logs a ball. */
export function PitchStrip({ onPitch }: { readonly onPitch: (key: PitchKey) => void }) {
  return (
    <fieldset class={css.strip}>
      <legend>{words.strip}</legend>
      {pitchKeys.map((key) => (
        <Key
          key={face(key)}
          look={key.kind === 'pitched' && key.long === 0 ? 'main' : 'plain'}
          onPress={() => onPitch(key)}
        >
          {face(key)}
        </Key>
      ))}
    </fieldset>
  );
}
