import { useLayoutEffect, useRef } from 'preact/hooks';
import { places } from '../places.ts';
import { addressOf, route } from '../route.ts';
import { appWords } from '../words/app.ts';
import css from './PlacesBar.module.css';

/** Tells the style sheets how high the bar is: with large text it may take two rows. */
function useBarHeight() {
  const bar = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const { current } = bar;
    if (!current) return;
    const tell = () => {
      const { paddingBottom } = getComputedStyle(current);
      const height_px = current.offsetHeight - Number.parseFloat(paddingBottom);
      document.documentElement.style.setProperty('--bar', `${height_px}px`);
    };
    tell();
    const watching = new ResizeObserver(tell);
    watching.observe(current);
    return () => watching.disconnect();
  }, []);
  return bar;
}

/** The bar at the thumb that leads to every place; none while there is only one place to be. */
export function PlacesBar() {
  const bar = useBarHeight();
  if (places.length < 2) return null;
  return (
    <nav ref={bar} class={css.bar} aria-label={appWords.places.label}>
      {places.map(({ id, label }) => (
        <a key={id} href={addressOf(id)} aria-current={(route.value[0] ?? places[0].id) === id ? 'page' : undefined}>
          {label}
        </a>
      ))}
    </nav>
  );
}
