import { useSignal } from '@preact/signals';
import { removeDemo } from '../../actions/deleteEverything.ts';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import { DemoKeys } from './DemoKeys.tsx';
import css from './More.module.css';
import { OpeningOutcome } from './OpenFile.tsx';

/** Loads the demo season, or removes it again, and leads to the page where a file is only looked at. */
export function DemoSection() {
  const shelf = useShelf();
  const trouble = useSignal<string | null>(null);
  const isShown = shelf.shown.value === shelf.demo;
  const remove = async () => {
    const removed = await removeDemo(shelf);
    trouble.value = removed.kind === 'unsaved' ? words.storage.why(removed.why) : null;
  };
  return (
    <section class={css.group} aria-labelledby="demo-season">
      <h2 id="demo-season">{moreWords.demo.title}</h2>
      <p>{isShown ? moreWords.demo.shown : moreWords.demo.what}</p>
      {isShown ? (
        <div class={css.keys}>
          <button type="button" class={press.press} onClick={() => void remove()}>
            {moreWords.demo.remove}
          </button>
        </div>
      ) : (
        <DemoKeys />
      )}
      <OpeningOutcome />
      <p role="alert" class={css.warn}>
        {trouble.value}
      </p>
      <div class={css.keys}>
        <a class={press.press} href={addressOf('open')}>
          {moreWords.demo.look}
        </a>
      </div>
    </section>
  );
}
