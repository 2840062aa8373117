import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { takeReview } from '../../actions/takeReview.ts';
import { specOn } from '../../golf/club.ts';
import type { Review } from '../../golf/review.ts';
import { liveLogbook } from '../../logbook/live.ts';
import { clubName, swingName } from '../clubName.ts';
import { dayWithYear } from '../day.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { goBack } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { handOverWords } from '../words/handOver.ts';
import { teamWords } from '../words/team.ts';
import { words as allWords } from '../words.ts';
import { isByTheRules } from './isByTheRules.ts';
import { QrReader } from './QrReader.tsx';
import { ReviewLine } from './ReviewsAbout.tsx';
import css from './Team.module.css';

const words = handOverWords.reviews;

/** The golfer's side of reviews: what coaches wrote, open tasks first, and where a review is taken in. */
export function ReviewsPage() {
  const shelf = useShelf();
  const keeper = shelf.shown.value;
  const live = liveLogbook(keeper.connection).value;
  const news = useSignal('');
  const picker = useRef<HTMLInputElement>(null);
  const isOff = isByTheRules(shelf);
  const take = async (text: string) => {
    const taken = await takeReview(keeper, text);
    if (taken.kind === 'saved') news.value = words.taken(taken.value);
    else news.value = taken.kind === 'refused' ? words.notTaken(taken.why) : allWords.storage.why(taken.why);
  };
  const pick = async () => {
    const field = picker.current;
    const files = [...(field?.files ?? [])];
    if (field) field.value = '';
    for (const file of files) await take(await file.text());
  };
  const head = <PageHead title={words.title} sub={words.sub} onBack={() => goBack('team')} />;
  if (live.kind !== 'ready') {
    return (
      <>
        {head}
        <p role="status">{live.kind === 'failed' ? allWords.storage.why(live.why) : handOverWords.share.reading}</p>
      </>
    );
  }
  const logbook = live.value;
  const aboutWords = ({ about }: Review): string => {
    const club = logbook.clubs.find(({ id }) => id === about.clubId);
    const round = logbook.rounds.find(({ id }) => id === about.roundId);
    return (
      [
        club && clubName(club, specOn(club, new Date(keeper.clock.now()).toISOString())),
        about.swing && swingName(about.swing),
        round && words.aboutRound(`${dayWithYear(round.date)}${round.course ? `, ${round.course}` : ''}`),
      ]
        .filter(Boolean)
        .join(' ') || words.aboutAll
    );
  };
  const done = new Set(logbook.done.map(({ reviewId }) => reviewId));
  const isOpen = (review: Review) => (review.task !== null && !done.has(review.id) ? 0 : 1);
  const reviews = logbook.reviews.toSorted(
    (a, b) => isOpen(a) - isOpen(b) || ((a.at ?? a.changedAt) < (b.at ?? b.changedAt) ? 1 : -1),
  );
  return (
    <>
      {head}
      <section class={css.group}>
        {reviews.length === 0 && <p>{words.none}</p>}
        <ul class={css.rows}>
          {reviews.map((review) => (
            <ReviewLine key={review.id} review={review} logbook={logbook} about={aboutWords(review)} />
          ))}
        </ul>
      </section>
      {isOff ? (
        <p class={css.group}>{teamWords.byTheRules}</p>
      ) : (
        <>
          <section class={css.group}>
            <div class={css.keys}>
              <input
                ref={picker}
                class={css.picker}
                id="review-file"
                type="file"
                multiple
                accept=".json,.txt,application/json,text/plain"
                onChange={() => void pick()}
              />
              <label class={press.press} for="review-file">
                {words.pick}
              </label>
            </div>
            <p role="status">{news.value}</p>
          </section>
          <QrReader onText={(text) => void take(text)} />
        </>
      )}
    </>
  );
}
