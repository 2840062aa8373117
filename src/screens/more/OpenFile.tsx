import { useEffect, useRef } from 'preact/hooks';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { goBack } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { words } from '../words.ts';
import { DemoKeys } from './DemoKeys.tsx';
import css from './OpenFile.module.css';
import { forgetOutcome, openCarrybookFile, openGivenFile, opening } from './opening.ts';
import { Refused } from './Refused.tsx';

/** What came of the last file: being read, refused, failed, or a choice among several logbooks. */
export function OpeningOutcome() {
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

/** The page that opens a book to look at, from a file of this device, or the invented season. */
export function OpenFile() {
  const picker = useRef<HTMLInputElement>(null);
  const outcome = useRef<HTMLDivElement>(null);
  const shelf = useShelf();
  const { kind } = opening.value;
  useEffect(() => {
    if (kind !== 'idle' && kind !== 'reading') outcome.current?.scrollIntoView({ block: 'nearest' });
  }, [kind]);

  useEffect(() => forgetOutcome, []);

  const take = () => {
    const file = picker.current?.files?.[0];
    if (!file || !picker.current) return;
    void openGivenFile(shelf, file);
    // The same file, mended, can be picked again.
    picker.current.value = '';
  };

  return (
    <>
      <PageHead title={words.open.title} onBack={() => goBack('yardages')} />
      <div class={css.sheet}>
        <p>{words.open.justLook}</p>
        <div ref={outcome}>
          <OpeningOutcome />
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
          <DemoKeys />
        </section>
      </div>
    </>
  );
}
