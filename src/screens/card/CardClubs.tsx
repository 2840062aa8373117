import { type Club, specOn } from '../../golf/club.ts';
import { clubName } from '../clubName.ts';
import { plusMinus, wholeDistance } from '../distance.ts';
import { unit } from '../unit.ts';
import { cardWords as words } from '../words/card.ts';
import { figure } from '../words.ts';
import type { BookLayout, Row } from '../yardages/layOutBook.ts';
import css from './CardSheet.module.css';

interface Props {
  readonly layout: BookLayout;
  readonly putters: readonly Club[];
  readonly asOf: string;
}

function Line({ row: { club, spec, slots } }: { readonly row: Row }) {
  const [slot] = slots;
  const name = clubName(club, spec);
  if (slot.kind !== 'number') {
    return (
      <tr>
        <th scope="row">{name}</th>
        <td colSpan={3}>{slot.kind === 'not played' ? words.notPlayed : words.none}</td>
      </tr>
    );
  }
  const { cell } = slot;
  const stock = wholeDistance(cell.stock_m, unit.value);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <b class={cell.shots === 0 ? css.borrowed : undefined}>{cell.shots === 0 ? `~${stock}` : stock}</b> ±{' '}
        {plusMinus(cell.lo80_m, cell.hi80_m, unit.value)}
      </td>
      <td>{words.range(wholeDistance(cell.next_m[1], unit.value), wholeDistance(cell.next_m[17], unit.value))}</td>
      <td>{figure(cell.shots)}</td>
    </tr>
  );
}

/** Every club of the bag, longest first, with its full swing; the putter last. */
export function CardClubs({ layout, putters, asOf }: Props) {
  return (
    <table class={css.clubs}>
      <thead>
        <tr>
          <th scope="col">{words.club}</th>
          <th scope="col">{words.carry}</th>
          <th scope="col">{words.next}</th>
          <th scope="col">{words.shots}</th>
        </tr>
      </thead>
      <tbody>
        {layout.card.map((row) => (
          <Line key={row.club.id} row={row} />
        ))}
        {putters.map((club) => (
          <tr key={club.id}>
            <th scope="row">{clubName(club, specOn(club, asOf))}</th>
            <td colSpan={3}>{words.none}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
