import { useSignal } from '@preact/signals';
import { markDone } from '../../actions/markDone.ts';
import type { Logbook } from '../../golf/logbook.ts';
import type { Review } from '../../golf/review.ts';
import { taskProgress } from '../../golf/taskProgress.ts';
import { liveLogbook } from '../../logbook/live.ts';
import { dayWithYear } from '../day.ts';
import { lookedAt } from '../openLogbook.ts';
import press from '../parts/Press.module.css';
import { useKeeper } from '../useShelf.ts';
import { handOverWords } from '../words/handOver.ts';
import { words as allWords } from '../words.ts';
import { ProposalKey } from './ProposalKey.tsx';
import css from './Team.module.css';

const words = handOverWords.reviews;

/** One review as the golfer reads it: who wrote it, the note, the task with its count, and the key that marks it done. */
export function ReviewLine({
  review,
  logbook,
  about,
}: {
  readonly review: Review;
  readonly logbook: Logbook;
  readonly about: string | null;
}) {
  const keeper = useKeeper();
  const trouble = useSignal('');
  const isOwn = lookedAt.value === null;
  const asOf = lookedAt.value?.asOf ?? new Date(keeper.clock.now()).toISOString();
  const { task } = review;
  const progress = task && taskProgress(review, logbook, asOf);
  const mark = async (isDone: boolean) => {
    const marked = await markDone(keeper, review.id, isDone);
    trouble.value = marked.kind === 'unsaved' ? words.notSaved(allWords.storage.why(marked.why)) : '';
  };
  return (
    <li data-review={review.id}>
      <div>
        <p class={css.quiet}>
          {[about, words.by(review.by, dayWithYear(review.at ?? review.changedAt))].filter(Boolean).join(' · ')}
        </p>
        {review.note && <p>{review.note}</p>}
        {isOwn && <ProposalKey review={review} logbook={logbook} />}
        {task && progress && (
          <p>
            <b>{words.task(task.balls, task.due && dayWithYear(task.due))}</b>: {words.progress(progress)}{' '}
            {progress.isDone && words.isDone(dayWithYear(progress.doneAt ?? asOf))}
          </p>
        )}
        {trouble.value && <p role="alert">{trouble.value}</p>}
      </div>
      {task && progress && isOwn && (
        <button type="button" class={press.press} onClick={() => void mark(!progress.isDone)}>
          {progress.isDone ? words.notDone : words.done}
        </button>
      )}
    </li>
  );
}

/** What a coach wrote about a number, beside that number; nothing when nothing was. */
export function ReviewsAbout({
  logbook: shown,
  clubId,
  swing,
}: {
  readonly logbook: Logbook;
  readonly clubId: string;
  readonly swing: string;
}) {
  const live = liveLogbook(useKeeper().connection).value;
  // The book follows shots; a task marked done changes no number, so it is read from the logbook itself.
  const logbook = lookedAt.value === null && live.kind === 'ready' ? live.value : shown;
  const reviews = logbook.reviews.filter(
    ({ about }) => about.clubId === clubId && (about.swing === null || about.swing === swing),
  );
  if (reviews.length === 0) return null;
  return (
    <section aria-labelledby="coach">
      <h2 id="coach">{words.about}</h2>
      <ul class={css.rows}>
        {reviews.map((review) => (
          <ReviewLine key={review.id} review={review} logbook={logbook} about={null} />
        ))}
      </ul>
    </section>
  );
}
