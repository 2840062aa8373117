import { clubName, swingName } from '../clubName.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { unit } from '../unit.ts';
import { cardWords as words } from '../words/card.ts';
import type { BookLayout } from '../yardages/layOutBook.ts';
import css from './CardSheet.module.css';

/** Other swings for which the card has room. */
const MOST = 4;

/** Swings beyond full and the matrix that have own shots: a punched iron, a position of the golfer's own. */
export function CardAlso({ layout }: { readonly layout: BookLayout }) {
  const swings = layout.asides.filter(({ why, cell }) => why === 'swing' && cell.shots > 0).slice(0, MOST);
  if (swings.length === 0) return null;
  const line = ({ club, spec, cell }: (typeof swings)[number]) =>
    words.alsoLine(
      clubName(club, spec),
      swingName(cell.swing),
      wholeDistance(cell.stock_m, unit.value),
      plusMinus(cell.lo80_m, cell.hi80_m, unit.value),
    );
  return (
    <p class={css.also}>
      {words.also} {swings.map(line).join(' · ')}
    </p>
  );
}
