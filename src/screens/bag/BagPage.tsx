import { useSignal } from '@preact/signals';
import { putInBag, replaceInBag, startBag } from '../../actions/bagChanges.ts';
import { bagGate } from '../../golf/bagGate.ts';
import type { Club } from '../../golf/club.ts';
import type { Round } from '../../golf/round.ts';
import { clubName } from '../clubName.ts';
import { openBook } from '../openBook.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { UndoBar } from '../round/UndoBar.tsx';
import { addressOf, goTo } from '../route.ts';
import { unit } from '../unit.ts';
import { useKeeper } from '../useShelf.ts';
import { bagWords } from '../words/bag.ts';
import { words } from '../words.ts';
import css from './BagPage.module.css';
import { isBagHeld, whyNotIn } from './bagLaw.ts';
import { ClubRow } from './ClubRow.tsx';
import { clubsInOrder } from './clubsInOrder.ts';
import { ReplaceClub } from './ReplaceClub.tsx';
import { whyClub } from './whyClub.ts';

interface Props {
  readonly clubs: readonly Club[];
  readonly today: string;
  /** The clubs are those of a file that is only looked at. */
  readonly isFile: boolean;
  /** The round being played; null: none. */
  readonly round: Round | null;
}

/** Every club in loft order with its stock number beside it, and those out of the bag under them. */
export function BagPage({ clubs, today, isFile, round }: Props) {
  const keeper = useKeeper();
  const trouble = useSignal<string | null>(null);
  /** The club that may only come in the place of a damaged one; null: none is asked about. */
  const asking = useSignal<string | null>(null);
  const inOrder = clubsInOrder(clubs, today);
  const inBag = inOrder.filter(({ club }) => club.inBag);
  const outOfBag = inOrder.filter(({ club }) => !club.inBag);
  const gate = bagGate(clubs);
  const book = openBook.value;
  const cells = book.kind === 'ready' ? book.book.cells : [];
  const hasOwnShots = cells.some((cell) => cell.shots > 0);
  const putIn = async (clubId: string) => {
    const why = whyNotIn(round, clubs, clubId);
    if (why) {
      trouble.value = why;
      asking.value = clubId;
      return;
    }
    const put = await putInBag(keeper, clubId, true);
    trouble.value =
      put.kind === 'unsaved' ? words.storage.why(put.why) : put.kind === 'refused' ? whyClub(put.why) : null;
  };
  const replace = async (clubId: string, by: string) => {
    const put = await replaceInBag(keeper, clubId, by, 'damaged without abuse');
    asking.value = null;
    trouble.value =
      put.kind === 'unsaved' ? words.storage.why(put.why) : put.kind === 'refused' ? whyClub(put.why) : null;
  };
  const by = outOfBag.find(({ club }) => club.id === asking.value);
  const begin = async () => {
    const begun = await startBag(keeper, 'typical');
    if (begun.kind === 'saved') goTo('bag', 'anchors');
    else if (begun.kind === 'unsaved') trouble.value = words.storage.why(begun.why);
  };
  const cellOf = (clubId: string, specId: string) =>
    cells.find((cell) => cell.clubId === clubId && cell.specId === specId && cell.swing === 'full');
  const sub = isFile ? bagWords.looked(gate.clubs) : bagWords.sub(gate.clubs, words.units[unit.value].long);
  return (
    <>
      <PageHead title={bagWords.title} sub={sub} />
      <div class={css.page}>
        {gate.kind === 'too many' && (
          <p class={css.warn} role="alert">
            {bagWords.tooMany(gate.clubs, gate.over)}
          </p>
        )}
        {isBagHeld(round) && <p class={css.note}>{bagWords.byTheRules}</p>}
        <p role="alert" class={css.warn}>
          {trouble.value}
        </p>
        {clubs.length === 0 && (
          <section class={css.empty}>
            <p>{bagWords.empty}</p>
            {!isFile && (
              <>
                <p class={css.note}>{bagWords.typicalWhy}</p>
                <button type="button" class={`${press.press} ${press.main}`} onClick={() => void begin()}>
                  {bagWords.typical}
                </button>
              </>
            )}
          </section>
        )}
        {inBag.length > 0 && (
          <ul class={css.list} aria-label={bagWords.inBag}>
            {inBag.map(({ club, spec }) => (
              <li key={club.id}>
                <ClubRow club={club} spec={spec} cell={cellOf(club.id, spec.id)} isLink={!isFile} />
              </li>
            ))}
          </ul>
        )}
        {!isFile && (
          <div class={css.keys}>
            <a class={`${press.press} ${clubs.length > 0 ? press.main : ''}`} href={addressOf('bag', 'new')}>
              {clubs.length > 0 ? bagWords.add : bagWords.first}
            </a>
            {clubs.length > 0 && !hasOwnShots && (
              <a class={press.press} href={addressOf('bag', 'anchors')}>
                {bagWords.anchors}
              </a>
            )}
          </div>
        )}
        {by && (
          <ReplaceClub
            by={by}
            carried={inBag}
            onChoose={(clubId) => void replace(clubId, by.club.id)}
            onNone={() => {
              asking.value = null;
              trouble.value = null;
            }}
          />
        )}
        {outOfBag.length > 0 && (
          <section aria-labelledby="out-of-bag">
            <h2 class={css.title} id="out-of-bag">
              {bagWords.outOfBag}
            </h2>
            <ul class={css.list}>
              {outOfBag.map(({ club, spec }) => (
                <li key={club.id} class={css.out}>
                  <ClubRow club={club} spec={spec} cell={undefined} isLink={!isFile} />
                  {!isFile && (
                    <button
                      type="button"
                      class={press.press}
                      aria-label={bagWords.putInWhat(clubName(club, spec))}
                      onClick={() => void putIn(club.id)}
                    >
                      {bagWords.putIn}
                    </button>
                  )}
                </li>
              ))}
            </ul>
          </section>
        )}
        {!isFile && <UndoBar keeper={keeper} />}
      </div>
    </>
  );
}
