import type { TeamPage } from '../../book/teamPage.ts';
import type { Average } from '../../golf/scoringAverages.ts';
import { figure } from '../words/figure.ts';
import { teamWords } from '../words/team.ts';
import css from './Team.module.css';

const words = teamWords.player;

/** A mean to one decimal. */
export function meanText({ mean }: Average): string {
  return figure(Math.round(mean * 10) / 10);
}

/** How a golfer scores, for the line-up. */
export function PlayerScoring({ page: { scoring } }: { readonly page: TeamPage }) {
  const pars = scoring ? [scoring.par3, scoring.par4, scoring.par5] : [];
  const lines = [
    ...pars.flatMap((of, i) => (of ? [words.average(words.pars[i], meanText(of), words.holes(of.of))] : [])),
    ...(scoring?.toParANine
      ? [words.average(words.aNine, meanText(scoring.toParANine), words.nines(scoring.toParANine.of))]
      : []),
    ...(scoring?.puttsAHole
      ? [words.average(words.putts, meanText(scoring.puttsAHole), words.holes(scoring.puttsAHole.of))]
      : []),
  ];
  return (
    <section class={css.group} aria-labelledby="scoring">
      <h2 id="scoring">{words.scoring}</h2>
      {lines.length === 0 && <p class={css.quiet}>{words.noScores}</p>}
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
