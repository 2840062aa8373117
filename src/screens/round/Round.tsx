import { permissions } from '../../golf/permissions.ts';
import { liveClubs, liveOpenRound, livePlayer, liveSettings } from '../../logbook/live.ts';
import type { Route } from '../route.ts';
import { useShelf } from '../useShelf.ts';
import { BinPage } from './earlier/BinPage.tsx';
import { RoundsPage } from './earlier/RoundsPage.tsx';
import { NowPage } from './NowPage.tsx';
import { Reading } from './Reading.tsx';
import { RefereeSheet } from './RefereeSheet.tsx';
import { RoundPages } from './RoundPages.tsx';
import type { ShownUnits } from './shownUnits.ts';
import { together } from './together.ts';

/** The Round place: the round being played or the start of one, and the rounds before it. */
export function Round({ path }: { readonly path: Route }) {
  const shelf = useShelf();
  const keeper = shelf.shown.value;
  const player = livePlayer(keeper.connection).value;
  const settings = liveSettings(shelf.own.connection).value;
  const clubs = liveClubs(keeper.connection).value;
  const open = liveOpenRound(keeper.connection).value;
  const [page, id = '', ...rest] = path;
  return (
    <Reading live={together(together(player, settings), together(clubs, open))}>
      {([[{ units: distance }, { temperature, windSpeed, lastBackupAt }], [clubs, open]]) => {
        const mayChange = permissions(open?.round ?? null).changingEvidence;
        const units: ShownUnits = { distance, temperature, windSpeed };
        if (page === undefined)
          return <NowPage keeper={keeper} open={open} clubs={clubs} units={units} lastBackupAt={lastBackupAt} />;
        if (page === 'rounds') return <RoundsPage keeper={keeper} />;
        if (page === 'referee') return <RefereeSheet open={open?.round ?? null} />;
        if (page === 'bin') return <BinPage keeper={keeper} mayChange={mayChange} clubs={clubs} units={units} />;
        return (
          <RoundPages
            keeper={keeper}
            roundId={id}
            path={[page, ...rest]}
            mayChangeEarlier={mayChange}
            clubs={clubs}
            units={units}
          />
        );
      }}
    </Reading>
  );
}
