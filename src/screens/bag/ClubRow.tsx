import type { BookCell } from '../../book/book.ts';
import type { Club, SpecPeriod } from '../../golf/club.ts';
import { inchesFromMetres } from '../../units/inches.ts';
import { clubName } from '../clubName.ts';
import { addressOf } from '../route.ts';
import { bagWords } from '../words/bag.ts';
import { words } from '../words.ts';
import { Stock } from '../yardages/Stock.tsx';
import css from './BagPage.module.css';

interface Props {
  readonly club: Club;
  readonly spec: SpecPeriod;
  /** Its full swing in the book; undefined: none. */
  readonly cell: BookCell | undefined;
  readonly isLink: boolean;
}

/** One club: its name, what it is, and its stock number; of the putter its length. */
export function ClubRow({ club, spec, cell, isLink }: Props) {
  const length =
    spec.length_m === null ? null : bagWords.length(Math.round(inchesFromMetres(spec.length_m) * 100) / 100);
  const what = [words.kinds[club.kind], words.loft(spec.loft_deg), club.kind === 'putter' ? null : spec.shaft];
  const inside = (
    <>
      <span>
        <span class={css.name}>{clubName(club, spec)}</span>
        <span class={css.what}>{what.filter(Boolean).join(' · ')}</span>
      </span>
      {club.kind === 'putter' ? <span class={css.what}>{length}</span> : cell && <Stock cell={cell} />}
    </>
  );
  return isLink ? (
    <a class={css.row} href={addressOf('bag', 'club', club.id)}>
      {inside}
    </a>
  ) : (
    <span class={css.row}>{inside}</span>
  );
}
