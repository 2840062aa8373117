import { useEffect, useRef } from 'preact/hooks';
import { appWords } from '../words/app.ts';
import css from './PageHead.module.css';
import press from './Press.module.css';

interface Props {
  readonly title: string;
  readonly sub?: string;
  /** Leads back; a page that is not under another one has none. */
  readonly onBack?: () => void;
}

/** The head of a page, ruled off like the head of a printed card. A page under another takes the focus and leads back. */
export function PageHead({ title, sub, onBack }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const isUnder = onBack !== undefined;
  useEffect(() => {
    document.title = `${title} · ${appWords.app}`;
    if (isUnder) heading.current?.focus({ preventScroll: true });
  }, [title, isUnder]);
  return (
    <header class={css.head}>
      {onBack && (
        <button type="button" class={press.press} onClick={onBack}>
          {appWords.back}
        </button>
      )}
      <div class={css.titles}>
        <h1 ref={heading} tabIndex={isUnder ? -1 : undefined}>
          {title}
        </h1>
        {sub && <p>{sub}</p>}
      </div>
    </header>
  );
}
