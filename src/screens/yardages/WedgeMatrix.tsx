import { clubName, swingName } from '../clubName.ts';
import { Hidden } from '../parts/Hidden.tsx';
import { words } from '../words.ts';
import type { BookLayout } from './layOutBook.ts';
import { numberAddress } from './numberAddress.ts';
import { Stock } from './Stock.tsx';
import css from './WedgeMatrix.module.css';

/** Wedge × swing: the numbers that a hand with a wedge in it looks for first. */
export function WedgeMatrix({ layout, asOf }: { readonly layout: BookLayout; readonly asOf: string }) {
  return (
    <section aria-labelledby="wedges">
      <h2 class={css.title} id="wedges">
        {words.yardages.wedges}
      </h2>
      <table class={css.matrix}>
        <thead>
          <tr>
            <th scope="col">
              <Hidden>{words.yardages.wedge}</Hidden>
            </th>
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
                <td key={layout.swings[i]}>
                  <span class={css.swing} aria-hidden="true">
                    {swingName(layout.swings[i])}
                  </span>
                  {slot.kind === 'number' ? (
                    <a href={numberAddress(club, slot.cell, asOf)}>
                      <Hidden>{words.number.title(clubName(club, spec), swingName(layout.swings[i]))} </Hidden>
                      <Stock cell={slot.cell} />
                    </a>
                  ) : (
                    <span class={css.none}>
                      {slot.kind === 'not played' ? words.yardages.notPlayed : words.yardages.noNumber}
                    </span>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
