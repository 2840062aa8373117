import { useSignal } from '@preact/signals';
import { deleteTeam } from '../../actions/careTeam.ts';
import { deleteEverything } from '../../actions/deleteEverything.ts';
import { liveOpenRound } from '../../logbook/live.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { goBack, replaceWith } from '../route.ts';
import { teamKeeper } from '../team/teamKeeper.ts';
import { chooseTheme } from '../theme.ts';
import { useShelf } from '../useShelf.ts';
import { moreWords } from '../words/more.ts';
import { words } from '../words.ts';
import css from './More.module.css';
import { putFileAway } from './opening.ts';

const { erase: says } = moreWords;

/** The one thing that no undo takes back: it is done only after a word was typed. */
export function DeletePage() {
  const shelf = useShelf();
  const typed = useSignal('');
  const isWorking = useSignal(false);
  const trouble = useSignal<string | null>(null);
  const open = liveOpenRound(shelf.own.connection).value;
  const isMeant = typed.value.trim().toLowerCase() === says.word;
  const go = async () => {
    if (!isMeant || isWorking.value) return;
    isWorking.value = true;
    const own = await deleteEverything(shelf);
    const deleted = own.kind === 'saved' ? await deleteTeam(teamKeeper) : own;
    isWorking.value = false;
    if (deleted.kind === 'unsaved') {
      trouble.value = words.storage.why(deleted.why);
      return;
    }
    putFileAway();
    chooseTheme('auto');
    replaceWith('round');
  };
  return (
    <>
      <PageHead title={says.title} onBack={() => goBack('more')} />
      <div class={css.page}>
        <section class={css.group}>
          <p>{says.what}</p>
          {open.kind === 'ready' && open.value && <p class={css.warn}>{says.inRound}</p>}
          <Field
            label={says.type(says.word)}
            value={typed.value}
            onInput={(text) => {
              typed.value = text;
            }}
          />
          <div class={css.keys}>
            <button
              type="button"
              class={`${press.press} ${press.main}`}
              disabled={!isMeant || isWorking.value}
              onClick={() => void go()}
            >
              {isWorking.value ? says.working : says.go}
            </button>
          </div>
          <p role="alert" class={css.warn}>
            {trouble.value}
          </p>
        </section>
      </div>
    </>
  );
}
