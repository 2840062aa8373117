import { useSignal } from '@preact/signals';
import { BAG_LIMIT } from '../../golf/bagGate.ts';
import { liveOpenRound, liveSettings } from '../../logbook/live.ts';
import { moment } from '../day.ts';
import { openBook } from '../openBook.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { Field } from '../round/Field.tsx';
import { weatherWords } from '../round/weatherWords.ts';
import { addressOf, goBack } from '../route.ts';
import { unit } from '../unit.ts';
import { useShelf } from '../useShelf.ts';
import { cardWords as words } from '../words/card.ts';
import { words as allWords } from '../words.ts';
import { layOutBook } from '../yardages/layOutBook.ts';
import { CardAlso } from './CardAlso.tsx';
import { CardClubs } from './CardClubs.tsx';
import css from './CardSheet.module.css';
import { CardWedges } from './CardWedges.tsx';

/** The conditions of the round that is open, in words; empty when none is. */
function useConditions(): string {
  const shelf = useShelf();
  const { connection } = shelf.shown.value;
  const open = liveOpenRound(connection).value;
  const settings = liveSettings(shelf.own.connection).value;
  if (open.kind !== 'ready' || !open.value || settings.kind !== 'ready') return '';
  return weatherWords(open.value.round.conditions, settings.value);
}

/** The book as a card for the pocket: fourteen clubs, the wedge matrix and the day's conditions on one side. */
export function CardSheet() {
  const known = useConditions();
  const typed = useSignal<string | null>(null);
  const state = openBook.value;
  const head = <PageHead title={words.title} sub={words.sub} onBack={() => goBack('yardages')} />;
  if (state.kind !== 'ready') {
    return (
      <>
        {head}
        <p role="status">{state.kind === 'reckoning' ? allWords.yardages.reckoning : words.noBook}</p>
      </>
    );
  }
  const {
    book,
    of: { logbook, frozen },
  } = state;
  const layout = layOutBook(logbook, book);
  const inBag = logbook.clubs.filter((club) => club.inBag);
  const conditions = typed.value ?? known;
  return (
    <>
      <div class={css.controls}>
        {head}
        <Field
          label={words.conditions}
          note={words.conditionsNote}
          value={conditions}
          maxLength={60}
          onInput={(value) => {
            typed.value = value;
          }}
        />
        {inBag.length > BAG_LIMIT && <p role="alert">{words.tooMany(inBag.length)}</p>}
        <p class={css.keys}>
          <button type="button" class={`${press.press} ${press.main}`} onClick={() => print()}>
            {words.print}
          </button>
          <a class={press.press} href={addressOf('yardages', 'card', 'shots')}>
            {words.toSheet}
          </a>
        </p>
        <p class={css.quiet}>{words.printNote}</p>
      </div>
      <article class={css.card} aria-label={words.title}>
        <header class={css.head}>
          <h2>{words.owner(logbook.player.name)}</h2>
          <p>{words.asOf(moment(book.asOf), frozen?.hash?.slice(0, 8) ?? null)}</p>
          <p class={css.today}>{conditions ? words.today(conditions) : words.todayOpen}</p>
        </header>
        <CardClubs layout={layout} putters={inBag.filter((club) => club.kind === 'putter')} asOf={book.asOf} />
        {layout.wedges.length > 0 && <CardWedges layout={layout} />}
        <CardAlso layout={layout} />
        <footer class={css.foot}>
          <p>
            {words.unit(allWords.units[unit.value].short)} {words.standard}
          </p>
        </footer>
      </article>
    </>
  );
}
