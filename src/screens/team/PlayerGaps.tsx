import type { TeamPage } from '../../book/teamPage.ts';
import { distanceWithUnit } from '../distance.ts';
import { unit } from '../unit.ts';
import { teamWords } from '../words/team.ts';
import css from './Team.module.css';
import { teamClubName } from './teamClubName.ts';

const words = teamWords.player;

/** Wide gaps and overlaps of a golfer's bag, in words with their odds. */
export function PlayerGaps({ page }: { readonly page: TeamPage }) {
  return (
    <section class={css.group} aria-labelledby="gaps">
      <h2 id="gaps">{words.gaps}</h2>
      {page.gaps.length === 0 && <p class={css.quiet}>{words.noGaps}</p>}
      <ul>
        {page.gaps.map(({ longer, shorter, gap_m, verdict, probability }) => {
          const [one, two] = [teamClubName(page, longer), teamClubName(page, shorter)];
          return (
            <li key={`${longer} ${shorter}`}>
              {verdict === 'overlap'
                ? words.overlap(one, two, probability)
                : words.wide(one, two, distanceWithUnit(gap_m, unit.value), probability)}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
