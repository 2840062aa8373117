import { useEffect } from 'preact/hooks';
import { isInstalled } from '../installing.ts';
import { Cautions } from '../parts/Cautions.tsx';
import { InstallHint } from '../parts/InstallHint.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, type Route } from '../route.ts';
import { moreWords } from '../words/more.ts';
import { Backup } from './Backup.tsx';
import { DeletePage } from './DeletePage.tsx';
import { DemoSection } from './DemoSection.tsx';
import { DisplayChoices } from './DisplayChoices.tsx';
import { GolferChoices } from './GolferChoices.tsx';
import { Kept } from './Kept.tsx';
import css from './More.module.css';
import { forgetOutcome } from './opening.ts';
import { RestorePage } from './RestorePage.tsx';
import { VersionLines } from './VersionLines.tsx';

/** The More place: choices, backups, what is kept, versions, and what everybody should know. */
export function More({ path }: { readonly path: Route }) {
  useEffect(() => forgetOutcome, []);
  if (path[0] === 'restore') return <RestorePage />;
  if (path[0] === 'delete') return <DeletePage />;
  return (
    <>
      <PageHead title={moreWords.title} />
      <div class={css.page}>
        <Backup />
        <section class={css.group} aria-labelledby="paper">
          <h2 id="paper">{moreWords.paper.title}</h2>
          <p>{moreWords.paper.what}</p>
          <div class={css.keys}>
            <a class={press.press} href={addressOf('yardages', 'card')}>
              {moreWords.paper.card}
            </a>
            <a class={press.press} href={addressOf('yardages', 'card', 'shots')}>
              {moreWords.paper.sheet}
            </a>
          </div>
        </section>
        <DisplayChoices />
        <GolferChoices />
        {isInstalled.value ? <p>{moreWords.install.installed}</p> : <InstallHint />}
        <Kept />
        <DemoSection />
        <VersionLines />
        <section class={css.group} aria-labelledby="privacy">
          <h2 id="privacy">{moreWords.privacy.title}</h2>
          <ul class={css.says}>
            {moreWords.privacy.says.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
        <Cautions />
        <div class={css.keys}>
          <a class={press.press} href={addressOf('more', 'delete')}>
            {moreWords.erase.link}
          </a>
        </div>
      </div>
    </>
  );
}
