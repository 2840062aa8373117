import { useSignal } from '@preact/signals';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { teamWords } from '../words/team.ts';
import css from './Team.module.css';
import { type FileLine, openSealed } from './takingIn.ts';

const words = teamWords.takeIn;

/** A sealed file that waits for its passphrase. */
export function SealedLine({ line }: { readonly line: FileLine }) {
  const passphrase = useSignal('');
  const isOpening = useSignal(false);
  const { state, name } = line;
  if (state.kind !== 'sealed') return null;
  const open = async (event: Event) => {
    event.preventDefault();
    isOpening.value = true;
    await openSealed(line, passphrase.value);
    isOpening.value = false;
  };
  return (
    <li data-state="sealed">
      <form class={css.group} onSubmit={(event) => void open(event)}>
        <p>{name}</p>
        <Field
          label={words.passphrase}
          value={passphrase.value}
          error={state.wrong ?? undefined}
          onInput={(value) => {
            passphrase.value = value;
          }}
        />
        <div class={css.keys}>
          <button type="submit" class={press.press} disabled={isOpening.value}>
            {isOpening.value ? words.reading : words.open}
          </button>
        </div>
      </form>
    </li>
  );
}
