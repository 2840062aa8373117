import type { Keeper } from '../../actions/keeper.ts';
import { retryUnsaved } from '../../actions/withUnsaved.ts';
import press from '../parts/Press.module.css';
import { roundWords } from '../words/round.ts';
import { words } from '../words.ts';
import css from './StorageNews.module.css';

/** What is not saved yet and why, with a key to try at once; nothing while all is saved. */
export function StorageNews({ keeper }: { readonly keeper: Keeper }) {
  const unsaved = keeper.unsaved.value;
  const why = unsaved.at(-1)?.why;
  return (
    <div role="status" class={css.news}>
      {why && (
        <>
          <p>
            <strong>{roundWords.unsaved(unsaved.length)}.</strong> {words.storage.why(why)}
          </p>
          <button type="button" class={press.press} onClick={() => void retryUnsaved(keeper)}>
            {roundWords.tryNow}
          </button>
        </>
      )}
    </div>
  );
}
