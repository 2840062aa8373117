import { useComputed } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { specOn } from '../../golf/club.ts';
import { Card } from '../card/Card.tsx';
import { openBook, reckonBook } from '../openBook.ts';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf, type Route } from '../route.ts';
import { words } from '../words.ts';
import { BookPage } from './BookPage.tsx';
import { layOutBook, numbersOf } from './layOutBook.ts';
import { backToCard, NumberPage } from './NumberPage.tsx';
import { NumberSearch } from './NumberSearch.tsx';
import css from './Yardages.module.css';

/** The number last looked into, so that coming back the focus stands on it again. */
let lastLookedInto = '';

/** The place where numbers are looked up: the card, and behind each number its own page. */
export function Yardages({ path }: { readonly path: Route }) {
  const layout = useComputed(() => {
    const state = openBook.value;
    return state.kind === 'ready' ? layOutBook(state.of.logbook, state.book) : null;
  });
  const address = addressOf('yardages', ...path);
  const isCard = path.length === 0;
  const isReady = layout.value !== null;
  useEffect(() => {
    if (!isCard) lastLookedInto = address;
    else if (isReady) {
      const number = [...document.querySelectorAll('a')].find((link) => link.getAttribute('href') === lastLookedInto);
      number?.focus({ preventScroll: true });
      lastLookedInto = '';
    }
  }, [address, isCard, isReady]);

  const state = openBook.value;
  if (state.kind !== 'ready' || !layout.value) {
    return (
      <>
        <PageHead title={words.yardages.title} />
        <p class={css.state} role="status">
          {state.kind === 'failed' ? words.yardages.failed(state.why) : words.yardages.reckoning}
        </p>
        {state.kind === 'failed' && (
          <button type="button" class={press.press} onClick={() => void reckonBook()}>
            {words.yardages.again}
          </button>
        )}
      </>
    );
  }
  if (isCard) return <BookPage open={state} layout={layout.value} />;
  if (path[0] === 'search') return <NumberSearch />;
  if (path[0] === 'card') return <Card path={path.slice(1)} />;
  const { logbook } = state.of;

  const [clubId, swing, specId] = path;
  const club = logbook.clubs.find((club) => club.id === clubId);
  const spec = club && (club.specPeriods.find((spec) => spec.id === specId) ?? specOn(club, state.book.asOf));
  const cell = state.book.cells.find(
    (cell) => cell.clubId === clubId && cell.swing === swing && cell.specId === spec?.id,
  );
  if (!club || !spec || !cell) {
    return (
      <>
        <PageHead title={words.yardages.title} onBack={backToCard} />
        <p class={css.state}>{words.number.gone}</p>
        <a class={press.press} href={addressOf('yardages')}>
          {words.number.toCard}
        </a>
      </>
    );
  }
  const shown = [...new Set(numbersOf([...layout.value.card, ...layout.value.wedges]))];
  return (
    <NumberPage
      key={address}
      logbook={logbook}
      book={state.book}
      club={club}
      spec={spec}
      cell={cell}
      shown={shown}
      isFrozen={state.of.frozen !== null}
    />
  );
}
