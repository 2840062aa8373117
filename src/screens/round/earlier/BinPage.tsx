import { useSignal } from '@preact/signals';
import type { Keeper } from '../../../actions/keeper.ts';
import { restoreFromBin } from '../../../actions/restoreFromBin.ts';
import type { Club } from '../../../golf/club.ts';
import type { Binned } from '../../../logbook/database.ts';
import { liveBin, liveRounds } from '../../../logbook/live.ts';
import { dayWithYear } from '../../day.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import press from '../../parts/Press.module.css';
import { goTo } from '../../route.ts';
import { byTheRules } from '../../words/byTheRules.ts';
import { roundWords } from '../../words/round.ts';
import { words as allWords } from '../../words.ts';
import { shotLine } from '../shot/shotLine.ts';
import type { ShownUnits } from '../shownUnits.ts';
import css from './RoundsPage.module.css';

const { bin: words, card, head } = roundWords;

interface Props {
  readonly keeper: Keeper;
  /** Whether anything may be brought back now. */
  readonly mayChange: boolean;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** What was deleted and can still be brought back. */
export function BinPage({ keeper, mayChange, clubs, units }: Props) {
  const trouble = useSignal<string | null>(null);
  const rounds = liveRounds(keeper.connection).value;
  const live = liveBin(keeper.connection).value;
  const what = (binned: Binned): string => {
    if (binned.of === 'round') {
      const { course, play, date } = binned.round;
      const name = course || (play === 'practice ground' ? head.practice : card.unnamed);
      return words.round(name, dayWithYear(date), binned.shots.length);
    }
    const { shot } = binned;
    const round = rounds.kind === 'ready' ? rounds.value.find((each) => each.id === shot.roundId) : undefined;
    return words.shot(shot.hole, round ? shotLine(shot, clubs, units.distance, round).what : words.lostShot);
  };
  const mayRestore = (binned: Binned) => {
    if (mayChange || binned.of === 'round') return mayChange;
    return rounds.kind === 'ready' && rounds.value.some((round) => round.id === binned.shot.roundId && !round.closed);
  };
  const bringBack = async (binned: Binned) => {
    const outcome = await restoreFromBin(keeper, binned);
    if (outcome.kind === 'saved') trouble.value = null;
    else if (outcome.kind === 'unsaved') trouble.value = allWords.storage.why(outcome.why);
    else trouble.value = outcome.why.kind === 'gone' ? words.gone : byTheRules[outcome.why.why];
  };
  return (
    <>
      <PageHead title={words.title} sub={words.note} onBack={() => goTo('round', 'rounds')} />
      <div class={css.sheet}>
        <p role="alert" class={css.wrong}>
          {trouble.value}
        </p>
        {!mayChange && <p>{roundWords.locked}</p>}
        {live.kind === 'failed' && <p role="alert">{allWords.storage.why(live.why)}</p>}
        {live.kind === 'ready' && live.value.length === 0 && <p>{words.empty}</p>}
        {live.kind === 'ready' && live.value.length > 0 && (
          <ul class={css.rounds}>
            {live.value.map((binned) => (
              <li key={`${binned.of} ${binned.id}`} class={css.binned}>
                <span class={css.what}>
                  <strong>{what(binned)}</strong>
                  <span>{words.deleted(dayWithYear(binned.deletedAt))}</span>
                </span>
                <button
                  type="button"
                  class={press.press}
                  aria-label={`${words.back}: ${what(binned)}`}
                  disabled={!mayRestore(binned)}
                  onClick={() => void bringBack(binned)}
                >
                  {words.back}
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
    </>
  );
}
