import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { exportBackup, noteBackup } from '../../actions/exportBackup.ts';
import { liveLogbook } from '../../logbook/live.ts';
import { dayWithYear } from '../day.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, goBack } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import { saveFile } from './handOver.ts';
import css from './More.module.css';
import { Refused } from './Refused.tsx';
import { bringBack, type Restoring, readBackup } from './restoring.ts';

const { restore: says } = moreWords;

/** Brings a backup back: into an empty logbook, merged into the one here, or in its place. */
export function RestorePage() {
  const shelf = useShelf();
  const picker = useRef<HTMLInputElement>(null);
  const state = useSignal<Restoring>({ kind: 'idle' });
  const here = liveLogbook(shelf.own.connection).value;
  const logbook = here.kind === 'ready' ? here.value : null;
  const isEmpty = logbook !== null && logbook.rounds.length === 0 && logbook.clubs.length === 0;
  const take = async () => {
    const file = picker.current?.files?.[0];
    if (!file || !picker.current) return;
    state.value = { kind: 'reading', name: file.name };
    state.value = await readBackup(file);
    // The same file, mended, can be picked again.
    if (picker.current) picker.current.value = '';
  };
  const bring = async (how: 'replace' | 'merge') => {
    const { value } = state;
    if (value.kind !== 'read') return;
    state.value = { kind: 'working' };
    state.value = await bringBack(shelf, value, how);
  };
  const saveFirst = async () => {
    const backup = await exportBackup(shelf.own);
    if (backup.kind === 'ok') {
      saveFile(backup.text, backup.fileName);
      await noteBackup(shelf.own);
    } else state.value = { kind: 'failed', why: words.storage.why(backup.why) };
  };
  const { value } = state;
  return (
    <>
      <PageHead title={says.title} onBack={() => goBack('more')} />
      <div class={css.page}>
        <section class={css.group}>
          <p>{says.what}</p>
          <div class={css.pick}>
            <input
              ref={picker}
              id="backup-file"
              type="file"
              accept=".json,application/json"
              onChange={() => void take()}
            />
            <label class={`${press.press} ${value.kind === 'read' ? '' : press.main} ${css.wide}`} for="backup-file">
              {says.pick}
            </label>
          </div>
        </section>
        {value.kind === 'reading' && <p role="status">{says.reading(value.name)}</p>}
        {value.kind === 'working' && <p role="status">{says.working}</p>}
        {value.kind === 'refused' && <Refused name={value.name} refusals={value.refusals} />}
        {value.kind === 'failed' && (
          <section class={css.group}>
            <p role="alert" class={css.warn}>
              {value.why}
            </p>
            <p>{words.refusal.safe}</p>
          </section>
        )}
        {value.kind === 'read' && logbook && (
          <section class={css.group}>
            <p role="status">
              {says.holds({
                name: value.file.player.name,
                clubs: value.file.clubs.length,
                rounds: value.file.rounds.length,
                shots: value.file.shots.length,
                day: dayWithYear(value.file.exportedAt),
              })}
            </p>
            {isEmpty ? (
              <div class={css.keys}>
                <button type="button" class={`${press.press} ${press.main}`} onClick={() => void bring('replace')}>
                  {says.bring}
                </button>
              </div>
            ) : (
              <>
                <p>{says.here({ rounds: logbook.rounds.length, shots: logbook.shots.length })}</p>
                <button type="button" class={press.press} onClick={() => void bring('merge')}>
                  {says.merge}
                </button>
                <p>{says.mergeWhat}</p>
                <button type="button" class={press.press} onClick={() => void bring('replace')}>
                  {says.replace}
                </button>
                <p>{says.replaceWhat}</p>
                <button type="button" class={press.press} onClick={() => void saveFirst()}>
                  {says.saveFirst}
                </button>
              </>
            )}
          </section>
        )}
        {value.kind === 'restored' && (
          <section class={css.group}>
            <p role="status">{value.restored.merge ? says.merged(value.restored.merge) : says.done(value.restored)}</p>
            <div class={css.keys}>
              <a class={press.press} href={addressOf('yardages')}>
                {says.toYardages}
              </a>
            </div>
          </section>
        )}
      </div>
    </>
  );
}
