import { useEffect, useRef } from 'preact/hooks';
import { openLogbook } from '../openLogbook.ts';
import { Cautions } from '../parts/Cautions.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { goBack } from '../route.ts';
import { words } from '../words.ts';
import { DisplayChoices } from './DisplayChoices.tsx';
import css from './OpenFile.module.css';
import { forgetOutcome, openCarrybookFile, openDemo, openGivenFile, opening } from './opening.ts';
import { Refused } from './Refused.tsx';

/** What came of the last file: being read, refused, failed, or a choice among several logbooks. */
function Outcome() {
  const state = opening.value;
  if (state.kind === 'refused') return <Refused name={state.name} refusals={state.refusals} />;
  if (state.kind === 'reading') return <p role="status">{words.open.reading(state.name)}</p>;
  if (state.kind === 'failed') {
    return (
      <div class={css.refused} role="alert">
        <h2>{words.refusal.title(state.name)}</h2>
        <p>{state.why}</p>
        <p>{words.refusal.safe}</p>
      </div>
    );
  }
  if (state.kind === 'idle') return null;
  return (
    <>
      <section class={css.choosing} aria-labelledby="whose">
        <h2 id="whose">{words.open.chooseTitle}</h2>
        <p>{words.open.choose(state.team.members.length)}</p>
        <ul class={css.actions}>
          {state.team.members.map(({ index, file }) => (
            <li key={index}>
              <button type="button" class={press.press} onClick={() => openCarrybookFile(file)}>
                {file.player.name || words.open.unnamed}
              </button>
            </li>
          ))}
        </ul>
      </section>
      {state.team.broken.map(({ index, name, refusals }) => (
        <Refused key={index} name={name || words.open.unnamed} refusals={refusals} />
      ))}
    </>
  );
}

/** The page that opens a book: from a file of this device, or the invented season. It stands first while none is open. */
export function OpenFile() {
  const picker = useRef<HTMLInputElement>(null);
  const outcome = useRef<HTMLDivElement>(null);
  const isFirst = openLogbook.value === null;
  const { kind } = opening.value;
  useEffect(() => {
    if (kind !== 'idle' && kind !== 'reading') outcome.current?.scrollIntoView({ block: 'nearest' });
  }, [kind]);

  useEffect(() => forgetOutcome, []);

  const take = () => {
    const file = picker.current?.files?.[0];
    if (!file || !picker.current) return;
    void openGivenFile(file);
    // The same file, mended, can be picked again.
    picker.current.value = '';
  };

  return (
    <>
      {isFirst ? (
        <PageHead title={words.app} />
      ) : (
        <PageHead title={words.open.title} onBack={() => goBack('yardages')} />
      )}
      <div class={css.sheet}>
        {isFirst && <p class={css.motto}>{words.appMotto}</p>}
        <div ref={outcome}>
          <Outcome />
        </div>
        <section class={css.group}>
          <input
            ref={picker}
            class={css.picker}
            id="file"
            type="file"
            accept=".json,application/json"
            onChange={take}
          />
          <label class={`${press.press} ${press.main} ${css.wide}`} for="file">
            {words.open.file}
          </label>
          <p>{words.open.drop}</p>
        </section>
        <section class={css.group} aria-labelledby="demo">
          <h2 id="demo">{words.open.demoTitle}</h2>
          <p>{words.open.demo}</p>
          <div class={css.actions}>
            <button type="button" class={press.press} onClick={() => openDemo('player')}>
              {words.open.demoPlayer}
            </button>
            <button type="button" class={press.press} onClick={() => openDemo('coach')}>
              {words.open.demoCoach}
            </button>
          </div>
        </section>
        {isFirst && <Cautions />}
        {isFirst && <DisplayChoices />}
      </div>
    </>
  );
}
