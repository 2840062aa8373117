import { useComputed, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { localDay } from '../../actions/clock.ts';
import { noteHanded, reviewFileFor, withdrawReview } from '../../actions/reviewPlayer.ts';
import { proposalOf } from '../../golf/proposal.ts';
import type { TaskProgress } from '../../golf/taskProgress.ts';
import type { StoredMember, StoredReview } from '../../logbook/teamStore.ts';
import { compute } from '../../worker/compute.ts';
import { dayWithYear } from '../day.ts';
import press from '../parts/Press.module.css';
import { handOverWords } from '../words/handOver.ts';
import { paperSheetWords } from '../words/paperSheet.ts';
import { words as allWords } from '../words.ts';
import { fileStem } from './fileStem.ts';
import { QrCodes } from './QrCodes.tsx';
import { canSend, keepFile, sendFile } from './sendFile.ts';
import css from './Team.module.css';
import { teamKeeper } from './teamKeeper.ts';
import { bookText, momentOf } from './teamPages.ts';

const words = handOverWords.write;
const share = handOverWords.share;

interface Props {
  readonly member: StoredMember;
  readonly name: string;
  readonly reviews: readonly StoredReview[];
  readonly aboutWords: (review: StoredReview['review']) => string;
}

/** How far the golfer's tasks have come by the shots of the book that is here. */
function useProgress(member: StoredMember, reviews: readonly StoredReview[]): readonly TaskProgress[] | null {
  const progress = useSignal<readonly TaskProgress[] | null>(null);
  const key = `${member.hash} ${reviews.map(({ id }) => id).join(' ')}`;
  useEffect(() => {
    let isNewest = true;
    const reckon = async () => {
      const book = await bookText(member.playerId);
      if (!book?.text) return;
      const counted = await compute(
        'teamProgress',
        book.text,
        reviews.map(({ review }) => review),
        momentOf(member).at,
      );
      if (isNewest) progress.value = counted;
    };
    progress.value = null;
    reckon().catch((error) => console.error('progress of tasks', error));
    return () => {
      isNewest = false;
    };
  }, [key]);
  return progress.value?.length === reviews.length ? progress.value : null;
}

/** What was written for a golfer, how far it has come, and the keys that hand it back. */
export function HandBack({ member, name, reviews, aboutWords }: Props) {
  const news = useSignal('');
  const codes = useSignal<string | null>(null);
  const named = useSignal(false);
  const fileName = useComputed(
    () => `${fileStem('carrybook-review', localDay(teamKeeper.clock.now()), named.value ? name : '')}.json`,
  );
  const progress = useProgress(member, reviews);
  const done = new Set(member.done);
  const text = async (): Promise<string | null> => {
    const file = await reviewFileFor(teamKeeper, member.playerId);
    if (file.kind === 'saved') return file.value;
    news.value = allWords.storage.why(file.why);
    return null;
  };
  const hand = async (how: 'keep' | 'send' | 'codes') => {
    const review = await text();
    if (review === null) return;
    const sending = { text: review, name: fileName.value, type: 'application/json' } as const;
    try {
      if (how === 'codes') codes.value = review.trim();
      else if (how === 'keep') keepFile(sending);
      else if (!(await sendFile(sending))) return;
      if (how !== 'codes') news.value = share.done(sending.name);
      await noteHanded(teamKeeper, member.playerId);
    } catch (error) {
      news.value = share.failed(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section class={css.group} aria-labelledby="written">
      <h2 id="written">{words.here}</h2>
      {reviews.length === 0 && <p class={css.quiet}>{words.none}</p>}
      <ul class={css.rows}>
        {reviews.map(({ id, review, handedAt }, i) => (
          <li key={id}>
            <div>
              <p>
                <b>{aboutWords(review)}</b> · {review.at && dayWithYear(review.at)} ·{' '}
                {handedAt ? words.handed(dayWithYear(handedAt)) : words.notHanded}
              </p>
              {review.note && <p>{review.note}</p>}
              {proposalOf(review) && <p>{paperSheetWords.title}</p>}
              {review.task && (
                <p>
                  {handOverWords.reviews.task(review.task.balls, review.task.due && dayWithYear(review.task.due))}:{' '}
                  {progress ? handOverWords.reviews.progress(progress[i]) : words.unknownProgress}{' '}
                  {done.has(id) && handOverWords.reviews.isDone(dayWithYear(progress?.[i].doneAt ?? member.asOf))}
                </p>
              )}
            </div>
            {handedAt === null && (
              <button type="button" class={press.press} onClick={() => void withdrawReview(teamKeeper, id)}>
                {words.withdraw}
              </button>
            )}
          </li>
        ))}
      </ul>
      {reviews.length > 0 && (
        <>
          <h3>{words.handBack}</h3>
          <label class={css.check}>
            <input
              type="checkbox"
              checked={named.value}
              onChange={(event) => {
                named.value = event.currentTarget.checked;
              }}
            />
            {words.nameInFile}
          </label>
          <div class={css.keys}>
            {canSend('application/json') && (
              <button type="button" class={press.press} onClick={() => void hand('send')}>
                {share.send}
              </button>
            )}
            <button type="button" class={press.press} onClick={() => void hand('keep')}>
              {share.keep}
            </button>
            <button type="button" class={press.press} onClick={() => void hand('codes')}>
              {share.codes}
            </button>
          </div>
          <p role="status">{news.value}</p>
          {codes.value !== null && <QrCodes text={codes.value} />}
        </>
      )}
    </section>
  );
}
