import { useEffect, useMemo } from 'preact/hooks';
import { closeRound } from '../../actions/closeRound.ts';
import type { Keeper } from '../../actions/keeper.ts';
import { withUnsaved } from '../../actions/withUnsaved.ts';
import { openShots } from '../../golf/openShots.ts';
import { holeAfter } from '../../golf/roundOrder.ts';
import { scoreRound } from '../../golf/scoreRound.ts';
import { shotsOfHole } from '../../golf/shotOrder.ts';
import type { RoundWithShots } from '../../logbook/live.ts';
import { addressOf, goTo } from '../route.ts';
import { roundWords } from '../words/round.ts';
import { PlayHead } from './PlayHead.tsx';
import css from './PlayPage.module.css';
import { OpenShotsStrip } from './shot/OpenShotsStrip.tsx';
import { ShotPage } from './shot/ShotPage.tsx';
import { shownHole } from './shownHole.ts';
import type { ShownUnits } from './shownUnits.ts';
import { useWakeLock } from './useWakeLock.ts';

const { head: words } = roundWords;

interface Props {
  readonly keeper: Keeper;
  readonly of: RoundWithShots;
  readonly hole: number;
  readonly units: ShownUnits;
}

/** The page that a hole is logged on: its head, the shots that still wait at the start of it, and the next shot. */
export function PlayPage({ keeper, of: { round, shots }, hole, units }: Props) {
  useEffect(() => {
    shownHole.value = { roundId: round.id, hole };
  }, [round.id, hole]);
  useWakeLock(!round.closed);
  const unsaved = keeper.unsaved.value;
  const all = useMemo(() => withUnsaved(unsaved, round.id, shots), [unsaved, round.id, shots]);
  const isPractice = round.play === 'practice ground';
  const next = holeAfter(round, hole);
  const { holes } = scoreRound(round, all);
  const isWhole = holes.every(({ score }) => score.kind !== 'not started' && score.kind !== 'in play');
  const closes = next === null && !round.closed && (isWhole || isPractice);
  const nextLabel = next !== null ? words.nextKey(next) : closes ? words.roundOver : words.toCard;
  const showHole = (number: number) => {
    if (round.closed) goTo('round', 'log', round.id, String(number));
    else shownHole.value = { roundId: round.id, hole: number };
  };
  const goOn = async () => {
    if (next !== null) {
      showHole(next);
      return;
    }
    // While a shot cannot be saved the round stays open; the card then says so.
    if (closes) await closeRound(keeper, round.id);
    goTo('round', 'card', round.id);
  };
  const waiting = openShots(all).length;
  const isAtTee = shotsOfHole(all, hole).length === 0;
  return (
    <div class={css.play}>
      <PlayHead keeper={keeper} round={round} shots={all} hole={hole} units={units} onHole={showHole} />
      {isAtTee && !isPractice && waiting > 0 && (
        <>
          <a class={css.waiting} href={addressOf('round', 'card', round.id)}>
            {words.waiting(waiting)}
          </a>
          <div class={css.strip}>
            <OpenShotsStrip keeper={keeper} shots={all} onOpen={(shot) => goTo('round', 'shot', round.id, shot.id)} />
          </div>
        </>
      )}
      <ShotPage
        key={`${round.id} ${hole}`}
        keeper={keeper}
        round={round}
        shots={shots}
        hole={hole}
        nextLabel={nextLabel}
        onDone={() => void goOn()}
      />
    </div>
  );
}
