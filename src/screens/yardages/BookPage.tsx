import { dayWithYear } from '../day.ts';
import { DisplayChoices } from '../more/DisplayChoices.tsx';
import type { ReadyBook } from '../openBook.ts';
import { Cautions } from '../parts/Cautions.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import press from '../parts/Press.module.css';
import { addressOf } from '../route.ts';
import { unit } from '../unit.ts';
import { cardWords } from '../words/card.ts';
import { searchWords } from '../words/search.ts';
import { words } from '../words.ts';
import { Asides } from './Asides.tsx';
import css from './BookPage.module.css';
import { ClubCard } from './ClubCard.tsx';
import type { BookLayout } from './layOutBook.ts';
import { WedgeMatrix } from './WedgeMatrix.tsx';
import { WhoseBook } from './WhoseBook.tsx';

interface Props {
  readonly open: ReadyBook;
  readonly layout: BookLayout;
}

/** The whole book on one sheet: wedges first, where the hand is, then the card; side by side where there is room. */
export function BookPage({ open, layout }: Props) {
  const {
    book,
    of: { logbook },
  } = open;
  const { long, short } = words.units[unit.value];
  const shots = book.cells.reduce((sum, cell) => sum + cell.shots, 0);
  return (
    <>
      <PageHead
        title={words.yardages.title}
        sub={`${words.yardages.whose(logbook.player.name)}. ${words.yardages.sub(long, shots, dayWithYear(book.asOf))}`}
      />
      <WhoseBook open={open} />
      {layout.card.length === 0 && <p class={css.note}>{words.yardages.noClubs}</p>}
      <div class={css.columns}>
        <div class={css.wedges}>
          {layout.wedges.length > 0 && <WedgeMatrix layout={layout} asOf={book.asOf} />}
          <p class={css.note}>{words.yardages.howTo(short)}</p>
          <p class={css.ways}>
            {open.of.frozen === null && (
              <a class={press.press} href={addressOf('yardages', 'search')}>
                {searchWords.title}
              </a>
            )}
            <a class={press.press} href={addressOf('yardages', 'card')}>
              {cardWords.title}
            </a>
          </p>
        </div>
        <div class={css.card}>{layout.card.length > 0 && <ClubCard layout={layout} asOf={book.asOf} />}</div>
        <Asides layout={layout} asOf={book.asOf} />
      </div>
      <footer class={css.foot}>
        <p class={css.standard}>{words.yardages.standard}</p>
        <DisplayChoices />
        <Cautions />
        <p>
          <a class={press.press} href={addressOf('open')}>
            {words.open.another}
          </a>
        </p>
      </footer>
    </>
  );
}
