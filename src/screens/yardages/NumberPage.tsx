import { useEffect } from 'preact/hooks';
import type { Book, BookCell } from '../../book/book.ts';
import type { Club, SpecPeriod } from '../../golf/club.ts';
import type { Logbook } from '../../golf/logbook.ts';
import type { Shot } from '../../golf/shot.ts';
import { NextBallPicture } from '../charts/NextBallPicture.tsx';
import { clubName, swingName } from '../clubName.ts';
import { distanceWithUnit, plusMinus, wholeDistance } from '../distance.ts';
import { PageHead } from '../parts/PageHead.tsx';
import { goBack } from '../route.ts';
import { ReviewsAbout } from '../team/ReviewsAbout.tsx';
import { unit } from '../unit.ts';
import { words } from '../words.ts';
import { Beside } from './Beside.tsx';
import css from './NumberPage.module.css';
import { ShotsBehind } from './ShotsBehind.tsx';
import { Stock } from './Stock.tsx';

interface Props {
  readonly logbook: Logbook;
  readonly book: Book;
  readonly club: Club;
  readonly spec: SpecPeriod;
  readonly cell: BookCell;
  readonly shown: readonly BookCell[];
  /** A round by the Rules is being played: no neighbours, only the number itself. */
  readonly isFrozen: boolean;
}

/** Leads back to the card. */
export function backToCard(): void {
  goBack('yardages');
}

/** The shots behind a number, newest first. */
function shotsOf(logbook: Logbook, cell: BookCell): Shot[] {
  const ids = new Set(cell.shotIds);
  const dates = new Map(logbook.rounds.map((round) => [round.id, round.date]));
  const when = (shot: Shot) => `${dates.get(shot.roundId) ?? ''} ${shot.at ?? ''}`;
  return logbook.shots.filter((shot) => ids.has(shot.id)).sort((a, b) => (when(a) < when(b) ? 1 : -1));
}

/** What stands behind one number: the picture of the next ball, the same in words, and the shots it rests on. */
export function NumberPage({ logbook, book, club, spec, cell, shown, isFrozen }: Props) {
  useEffect(() => {
    const leave = (event: KeyboardEvent) => {
      if (event.key === 'Escape') backToCard();
    };
    addEventListener('keydown', leave);
    return () => removeEventListener('keydown', leave);
  }, []);
  const shots = shotsOf(logbook, cell);
  const marks = shots.flatMap(({ carry, strike }) =>
    carry ? [{ carry: carry.m, isSolid: strike === null || strike === 'solid' }] : [],
  );
  const stockWords = cell.shots > 0 ? words.number.stockWords : words.number.borrowedWords;
  const say = (length: BookCell['stock_m']) => distanceWithUnit(length, unit.value);
  const claimWords = (claim: BookCell['stock_m']) =>
    cell.shots === 0
      ? words.number.claimed(say(claim))
      : words.number.claimedAgainst(
          say(claim),
          cell.shots,
          wholeDistance(cell.stock_m, unit.value),
          plusMinus(cell.lo80_m, cell.hi80_m, unit.value),
        );
  return (
    <>
      <PageHead
        title={words.number.title(clubName(club, spec), swingName(cell.swing))}
        sub={words.number.sub(words.loft(spec.loft_deg), words.units[unit.value].long)}
        onBack={backToCard}
      />
      <div class={css.columns}>
        <div>
          <div class={css.key}>
            <Stock cell={cell} />
            <p>{stockWords(say(cell.stock_m), say(cell.lo80_m), say(cell.hi80_m))}</p>
          </div>
          <section aria-labelledby="next-ball">
            <h2 id="next-ball">{words.number.nextTitle}</h2>
            <p>{words.number.next(say(cell.next_m[1]), say(cell.next_m[17]), say(cell.next_m[9]))}</p>
            <NextBallPicture cell={cell} marks={marks} unit={unit.value} />
          </section>
        </div>
        <div>
          <section aria-labelledby="where-from">
            <h2 id="where-from">{words.number.borrowedTitle}</h2>
            <p>
              {words.number.borrowed(cell.borrowed, cell.shots)} {cell.shots > 0 && words.number.own(cell.own)}{' '}
              {cell.swing === 'full' && club.claimed_m !== null && claimWords(club.claimed_m)}
            </p>
          </section>
          {!isFrozen && <ReviewsAbout logbook={logbook} clubId={cell.clubId} swing={cell.swing} />}
          {!isFrozen && <Beside logbook={logbook} book={book} cell={cell} shown={shown} />}
          <ShotsBehind logbook={logbook} book={book} cell={cell} shots={shots} />
        </div>
      </div>
    </>
  );
}
