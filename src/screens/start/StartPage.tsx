import { useSignal } from '@preact/signals';
import { startBag } from '../../actions/bagChanges.ts';
import { persistStorage } from '../../actions/persistStorage.ts';
import { DemoKeys } from '../more/DemoKeys.tsx';
import { OpeningOutcome } from '../more/OpenFile.tsx';
import { Cautions } from '../parts/Cautions.tsx';
import { InstallHint } from '../parts/InstallHint.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, goTo } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { startWords } from '../words/start.ts';
import { words } from '../words.ts';
import css from './StartPage.module.css';

/** The page that a new golfer begins on: a bag, a backup brought back, or the demo season. */
export function StartPage() {
  const { own } = useShelf();
  const trouble = useSignal<string | null>(null);
  const begin = async (how: 'typical' | 'nothing') => {
    // A browser that asks the golfer before it promises to keep things asks only after a tap.
    void persistStorage();
    const begun = await startBag(own, how);
    if (begun.kind === 'unsaved') trouble.value = words.storage.why(begun.why);
    else if (how === 'typical') goTo('bag', 'anchors');
    else goTo('bag');
  };
  return (
    <>
      <PageHead title={words.app} />
      <div class={css.sheet}>
        <p class={css.motto}>{words.appMotto}</p>
        <p role="alert">{trouble.value}</p>
        <section class={css.group} aria-labelledby="start-bag">
          <h2 id="start-bag">{startWords.bagTitle}</h2>
          <p>{startWords.bagWhy}</p>
          <div class={css.keys}>
            <button type="button" class={`${press.press} ${press.main}`} onClick={() => void begin('typical')}>
              {startWords.typical}
            </button>
            <button type="button" class={press.press} onClick={() => void begin('nothing')}>
              {startWords.nothing}
            </button>
          </div>
        </section>
        <section class={css.group} aria-labelledby="start-restore">
          <h2 id="start-restore">{startWords.restoreTitle}</h2>
          <div class={css.keys}>
            <a class={press.press} href={addressOf('more', 'restore')}>
              {startWords.restore}
            </a>
          </div>
        </section>
        <section class={css.group} aria-labelledby="start-demo">
          <h2 id="start-demo">{startWords.demoTitle}</h2>
          <p>{words.open.demo}</p>
          <DemoKeys />
          <OpeningOutcome />
          <p>{startWords.lookWhy}</p>
          <div class={css.keys}>
            <a class={press.press} href={addressOf('open')}>
              {startWords.look}
            </a>
          </div>
        </section>
        <InstallHint />
        <Cautions />
      </div>
    </>
  );
}
