import type { BookCell } from '../../book/book.ts';
import { clubName } from '../clubName.ts';
import { words } from '../words.ts';
import css from './ClubCard.module.css';
import { Ladder, type Scale } from './Ladder.tsx';
import type { BookLayout, Row } from './layOutBook.ts';
import { numberAddress } from './numberAddress.ts';
import { Stock } from './Stock.tsx';

function scaleOf(rows: readonly Row[]): Scale | null {
  const cells = rows.flatMap(({ slots }) =>
    slots.flatMap((slot): BookCell[] => (slot.kind === 'number' ? [slot.cell] : [])),
  );
  if (cells.length === 0) return null;
  const low = Math.min(...cells.map(({ next_m }) => next_m[1]));
  const high = Math.max(...cells.map(({ next_m }) => next_m[17]));
  return { low, high };
}

/** Every club of the bag in loft order with its full swing: the card that goes round with the golfer. */
export function ClubCard({ layout, asOf }: { readonly layout: BookLayout; readonly asOf: string }) {
  const scale = scaleOf(layout.card);
  return (
    <section aria-labelledby="full-swings">
      <h2 class={css.title} id="full-swings">
        {words.yardages.card}
      </h2>
      <ul class={css.card}>
        {layout.card.map(({ club, spec, slots: [slot] }) => (
          <li key={club.id}>
            {slot.kind === 'number' ? (
              <a class={css.row} href={numberAddress(club, slot.cell, asOf)}>
                <span class={css.club}>{clubName(club, spec)}</span>
                {scale && <Ladder cell={slot.cell} scale={scale} />}
                <Stock cell={slot.cell} />
              </a>
            ) : (
              <span class={css.row}>
                <span class={css.club}>{clubName(club, spec)}</span>
                <span class={css.none}>
                  {slot.kind === 'not played' ? words.yardages.notPlayed : words.yardages.noNumber}
                </span>
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
