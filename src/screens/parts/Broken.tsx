import { replaceWith } from '../route.ts';
import { appWords } from '../words/app.ts';
import { PageHead } from './PageHead.tsx';
import press from './Press.module.css';

/** Shown in the stead of a page that could not be drawn, instead of an empty screen: why, and the way out. */
export function Broken({ error, onAgain }: { readonly error: unknown; readonly onAgain: () => void }) {
  const restart = () => {
    replaceWith();
    onAgain();
  };
  return (
    <>
      <PageHead title={appWords.broken.title} />
      <p role="alert">{appWords.broken.why(error instanceof Error ? error.message : String(error))}</p>
      <button type="button" class={press.press} onClick={restart}>
        {appWords.broken.again}
      </button>
    </>
  );
}
