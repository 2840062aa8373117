import { clubName, swingName } from '../clubName.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { unit } from '../unit.ts';
import { cardWords as words } from '../words/card.ts';
import type { BookLayout, Slot } from '../yardages/layOutBook.ts';
import css from './CardSheet.module.css';

function Place({ slot }: { readonly slot: Slot }) {
  if (slot.kind !== 'number') return <td>{slot.kind === 'not played' ? words.notPlayed : words.none}</td>;
  const { cell } = slot;
  const stock = wholeDistance(cell.stock_m, unit.value);
  return (
    <td>
      <b class={cell.shots === 0 ? css.borrowed : undefined}>{cell.shots === 0 ? `~${stock}` : stock}</b>{' '}
      <span class={css.small}>± {plusMinus(cell.lo80_m, cell.hi80_m, unit.value)}</span>
    </td>
  );
}

/** The wedge matrix of the card: a line a wedge, a column a swing. */
export function CardWedges({ layout }: { readonly layout: BookLayout }) {
  return (
    <table class={css.wedges}>
      <thead>
        <tr>
          <th scope="col">{words.wedge}</th>
          {layout.swings.map((swing) => (
            <th key={swing} scope="col">
              {swingName(swing)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {layout.wedges.map(({ club, spec, slots }) => (
          <tr key={club.id}>
            <th scope="row">{clubName(club, spec)}</th>
            {slots.map((slot, i) => (
              <Place key={layout.swings[i]} slot={slot} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
