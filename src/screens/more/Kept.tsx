import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Persistence, persistStorage } from '../../actions/persistStorage.ts';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { moreWords } from '../words/more.ts';
import css from './More.module.css';

/** How the logbook is kept on this device: the browser's promise, the space used, and the way to the bin. */
export function Kept() {
  const promise = useSignal<Persistence | null>(null);
  const used = useSignal<number | null>(null);
  useEffect(() => {
    const look = async () => {
      const storage: Partial<StorageManager> | undefined = navigator.storage;
      if (!storage?.persisted || !storage.estimate) {
        promise.value = 'not offered';
        return;
      }
      promise.value = (await storage.persisted()) ? 'granted' : 'refused';
      used.value = (await storage.estimate()).usage ?? null;
    };
    look().catch((error: unknown) => console.error('the browser does not tell of its storage', error));
  }, [promise, used]);
  const ask = async () => {
    promise.value = await persistStorage();
  };
  return (
    <section class={css.group} aria-labelledby="kept">
      <h2 id="kept">{moreWords.storage.title}</h2>
      <p role="status">{promise.value && moreWords.storage.persistence[promise.value]}</p>
      {used.value !== null && <p>{moreWords.storage.used(used.value)}</p>}
      <div class={css.keys}>
        {promise.value === 'refused' && (
          <button type="button" class={press.press} onClick={() => void ask()}>
            {moreWords.storage.ask}
          </button>
        )}
        <a class={press.press} href={addressOf('round', 'bin')}>
          {moreWords.storage.bin}
        </a>
      </div>
    </section>
  );
}
