import { useSignal } from '@preact/signals';
import { closeRound, reopenRound } from '../../../actions/closeRound.ts';
import { deleteRound } from '../../../actions/editRound.ts';
import type { Keeper } from '../../../actions/keeper.ts';
import { withUnsaved } from '../../../actions/withUnsaved.ts';
import type { Club } from '../../../golf/club.ts';
import { openShots } from '../../../golf/openShots.ts';
import { scoreRound } from '../../../golf/scoreRound.ts';
import type { RoundWithShots } from '../../../logbook/live.ts';
import { dayWithYear } from '../../day.ts';
import { Backup } from '../../more/Backup.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { addressOf, goTo } from '../../route.ts';
import { roundWords } from '../../words/round.ts';
import { goToLog } from '../goToLog.ts';
import { ShotRows } from '../hole/ShotRows.tsx';
import { outcomeTrouble } from '../outcomeTrouble.ts';
import { EveningLine } from '../practice/EveningLine.tsx';
import { StorageNews } from '../StorageNews.tsx';
import { OpenShotsStrip } from '../shot/OpenShotsStrip.tsx';
import { holeOnScreen } from '../shownHole.ts';
import type { ShownUnits } from '../shownUnits.ts';
import { UndoBar } from '../UndoBar.tsx';
import css from './CardPage.module.css';
import { ConditionsEditor } from './ConditionsEditor.tsx';
import { HoleRows } from './HoleRows.tsx';
import { ParRows } from './ParRows.tsx';
import { RoundDetails } from './RoundDetails.tsx';
import { SwapClub } from './SwapClub.tsx';
import { Totals } from './Totals.tsx';

const { card: words } = roundWords;

/** How long after “round over” a backup is offered on the round's own page: a day. Own choice. */
const FRESH_MS = 86_400_000;

function isFresh(closedAt: string | null, now_ms: number): boolean {
  return closedAt !== null && now_ms - Date.parse(closedAt) < FRESH_MS;
}

interface Props {
  readonly keeper: Keeper;
  readonly of: RoundWithShots;
  readonly mayChange: boolean;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** A round as a whole: its score, its holes, what is still open, and whether it is over. */
export function CardPage({ keeper, of: { round, shots }, mayChange, clubs, units }: Props) {
  const trouble = useSignal<string | null>(null);
  const all = withUnsaved(keeper.unsaved.value, round.id, shots);
  const score = scoreRound(round, all);
  const isPractice = round.play === 'practice ground';
  const open = isPractice ? [] : openShots(all);
  const close = async () => {
    trouble.value = outcomeTrouble(await closeRound(keeper, round.id));
    scrollTo(0, 0);
  };
  const reopen = async () => {
    trouble.value = outcomeTrouble(await reopenRound(keeper, round.id));
  };
  const remove = async () => {
    trouble.value = outcomeTrouble(await deleteRound(keeper, round.id));
    if (trouble.value === null) goTo('round', 'rounds');
  };
  const title = round.course || (isPractice ? roundWords.head.practice : words.unnamed);
  return (
    <>
      <PageHead
        title={title}
        sub={words.sub(dayWithYear(round.date), round.tees, roundWords.play[round.play])}
        onBack={() => (round.closed ? goTo('round', 'rounds') : goTo('round'))}
      />
      <StorageNews keeper={keeper} />
      <div class={css.sheet}>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        {round.closed && <p class={css.over}>{isPractice ? words.summaryPractice : words.summary}</p>}
        {isPractice && round.closed && mayChange && (
          <EveningLine keeper={keeper} day={round.date} unit={units.distance} />
        )}
        {mayChange ? <UndoBar keeper={keeper} /> : <p>{roundWords.locked}</p>}
        <Totals score={score} shots={all.length} isPractice={isPractice} />
        {open.length > 0 && mayChange ? (
          <OpenShotsStrip keeper={keeper} shots={all} onOpen={(shot) => goTo('round', 'shot', round.id, shot.id)} />
        ) : (
          open.length === 0 && round.closed && !isPractice && <p>{words.allComplete}</p>
        )}
        {round.closed && isFresh(round.closedAt, keeper.clock.now()) && <Backup />}
        {isPractice ? (
          <ShotRows keeper={keeper} round={round} shots={all} mayChange={mayChange} clubs={clubs} units={units} />
        ) : (
          <HoleRows round={round} shots={all} score={score} units={units} />
        )}
        {mayChange && (
          <div class={css.folds}>
            {!isPractice && <ParRows keeper={keeper} round={round} />}
            <ConditionsEditor keeper={keeper} round={round} units={units} />
            <SwapClub keeper={keeper} round={round} shots={all} clubs={clubs} />
            <RoundDetails keeper={keeper} round={round} />
          </div>
        )}
        <div class={css.keys}>
          {round.closed ? (
            mayChange && (
              <button type="button" class={press.press} onClick={() => void reopen()}>
                {words.reopen}
              </button>
            )
          ) : (
            <>
              <button
                type="button"
                class={press.press}
                onClick={() => goToLog(round, holeOnScreen({ round, shots: all }, null))}
              >
                {words.goOn}
              </button>
              <button type="button" class={`${press.press} ${press.main}`} onClick={() => void close()}>
                {isPractice ? words.overPractice : words.over}
              </button>
            </>
          )}
        </div>
        {!round.closed && <p class={css.quiet}>{words.overNote}</p>}
        <div class={css.keys}>
          <a class={press.press} href={addressOf('round', 'rounds')}>
            {roundWords.rounds.title}
          </a>
          {round.play === 'rules' && !round.closed && (
            <a class={press.press} href={addressOf('round', 'referee')}>
              {roundWords.referee}
            </a>
          )}
          {mayChange && (
            <button type="button" class={press.press} onClick={() => void remove()}>
              {words.deleteRound}
            </button>
          )}
        </div>
        {mayChange && <p class={css.quiet}>{words.deleteNote}</p>}
      </div>
    </>
  );
}
