import { clubName, swingName } from '../clubName.ts';
import { day } from '../day.ts';
import { words } from '../words.ts';
import css from './ClubCard.module.css';
import type { Aside, BookLayout } from './layOutBook.ts';
import { numberAddress } from './numberAddress.ts';
import { Stock } from './Stock.tsx';

function reason({ club, spec, why }: Aside, asOf: string): string | null {
  if (why === 'swing') return null;
  if (why === 'out of bag') return words.yardages.outOfBag;
  const [until = asOf] = club.specPeriods
    .map(({ from }) => from)
    .filter((from) => from > spec.from)
    .sort();
  return words.yardages.before(day(until, asOf), words.loft(spec.loft_deg));
}

/** The numbers that have no place on card or matrix, each saying what it is. */
export function Asides({ layout, asOf }: { readonly layout: BookLayout; readonly asOf: string }) {
  if (layout.asides.length === 0) return null;
  return (
    <section aria-labelledby="asides">
      <h2 class={css.title} id="asides">
        {words.yardages.also}
      </h2>
      <ul class={css.card}>
        {layout.asides.map((aside) => {
          const why = reason(aside, asOf);
          return (
            <li key={`${aside.cell.clubId} ${aside.cell.specId} ${aside.cell.swing}`}>
              <a class={css.aside} href={numberAddress(aside.club, aside.cell, asOf)}>
                <span>
                  <span class={css.club}>
                    {words.number.title(clubName(aside.club, aside.spec), swingName(aside.cell.swing))}
                  </span>
                  {why && <span class={css.why}> {why}</span>}
                </span>
                <Stock cell={aside.cell} />
              </a>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
