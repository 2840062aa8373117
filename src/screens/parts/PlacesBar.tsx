import { places } from '../places.ts';
import { addressOf, route } from '../route.ts';
import { appWords } from '../words/app.ts';
import css from './PlacesBar.module.css';

/** The bar at the thumb that leads to every place; none while there is only one place to be. */
export function PlacesBar() {
  if (places.length < 2) return null;
  return (
    <nav class={css.bar} aria-label={appWords.places.label}>
      {places.map(({ id, label }) => (
        <a key={id} href={addressOf(id)} aria-current={(route.value[0] ?? places[0].id) === id ? 'page' : undefined}>
          {label}
        </a>
      ))}
    </nav>
  );
}
