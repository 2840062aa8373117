import { useSignal } from '@preact/signals';
import { removeDemo } from '../../actions/deleteEverything.ts';
import { moment } from '../day.ts';
import { putFileAway } from '../more/opening.ts';
import type { ReadyBook } from '../openBook.ts';
import press from '../parts/Press.module.css';
import { goTo } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { words } from '../words.ts';
import css from './WhoseBook.module.css';

/** Said over a card that is not simply the golfer's own of now: a file looked at, the demo, or a frozen card. */
export function WhoseBook({ open }: { readonly open: ReadyBook }) {
  const shelf = useShelf();
  const trouble = useSignal<string | null>(null);
  const { from, frozen, logbook } = open.of;
  const isDemo = shelf.shown.value === shelf.demo;
  const leaveDemo = async () => {
    const left = await removeDemo(shelf);
    if (left.kind === 'saved') goTo('round');
    else trouble.value = words.storage.why(left.why);
  };
  if (from === 'file') {
    return (
      <div class={css.whose}>
        <p>{words.open.looking(logbook.player.name)}</p>
        <button type="button" class={press.press} onClick={putFileAway}>
          {words.open.away}
        </button>
      </div>
    );
  }
  if (!isDemo && !frozen) return null;
  return (
    <div class={css.whose}>
      {isDemo && <p>{words.open.demoShown}</p>}
      {frozen && <p>{words.yardages.frozen(moment(frozen.at), frozen.hash)}</p>}
      {frozen && !open.isAsFrozen && <p role="alert">{words.yardages.notAsFrozen}</p>}
      {isDemo && (
        <button type="button" class={press.press} onClick={() => void leaveDemo()}>
          {words.open.removeDemo}
        </button>
      )}
      {trouble.value && <p role="alert">{trouble.value}</p>}
    </div>
  );
}
