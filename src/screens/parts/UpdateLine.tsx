import { permissions } from '../../golf/permissions.ts';
import { liveOpenRound } from '../../logbook/live.ts';
import { isPutOff, updater, updateState } from '../appUpdate.ts';
import { route } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { updateWords } from '../words/update.ts';
import press from './Press.module.css';
import css from './UpdateLine.module.css';

/** Tells between rounds that a new version waits. While a round is open only the More place says so, and it is not taken. */
export function UpdateLine() {
  const { own } = useShelf();
  if (updateState.value.kind !== 'waiting' || isPutOff.value || route.value[0] === 'more') return null;
  const open = liveOpenRound(own.connection).value;
  if (open.kind !== 'ready' || !permissions(open.value?.round ?? null).updating) return null;
  return (
    <div class={css.line} role="status">
      <p>{updateWords.waiting}</p>
      <button type="button" class={press.press} onClick={() => updater.value?.apply()}>
        {updateWords.apply}
      </button>
      <button
        type="button"
        class={press.press}
        onClick={() => {
          isPutOff.value = true;
        }}
      >
        {updateWords.later}
      </button>
    </div>
  );
}
