import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { exportBackup, noteBackup } from '../../actions/exportBackup.ts';
import { permissions } from '../../golf/permissions.ts';
import { liveOpenRound, liveRounds, liveSettings } from '../../logbook/live.ts';
import { moment } from '../day.ts';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import { backupDue } from './backupDue.ts';
import { canHandOver, handOver, saveFile } from './handOver.ts';
import css from './More.module.css';

/** The keys that hand the whole logbook over as one file, and when that was done last. */
export function Backup() {
  const { own } = useShelf();
  const news = useSignal<string | null>(null);
  const trouble = useSignal<string | null>(null);
  const canShare = useMemo(canHandOver, []);
  const settings = liveSettings(own.connection).value;
  const rounds = liveRounds(own.connection).value;
  const open = liveOpenRound(own.connection).value;
  const maySend = open.kind !== 'ready' || permissions(open.value?.round ?? null).sharing;
  const last = settings.kind === 'ready' ? settings.value.lastBackupAt : null;
  const due = backupDue(rounds.kind === 'ready' ? rounds.value : [], last, new Date(own.clock.now()).toISOString());
  const backUp = async (how: 'save' | 'share') => {
    news.value = null;
    trouble.value = null;
    const backup = await exportBackup(own);
    if (backup.kind === 'unread') {
      trouble.value = words.storage.why(backup.why);
      return;
    }
    if (how === 'save') saveFile(backup.text, backup.fileName);
    else {
      const handed = await handOver(backup.text, backup.fileName);
      if (handed.kind === 'failed') trouble.value = moreWords.backup.notShared(handed.why);
      if (handed.kind !== 'handed over') return;
    }
    const said = [moreWords.backup.done(backup.fileName)];
    if (backup.unsaved > 0) said.push(moreWords.backup.unsaved(backup.unsaved));
    news.value = said.join(' ');
    const noted = await noteBackup(own);
    if (noted.kind === 'unsaved') trouble.value = words.storage.why(noted.why);
  };
  return (
    <section class={css.group} aria-labelledby="backup">
      <h2 id="backup">{moreWords.backup.title}</h2>
      <p>{moreWords.backup.what}</p>
      <p class={due.isDue ? css.warn : undefined}>
        {last ? moreWords.backup.last(moment(last)) : moreWords.backup.never}{' '}
        {due.isDue && moreWords.backup.due(last ? due.rounds : 0)}
      </p>
      <div class={css.keys}>
        <button type="button" class={`${press.press} ${press.main}`} onClick={() => void backUp('save')}>
          {moreWords.backup.save}
        </button>
        {canShare && maySend && (
          <button type="button" class={press.press} onClick={() => void backUp('share')}>
            {moreWords.backup.share}
          </button>
        )}
        <a class={press.press} href={addressOf('more', 'restore')}>
          {moreWords.backup.restore}
        </a>
      </div>
      {!maySend && <p>{moreWords.backup.byTheRules}</p>}
      <p role="status">{news.value}</p>
      <p role="alert" class={css.warn}>
        {trouble.value}
      </p>
    </section>
  );
}
