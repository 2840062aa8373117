import { clubName } from '../clubName.ts';
import { unit } from '../unit.ts';
import { words } from '../words.ts';
import css from './ClubCard.module.css';
import { Ladder, LadderFigures, ladderScale } from './Ladder.tsx';
import { type BookLayout, numbersOf } from './layOutBook.ts';
import { numberAddress } from './numberAddress.ts';
import { Stock } from './Stock.tsx';

/** Every club of the bag in loft order with its full swing: the card that goes round with the golfer. */
export function ClubCard({ layout, asOf }: { readonly layout: BookLayout; readonly asOf: string }) {
  const cells = numbersOf(layout.card);
  const scale = cells.length > 0 && ladderScale(cells, unit.value);
  return (
    <section aria-labelledby="full-swings">
      <h2 class={css.title} id="full-swings">
        {words.yardages.card}
      </h2>
      {scale && (
        <div class={css.axis} aria-hidden="true">
          <LadderFigures scale={scale} />
        </div>
      )}
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
