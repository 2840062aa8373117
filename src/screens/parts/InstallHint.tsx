import { install, installOffer, isInstalled, isShareMenuOnly } from '../installing.ts';
import { moreWords } from '../words/more.ts';
import css from './InstallHint.module.css';
import press from './Press.module.css';

/** How to bring the app to the home screen on this device, and why; nothing once it is there. */
export function InstallHint() {
  if (isInstalled.value) return null;
  return (
    <section class={css.hint} aria-labelledby="install">
      <h2 id="install">{moreWords.install.title}</h2>
      <p>{moreWords.install.why}</p>
      {installOffer.value ? (
        <button type="button" class={press.press} onClick={() => void install()}>
          {moreWords.install.install}
        </button>
      ) : (
        <p>{isShareMenuOnly() ? moreWords.install.ios : moreWords.install.other}</p>
      )}
    </section>
  );
}
