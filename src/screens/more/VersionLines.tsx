import { permissions } from '../../golf/permissions.ts';
import { liveOpenRound } from '../../logbook/live.ts';
import { updater, updateState } from '../appUpdate.ts';
import press from '../parts/Press.module.css';
import { useShelf } from '../useShelf.ts';
import { version } from '../version.ts';
import { moreWords } from '../words/more.ts';
import css from './More.module.css';

const { update: says } = moreWords;

/** Which version this is, whether a newer one waits, and the keys to look for it and to take it. */
export function VersionLines() {
  const { own } = useShelf();
  const open = liveOpenRound(own.connection).value;
  const round = open.kind === 'ready' ? (open.value?.round ?? null) : null;
  const isPlaying = open.kind === 'ready' && !permissions(round).updating;
  // In a casual round the golfer may take it now, by this key alone; by the Rules it waits.
  const mayUpdate = !isPlaying || round?.play !== 'rules';
  const { kind } = updateState.value;
  const inRound = mayUpdate ? says.waitingInRound : says.waitingByTheRules;
  const said = (kind === 'waiting' || kind === 'elsewhere') && isPlaying ? inRound : says[kind];
  return (
    <section class={css.group} aria-labelledby="version">
      <h2 id="version">{says.title}</h2>
      <p>{says.version(version)}</p>
      <p role="status">{said}</p>
      <div class={css.keys}>
        {kind === 'waiting' && mayUpdate && (
          <button type="button" class={press.press} onClick={() => updater.value?.apply()}>
            {says.apply}
          </button>
        )}
        {kind === 'elsewhere' && mayUpdate && (
          <button type="button" class={press.press} onClick={() => location.reload()}>
            {says.reload}
          </button>
        )}
        {updater.value && (kind === 'none' || kind === 'failed') && (
          <button type="button" class={press.press} onClick={() => void updater.value?.check()}>
            {says.check}
          </button>
        )}
      </div>
    </section>
  );
}
