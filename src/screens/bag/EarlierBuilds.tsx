import type { Club, SpecPeriod } from '../../golf/club.ts';
import { NEVER_CHANGED } from '../../golf/instant.ts';
import { dayWithYear } from '../day.ts';
import { bagWords } from '../words/bag.ts';
import { words } from '../words.ts';
import css from './ClubPage.module.css';

/** The other builds of a club, the newest first; nothing when it was always built as now. */
export function EarlierBuilds({ club, present }: { readonly club: Club; readonly present: SpecPeriod }) {
  const others = club.specPeriods.filter(({ id }) => id !== present.id).sort((a, b) => (a.from < b.from ? 1 : -1));
  if (others.length === 0) return null;
  const since = ({ from }: SpecPeriod) =>
    from === NEVER_CHANGED.slice(0, 10) ? bagWords.club.fromStart : bagWords.club.sinceDay(dayWithYear(from));
  const what = ({ loft_deg, shaft, note }: SpecPeriod) =>
    [bagWords.club.loftOf(words.loft(loft_deg)), shaft, note].filter((part) => part !== '').join(', ');
  return (
    <section class={css.periods} aria-labelledby="earlier-builds">
      <h2 id="earlier-builds">{bagWords.club.periods}</h2>
      <ul>
        {others.map((spec) => (
          <li key={spec.id}>{bagWords.club.period(since(spec), what(spec))}</li>
        ))}
      </ul>
    </section>
  );
}
