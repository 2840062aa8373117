import type { Keeper } from '../../actions/keeper.ts';
import type { Club } from '../../golf/club.ts';
import { liveDraft, liveOpenRound, liveRounds } from '../../logbook/live.ts';
import { PlayPage } from './PlayPage.tsx';
import { Reading } from './Reading.tsx';
import { holeOnScreen } from './shownHole.ts';
import type { ShownUnits } from './shownUnits.ts';
import { StartRound } from './start/StartRound.tsx';
import { together } from './together.ts';

interface Props {
  readonly keeper: Keeper;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
}

/** The round being played on the hole last seen; or, when none is, the start of one. */
export function NowPage({ keeper, clubs, units }: Props) {
  const open = liveOpenRound(keeper.connection).value;
  const draft = liveDraft(keeper.connection).value;
  return (
    <Reading live={together(open, draft)}>
      {([of, half]) =>
        of ? (
          <PlayPage keeper={keeper} of={of} hole={holeOnScreen(of, half)} units={units} />
        ) : (
          <Reading live={liveRounds(keeper.connection).value}>
            {(rounds) => <StartRound keeper={keeper} rounds={rounds} clubs={clubs} units={units} />}
          </Reading>
        )
      }
    </Reading>
  );
}
