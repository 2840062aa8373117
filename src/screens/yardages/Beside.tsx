import type { Book, BookCell, BookGap } from '../../book/book.ts';
import { specOn } from '../../golf/club.ts';
import type { Logbook } from '../../golf/logbook.ts';
import { clubName, swingName } from '../clubName.ts';
import { distanceWithUnit, inUnit, plusMinus } from '../distance.ts';
import { unit } from '../unit.ts';
import { figure, words } from '../words.ts';
import css from './NumberPage.module.css';
import { gapsOf, nearestNumbers } from './nearestNumbers.ts';
import { numberAddress } from './numberAddress.ts';

interface Props {
  readonly logbook: Logbook;
  readonly book: Book;
  readonly cell: BookCell;
  /** The numbers on card and matrix. */
  readonly shown: readonly BookCell[];
}

/** What stands beside a number: the gaps to the neighbouring clubs, and the next numbers up and down. */
export function Beside({ logbook, book, cell, shown }: Props) {
  const clubs = new Map(logbook.clubs.map((club) => [club.id, club]));
  const { above, below } = nearestNumbers(shown, cell);

  const gapWords = (gap: BookGap) => {
    const isLonger = gap.shorter === cell.clubId;
    const club = clubs.get(isLonger ? gap.longer : gap.shorter);
    if (!club) return null;
    const name = clubName(club, specOn(club, book.asOf));
    const isWide = gap.verdict === 'wide gap' || gap.verdict === 'possibly wide';
    const range = [gap.lo80_m, gap.hi80_m].map((end) => figure(Math.round(inUnit(end, unit.value))));
    return (
      <li key={gap.longer}>
        <b>{isLonger ? words.number.longer : words.number.shorter}.</b>{' '}
        {words.number.gap(name, distanceWithUnit(gap.gap_m, unit.value), range[0], range[1])}{' '}
        {words.number.verdict[gap.verdict](isWide ? gap.pWide : gap.pSame)}
      </li>
    );
  };

  const nearest = (other: BookCell | undefined) => {
    const club = other && clubs.get(other.clubId);
    if (!other || !club) return null;
    return (
      <li>
        <a class={css.near} href={numberAddress(club, other, book.asOf)}>
          <span>{words.number.title(clubName(club, specOn(club, book.asOf)), swingName(other.swing))}</span>
          <span>
            <b>{distanceWithUnit(other.stock_m, unit.value)}</b> ± {plusMinus(other.lo80_m, other.hi80_m, unit.value)}
          </span>
        </a>
      </li>
    );
  };

  const gaps = gapsOf(book, cell);
  return (
    <section aria-labelledby="beside">
      <h2 id="beside">{words.number.gapsTitle}</h2>
      {gaps.length > 0 && <ul class={css.gaps}>{gaps.map(gapWords)}</ul>}
      {(above || below) && (
        <>
          <p class={css.quiet}>{words.number.nearest}</p>
          <ul class={css.nearest}>
            {nearest(above)}
            {nearest(below)}
          </ul>
        </>
      )}
    </section>
  );
}
