import type { Keeper } from '../../actions/keeper.ts';
import type { Club } from '../../golf/club.ts';
import { liveDraft, liveRounds, type RoundWithShots } from '../../logbook/live.ts';
import { PlayPage } from './PlayPage.tsx';
import { WedgeLadder } from './practice/WedgeLadder.tsx';
import { Reading } from './Reading.tsx';
import { holeOnScreen } from './shownHole.ts';
import type { ShownUnits } from './shownUnits.ts';
import { StartRound } from './start/StartRound.tsx';

interface Props {
  readonly keeper: Keeper;
  /** The round being played; null: none. */
  readonly open: RoundWithShots | null;
  readonly clubs: readonly Club[];
  readonly units: ShownUnits;
  readonly lastBackupAt: string | null;
}

/** The round being played on the hole last seen; or, when none is, the start of one. */
export function NowPage({ keeper, open: of, clubs, units, lastBackupAt }: Props) {
  const draft = liveDraft(keeper.connection).value;
  return (
    <Reading live={draft}>
      {(half) =>
        of?.round.play === 'practice ground' ? (
          <WedgeLadder keeper={keeper} of={of} clubs={clubs} unit={units.distance} />
        ) : of ? (
          <PlayPage keeper={keeper} of={of} hole={holeOnScreen(of, half)} units={units} />
        ) : (
          <Reading live={liveRounds(keeper.connection).value}>
            {(rounds) => (
              <StartRound keeper={keeper} rounds={rounds} clubs={clubs} units={units} lastBackupAt={lastBackupAt} />
            )}
          </Reading>
        )
      }
    </Reading>
  );
}
