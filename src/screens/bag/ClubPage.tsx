import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { removeClub } from '../../actions/bagChanges.ts';
import { localDay } from '../../actions/clock.ts';
import type { Keeper } from '../../actions/keeper.ts';
import { saveClub } from '../../actions/saveClub.ts';
import { type Club, specOn } from '../../golf/club.ts';
import { builtDifferently } from '../../golf/clubForm.ts';
import type { Round } from '../../golf/round.ts';
import { clubName } from '../clubName.ts';
import { openBook } from '../openBook.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { goBack, goTo } from '../route.ts';
import { unit } from '../unit.ts';
import { bagWords } from '../words/bag.ts';
import { words } from '../words.ts';
import { BuiltSince } from './BuiltSince.tsx';
import { isBagHeld, whyNotIn } from './bagLaw.ts';
import { ClubFields } from './ClubFields.tsx';
import css from './ClubPage.module.css';
import { blankClub, type ClubNumber, type ClubText, clubTextOf, readClub } from './clubText.ts';
import { EarlierBuilds } from './EarlierBuilds.tsx';
import { whyClub } from './whyClub.ts';

interface Props {
  readonly keeper: Keeper;
  /** The club to change; null: a new one, unless one was named that is not there. */
  readonly club: Club | null;
  readonly clubs: readonly Club[];
  readonly round: Round | null;
  readonly isNamed?: boolean;
}

/** Whether the logbook holds own shots with the club: then a change of build matters. */
function hasShots(clubId: string): boolean {
  const book = openBook.peek();
  return book.kind === 'ready' && book.of.logbook.shots.some((shot) => shot.clubId === clubId);
}

/** The page of one club: what it is, how it is built and since when, and whether it is in the bag. */
export function ClubPage({ keeper, club, clubs, round, isNamed = false }: Props) {
  const today = localDay(keeper.clock.now());
  const before = useMemo(() => (club ? { club, spec: specOn(club, today) } : null), []);
  const text = useSignal<ClubText>(before ? clubTextOf(before.club, before.spec, unit.peek()) : blankClub);
  const since = useSignal<string | null>(before && hasShots(before.club.id) ? today : null);
  const wrong = useSignal<ClubNumber | 'since' | null>(null);
  const trouble = useSignal<string | null>(null);
  const isSaving = useSignal(false);
  if (isNamed && !club && !isSaving.value) {
    return (
      <>
        <PageHead title={bagWords.title} onBack={() => goBack('bag')} />
        <p role="alert">{bagWords.gone}</p>
      </>
    );
  }
  const isHeld = isBagHeld(round);
  const read = readClub(text.value, before, unit.value);
  const isRebuilt = before !== null && read.kind === 'ok' && builtDifferently(before.spec, read.form.spec);
  const change = (changes: Partial<ClubText>) => {
    text.value = { ...text.value, ...changes };
    wrong.value = null;
    trouble.value = null;
  };
  const save = async () => {
    if (isSaving.value) return;
    if (read.kind === 'wrong') {
      wrong.value = read.field;
      return;
    }
    if (isRebuilt && since.value === '') {
      wrong.value = 'since';
      return;
    }
    const comesIn = read.form.inBag && !before?.club.inBag;
    const notNow = comesIn ? whyNotIn(round, clubs, before?.club.id ?? '') : null;
    if (notNow) {
      trouble.value = notNow;
      return;
    }
    isSaving.value = true;
    const saved = await saveClub(keeper, read.form, isRebuilt ? since.value : null);
    isSaving.value = false;
    if (saved.kind === 'saved') goTo('bag');
    else if (saved.kind === 'unsaved') trouble.value = words.storage.why(saved.why);
    else trouble.value = whyClub(saved.why);
  };
  const remove = async () => {
    if (!before) return;
    isSaving.value = true;
    const removed = await removeClub(keeper, before.club.id);
    if (removed.kind === 'saved') {
      goTo('bag');
      return;
    }
    isSaving.value = false;
    trouble.value = removed.kind === 'unsaved' ? words.storage.why(removed.why) : whyClub(removed.why);
  };
  const title = before ? clubName(before.club, before.spec) : bagWords.club.new;
  return (
    <>
      <PageHead title={title} onBack={() => goBack('bag')} />
      <div class={css.sheet}>
        {isHeld && before && <p class={css.quiet}>{bagWords.byTheRules}</p>}
        <ClubFields text={text.value} wrong={wrong.value} isHeld={isHeld && before !== null} onChange={change} />
        {isRebuilt && (
          <BuiltSince
            since={since.value}
            today={today}
            isWrong={wrong.value === 'since'}
            onChange={(day) => {
              since.value = day;
              wrong.value = null;
            }}
          />
        )}
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        <div class={css.keys}>
          <button
            type="button"
            class={`${press.press} ${press.main}`}
            disabled={isSaving.value}
            onClick={() => void save()}
          >
            {isSaving.value ? bagWords.club.saving : bagWords.club.save}
          </button>
          {before && (
            <button type="button" class={press.press} disabled={isSaving.value} onClick={() => void remove()}>
              {bagWords.club.remove}
            </button>
          )}
        </div>
        {before && <p class={css.quiet}>{bagWords.club.removeNote}</p>}
        {before && <EarlierBuilds club={before.club} present={before.spec} />}
      </div>
    </>
  );
}
