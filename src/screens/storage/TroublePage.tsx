import type { Keeper } from '../../actions/keeper.ts';
import type { StorageTrouble } from '../../logbook/storageTrouble.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { storageWords } from '../words/storage.ts';
import { openAgain } from './openAgain.ts';
import css from './TroublePage.module.css';

/** Said in the stead of every place that needs the logbook while the browser does not give it: why, and what to do. */
export function TroublePage({ keepers, why }: { readonly keepers: readonly Keeper[]; readonly why: StorageTrouble }) {
  return (
    <>
      <PageHead title={storageWords.title} />
      <div class={css.trouble} role="alert">
        <p class={css.what}>{storageWords.what[why.kind]}</p>
        <p>{storageWords.todo[why.kind]}</p>
        {why.kind === 'failed' && <p>{storageWords.reason(why.reason)}</p>}
      </div>
      <div class={css.keys}>
        <button type="button" class={`${press.press} ${press.main}`} onClick={() => void openAgain(keepers)}>
          {storageWords.again}
        </button>
        <a class={press.press} href={addressOf('open')}>
          {storageWords.look}
        </a>
      </div>
    </>
  );
}
