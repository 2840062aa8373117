import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { allowAgain } from '../../actions/careTeam.ts';
import press from '../parts/Press.module.css';
import { handOverWords } from '../words/handOver.ts';
import { teamWords } from '../words/team.ts';
import { QrReader } from './QrReader.tsx';
import { SealedLine } from './SealedLine.tsx';
import css from './Team.module.css';
import { cancelTakingIn, type FileLine, fileLines, forgetLines, type Incoming, takeInFiles } from './takingIn.ts';
import { teamKeeper } from './teamKeeper.ts';

const words = teamWords.takeIn;

const incoming = (files: Iterable<File>): Incoming[] =>
  [...files].map((file) => ({ name: file.name, size: file.size, text: () => file.text() }));

/** Takes files dropped anywhere on the page, or pasted, before the app looks at the first of them only. */
function useFilesFromOutside(isOff: boolean): void {
  useEffect(() => {
    if (isOff) return undefined;
    const drop = (event: DragEvent) => {
      const files = event.dataTransfer?.files;
      if (!files || files.length === 0) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      void takeInFiles(incoming(files));
    };
    const paste = (event: ClipboardEvent) => {
      const { target, clipboardData } = event;
      if (!clipboardData || target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
      const text = clipboardData.getData('text/plain');
      const files = incoming(clipboardData.files);
      if (files.length === 0 && text.trim() !== '') {
        files.push({ name: words.pasted, size: text.length, text: async () => text });
      }
      void takeInFiles(files);
    };
    addEventListener('drop', drop, { capture: true });
    addEventListener('paste', paste);
    return () => {
      removeEventListener('drop', drop, { capture: true });
      removeEventListener('paste', paste);
    };
  }, [isOff]);
}

/** What came of one file. */
function Line({ line }: { readonly line: FileLine }) {
  const allowed = useSignal(false);
  const { state, name } = line;
  if (state.kind === 'sealed') return <SealedLine line={line} />;
  if (state.kind !== 'done') {
    const said = state.kind === 'failed' ? words.failed(state.why) : words[state.kind];
    return (
      <li data-state={state.kind}>
        <span class={state.kind === 'failed' ? css.warn : undefined}>
          {name}: {said}
        </span>
      </li>
    );
  }
  const blocked = state.taken.find((one) => one.kind === 'blocked');
  const allow = async (playerId: string) => {
    allowed.value = (await allowAgain(teamKeeper, playerId)).kind === 'saved';
  };
  return (
    <li data-state={state.taken.some(({ kind }) => kind === 'refused') ? 'refused' : 'done'}>
      <div>
        <p class={css.quiet}>{name}</p>
        {state.taken.map((one, i) => (
          <p key={`${one.kind} ${i}`} class={one.kind === 'refused' || one.kind === 'unsaved' ? css.warn : undefined}>
            {words.taken(one)}
          </p>
        ))}
      </div>
      {blocked?.kind === 'blocked' && (
        <div>
          {allowed.value ? (
            <p role="status">{words.allowed}</p>
          ) : (
            <button type="button" class={press.press} onClick={() => void allow(blocked.playerId)}>
              {words.allow}
            </button>
          )}
        </div>
      )}
    </li>
  );
}

/** Where books are taken in: by picker, drop or paste, with what came of each file. */
export function TakeIn({ isOff }: { readonly isOff: boolean }) {
  const picker = useRef<HTMLInputElement>(null);
  useFilesFromOutside(isOff);
  const lines = fileLines.value;
  const open = lines.filter(({ state }) => state.kind === 'waiting' || state.kind === 'reading').length;
  const take = () => {
    const field = picker.current;
    if (!field) return;
    void takeInFiles(incoming(field.files ?? []));
    // The same file, mended, can be picked again.
    field.value = '';
  };
  return (
    <section class={css.group} aria-labelledby="take-in">
      <h2 id="take-in">{words.title}</h2>
      <p class={css.quiet}>{isOff ? teamWords.byTheRules : words.what}</p>
      {!isOff && (
        <div class={css.keys}>
          <input
            ref={picker}
            class={css.picker}
            id="team-files"
            type="file"
            multiple
            accept=".json,.txt,application/json,text/plain"
            onChange={take}
          />
          <label class={`${press.press} ${css.wide}`} for="team-files">
            {words.pick}
          </label>
          <span class={css.quiet}>{words.drop}</span>
        </div>
      )}
      {!isOff && (
        <details class={css.details}>
          <summary>{handOverWords.codes.read}</summary>
          <QrReader
            onText={(text) => void takeInFiles([{ name: words.codes, size: text.length, text: async () => text }])}
          />
        </details>
      )}
      {lines.length > 0 && (
        <>
          <p role="status">{words.read(lines.length - open, lines.length)}</p>
          {open > 0 && <progress max={lines.length} value={lines.length - open} aria-label={words.title} />}
          <ul class={css.rows}>
            {lines.map((line) => (
              <Line key={line.id} line={line} />
            ))}
          </ul>
          <div class={css.keys}>
            <button type="button" class={press.press} onClick={open > 0 ? cancelTakingIn : forgetLines}>
              {open > 0 ? words.cancel : words.away}
            </button>
          </div>
        </>
      )}
    </section>
  );
}
