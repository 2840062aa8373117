import type { Keeper } from '../../../actions/keeper.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import type { Club } from '../../../golf/club.ts';
import { holeScore } from '../../../golf/holeScore.ts';
import { holeAfter, holeBefore } from '../../../golf/roundOrder.ts';
import { shotsOfHole } from '../../../golf/shotOrder.ts';
import type { RoundWithShots } from '../../../logbook/live.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf, goBack } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { goToLog } from '../goToLog.ts';
import { StorageNews } from '../StorageNews.tsx';
import type { ShownUnits } from '../shownUnits.ts';
import { UndoBar } from '../UndoBar.tsx';
import { HoleFacts } from './HoleFacts.tsx';
import css from './HolePage.module.css';
import { ShotRows } from './ShotRows.tsx';

const { hole: words, head } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly of: RoundWithShots;
  readonly number: number;
  readonly mayChange: boolean;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** A hole at rest: its score, its shots as entered, and what can be changed of it. */
export function HolePage({ keeper, of: { round, shots }, number, mayChange, clubs, units }: Props) {
  const all = withUnsaved(keeper.unsaved.value, round.id, shots);
  const onHole = shotsOfHole(all, number);
  const hole = round.holes.find((each) => each.number === number);
  const isPractice = round.play === 'practice ground';
  if (!hole) return <p role="alert">{roundWords.gone}</p>;
  const score = holeScore(hole, onHole);
  const before = holeBefore(round, number);
  const after = holeAfter(round, number);
  const putter = clubs.find((club) => club.kind === 'putter' && round.bag.includes(club.id));
  return (
    <>
      <PageHead
        title={isPractice ? head.practice : head.hole(number)}
        {...(isPractice ? {} : { sub: `${words.score}: ${scoreWords(score)}` })}
        onBack={() => goBack('round', 'card', round.id)}
      />
      <StorageNews keeper={keeper} />
      <div class={css.sheet}>
        <div class={css.keys}>
          {mayChange && (
            <button type="button" class={`${press.press} ${press.main}`} onClick={() => goToLog(round, number)}>
              {words.goOn}
            </button>
          )}
          {before !== null && (
            <a
              class={press.press}
              href={addressOf('round', 'hole', round.id, String(before))}
              aria-label={head.previous(before)}
            >
              ‹ {before}
            </a>
          )}
          {after !== null && (
            <a
              class={press.press}
              href={addressOf('round', 'hole', round.id, String(after))}
              aria-label={head.next(after)}
            >
              {after} ›
            </a>
          )}
          <a class={press.press} href={addressOf('round', 'card', round.id)}>
            {isPractice ? roundWords.card.details : words.allHoles}
          </a>
        </div>
        {mayChange ? <UndoBar keeper={keeper} /> : <p>{roundWords.locked}</p>}
        <section class={css.group} aria-labelledby="hole-shots">
          <h2 id="hole-shots">{words.shots}</h2>
          {onHole.length === 0 ? (
            <p>{words.noShots}</p>
          ) : (
            <ShotRows keeper={keeper} round={round} shots={onHole} mayChange={mayChange} clubs={clubs} units={units} />
          )}
          {!isPractice && (
            <>
              {score.strokes > 0 && <p>{words.made(score)}</p>}
              {score.notLogged > 0 && <p class={css.open}>{words.notLogged(score.notLogged)}</p>}
              {score.overLogged > 0 && <p class={css.open}>{words.overLogged(score.overLogged)}</p>}
            </>
          )}
        </section>
        {!isPractice && mayChange && (
          <HoleFacts
            key={`${round.id} ${number}`}
            keeper={keeper}
            roundId={round.id}
            hole={hole}
            putterId={putter?.id ?? null}
            units={units}
          />
        )}
      </div>
    </>
  );
}

function scoreWords(score: ReturnType<typeof holeScore>): string {
  if (score.kind === 'not started') return roundWords.state[score.kind];
  return score.kind === 'holed'
    ? words.scoreOf(score.strokes)
    : `${words.scoreOf(score.strokes)}, ${roundWords.state[score.kind]}`;
}
