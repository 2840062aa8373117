import { words } from '../words.ts';
import css from './Cautions.module.css';

/** What every golfer is told before playing by these numbers. */
export function Cautions() {
  return (
    <section class={css.cautions}>
      <h2>{words.cautionsTitle}</h2>
      <ul>
        {words.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
